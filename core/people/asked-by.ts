/**
 * Who asked for a job, against the clients that are known.
 */
import type { Job } from '../contract/jobs.ts';
import type { Client, ClientFields } from '../contract/people.ts';
import { blankClient } from './blank.ts';
import { marksOf } from './doubles.ts';
import { clientMarks } from './marks.ts';

type Asked = Pick<Job, 'organisation' | 'contact'>;

/** A client as the inquiry tells of them: the organisation with its contact, else the person. Nothing when neither has a name. */
export function clientFrom({ organisation, contact }: Asked): ClientFields | null {
  const name = organisation || contact.name;
  if (name === '') return null;
  const reachable = contact.email !== '' || contact.phone !== '' || (organisation !== '' && contact.name !== '');
  return { ...blankClient(name), contacts: reachable ? [{ ...contact, what: '' }] : [] };
}

/** The first known client with the same mail address, phone or name as who asked. */
export function knownAs<T extends Client>(asked: Asked, clients: readonly T[]): T | undefined {
  const { organisation, contact } = asked;
  const marks = marksOf({ name: organisation || contact.name, emails: [contact.email], phones: [contact.phone], taxId: '' });
  const keys = new Set(marks.map(({ key }) => key));
  return clients.find((client) => marksOf(clientMarks(client)).some(({ key }) => keys.has(key)));
}

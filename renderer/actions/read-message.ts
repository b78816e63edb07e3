import { ask, queries } from '../ask.ts';
import { deed } from '../deeds.ts';
import { client } from '../door.ts';
import type { Action } from './action.ts';

/** Reads the pasted message, puts it on the books as an inquiry and opens its answer; one that asks for no work is only put there when that is wanted all the same. */
export const readMessage: Action = {
  name: 'read-message',
  label: ({ asksNothing }) => (asksNothing?.is ? 'Put it on the books all the same' : 'Read it'),
  shortcut: 'Ctrl+Enter',
  when: (scene) => scene.message.trim() !== '',
  perform: ({ message, asksNothing, go }) =>
    deed(async () => {
      if (asksNothing && !asksNothing.is && !(await asksForWork(message))) return asksNothing.say();
      const taken = await client.inquiries.take({ text: message, key: crypto.randomUUID() });
      go(`/jobs/${taken.jobId}`);
    }),
};

async function asksForWork(text: string): Promise<boolean> {
  const { setup } = await queries.fetchQuery(ask.setup.get.queryOptions({ input: {} }));
  const homeZone = setup?.home.zone ?? Temporal.Now.timeZoneId();
  const receivedAt = Temporal.Now.zonedDateTimeISO(homeZone).toString({ smallestUnit: 'second' });
  return (await client.inquiries.read({ text, receivedAt, homeZone })).isInquiry;
}

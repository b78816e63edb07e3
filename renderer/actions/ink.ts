import { client } from '../door.ts';
import { deed, say } from '../deeds.ts';
import type { Action } from './action.ts';

/** Writes down the yes: who said it, when and how. */
export const ink: Action = {
  name: 'ink',
  label: () => 'Ink it',
  when: ({ job, version, yes }) =>
    version !== undefined &&
    job !== undefined &&
    ['quoted', 'pencilled', 'ran out'].includes(job.state) &&
    yes.who.trim() !== '' &&
    yes.how.trim() !== '' &&
    !yes.open,
  perform: ({ job, yes }) =>
    deed(async () => {
      if (!job) return;
      const { who, at, how, quoteVersion, offer } = yes;
      const to = { quoteVersion, ...(offer === null ? {} : { offer }), ...(at === undefined ? {} : { at }) };
      await client.jobs.ink({ id: job.id, version: job.version, who, how, ...to, key: crypto.randomUUID() });
      say('Inked. The dates are yours.');
    }),
};

import { client } from '../door.ts';
import { deed, say } from '../deeds.ts';
import type { Action } from './action.ts';

/** Pencils the dates, or renews a pencil that ran out; a renewed pencil goes last. */
export const renew: Action = {
  name: 'renew',
  label: ({ job }) => (job?.pencil ? 'Renew the pencil' : 'Pencil the dates'),
  when: ({ job }) => job !== undefined && job.days.length > 0 && job.place !== null && ['inquiry', 'quoted', 'ran out'].includes(job.state),
  perform: ({ job }) =>
    deed(async () => {
      if (!job) return;
      await client.jobs.pencil({ id: job.id, version: job.version, key: crypto.randomUUID() });
      say('The dates are in pencil.');
    }),
};

import { client } from '../door.ts';
import { deed, say } from '../deeds.ts';
import type { Action } from './action.ts';

/** Hold a job's dates in pencil until the expiry that the house works out. */
export const pencilDates = (id: string, version: number): Promise<unknown> =>
  deed(async () => {
    await client.jobs.pencil({ id, version, key: crypto.randomUUID() });
    say('The dates are in pencil.');
  });

/** Pencils the dates, or renews a pencil that ran out; a renewed pencil goes last. */
export const renew: Action = {
  name: 'renew',
  label: ({ job }) => (job?.pencil ? 'Renew the pencil' : 'Pencil the dates'),
  when: ({ job }) => job !== undefined && job.days.length > 0 && job.place !== null && ['inquiry', 'quoted', 'ran out'].includes(job.state),
  perform: ({ job }) => job && pencilDates(job.id, job.version),
};

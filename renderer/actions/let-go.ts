import { client } from '../door.ts';
import { deed, say } from '../deeds.ts';
import type { Action } from './action.ts';

/** Lets a pencil go: its dates are free at once. */
export const letGo: Action = {
  name: 'let-go',
  label: () => 'Let it go',
  when: ({ job }) => job?.state === 'pencilled' || job?.state === 'ran out',
  perform: ({ job }) =>
    deed(async () => {
      if (!job) return;
      await client.jobs.letGo({ id: job.id, version: job.version, key: crypto.randomUUID() });
      say('Let go. The dates are free; "Take it back" undoes this.');
    }),
};

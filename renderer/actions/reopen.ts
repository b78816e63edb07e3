import { client } from '../door.ts';
import { deed, say } from '../deeds.ts';
import type { Action } from './action.ts';

/** Takes back a decline or a letting go. */
export const reopen: Action = {
  name: 'reopen',
  label: () => 'Take it back',
  when: ({ job }) => job?.state === 'declined' || job?.state === 'let go',
  perform: ({ job }) =>
    deed(async () => {
      if (!job) return;
      await client.jobs.reopen({ id: job.id, version: job.version, key: crypto.randomUUID() });
      say('Open again.');
    }),
};

import { client } from '../door.ts';
import { deed, say } from '../deeds.ts';
import { copyText } from '../parts/copy.ts';
import type { Action } from './action.ts';

/** Says no kindly: the inquiry is closed and the reply is on the clipboard. */
export const decline: Action = {
  name: 'decline',
  label: () => 'Decline kindly',
  when: ({ job }) => job?.state === 'inquiry' || job?.state === 'quoted' || job?.state === 'ran out',
  perform: ({ job }) =>
    deed(async () => {
      if (!job) return;
      const { reply } = await client.jobs.decline({ id: job.id, version: job.version, key: crypto.randomUUID() });
      const copied = await copyText(reply.text);
      say(copied ? 'Declined. A kind reply is on the clipboard; paste it into your mail.' : `Declined. Your reply: ${reply.text}`);
    }),
};

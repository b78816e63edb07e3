import { client } from '../door.ts';
import { deed, say } from '../deeds.ts';
import type { Scene } from '../scene.ts';
import type { Action } from './action.ts';

/** States in which a made quote may hold the dates. */
const holdable = new Set(['inquiry', 'quoted', 'pencilled', 'ran out']);
const mayPencil = (scene: Scene): boolean => scene.pencil && scene.job !== undefined && holdable.has(scene.job.state);

/** Freezes the draft as a version, writes its paper and reply, and pencils the dates where ticked. */
export const makeQuote: Action = {
  name: 'make-quote',
  label: (scene) => (mayPencil(scene) ? 'Make the quote, pencil it' : 'Make the quote'),
  when: ({ job, draft }) =>
    job !== undefined && draft !== undefined && draft.missing.length === 0 && !['let go', 'declined', 'cancelled'].includes(job.state),
  perform: (scene) =>
    deed(async () => {
      const { job, draft } = scene;
      if (!job || !draft) return;
      const { version } = await client.quotes.make({
        jobId: job.id,
        jobVersion: job.version,
        draftVersion: draft.draftVersion,
        pencil: mayPencil(scene),
        key: crypto.randomUUID(),
      });
      say(`Version ${version.number} is made. Save its PDF and copy the reply.`);
    }),
};

import { client } from '../door.ts';
import { deed } from '../deeds.ts';
import { sayWithUndo } from '../undo.ts';
import type { Action } from './action.ts';

/** Ends my paid time that runs on a job. */
export const wrapNow: Action = {
  name: 'wrap-now',
  label: () => 'Wrap now',
  when: ({ site }) => site !== undefined && site.running !== null,
  perform: async ({ site }) => {
    const running = site?.running;
    if (!running) return;
    const kept = await deed(() => client.hours.wrapNow({ id: running.id, version: running.version, key: crypto.randomUUID() }));
    if (!kept) return;
    const { jobId, id, version, wrap } = kept.worked;
    const { handId, kind, zone, call, callIs, unpaidBreakMinutes, note } = kept.worked;
    const open = { handId, kind, zone, call, callIs, wrap: null, unpaidBreakMinutes, note };
    const undo = () => client.hours.save({ jobId, id, version, fields: open });
    sayWithUndo(`Wrapped at ${wrap?.slice(11) ?? ''}.`, 'Undo', undo, 'The clock runs on.');
  },
};

import { client } from '../door.ts';
import { deed } from '../deeds.ts';
import { sayWithUndo } from '../undo.ts';
import type { Action } from './action.ts';

/** Begins my paid time on a job, on the clock of its place. */
export const callNow: Action = {
  name: 'call-now',
  label: () => 'Call now',
  when: ({ site }) => site !== undefined && site.running === null,
  perform: async ({ site }) => {
    if (!site) return;
    const kept = await deed(() => client.hours.callNow({ jobId: site.jobId, key: crypto.randomUUID() }));
    if (!kept) return;
    const { id, version, call } = kept.worked;
    sayWithUndo(`On the clock since ${call.slice(11)}.`, 'Undo', () => client.hours.drop({ id, version }), 'The call is taken back.');
  },
};

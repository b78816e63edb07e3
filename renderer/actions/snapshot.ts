import { client } from '../door.ts';
import { deed, say } from '../deeds.ts';
import type { Action } from './action.ts';

/** Writes a verified snapshot of the store now. */
export const snapshot: Action = {
  name: 'snapshot',
  label: () => 'Snapshot now',
  when: () => true,
  perform: () =>
    deed(async () => {
      const { snapshot: made } = await client.store.snapshot({});
      say(`Snapshot ${made.name} is written and checked.`);
    }),
};

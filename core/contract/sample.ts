import { z } from 'zod';
import { reads, writes } from './base.ts';
import { InstantText, Nothing } from './parts.ts';
import { Snapshot } from './store.ts';

const SampleState = z.strictObject({
  empty: z.boolean().describe('nothing is on the books: the sample can be loaded'),
  loadedAt: InstantText.nullable(),
  loading: z.strictObject({ done: z.int(), total: z.int() }).nullable().describe('in steps'),
});
export type SampleState = z.infer<typeof SampleState>;

export const sample = {
  state: reads('Whether this store holds the sample year, and how far a load is that is under way.', Nothing, SampleState),
  load: writes(
    'Load the sample year, told for today, into an empty store: invented people and businesses. All of it or nothing.',
    Nothing,
    Nothing,
  ),
  leave: writes(
    'Leave the sample and start anew: everything is taken out of the store, also what was added to the sample. A snapshot is written first.',
    Nothing,
    z.strictObject({ snapshot: Snapshot }),
  ),
};

import { z } from 'zod';
import { reads, writes } from './base.ts';
import { InstantText, Nothing } from './parts.ts';

export const Snapshot = z.strictObject({
  name: z.string(),
  takenAt: InstantText,
  bytes: z.int(),
  why: z.enum(['asked', 'daily', 'before migration']),
});
export type Snapshot = z.infer<typeof Snapshot>;

export const store = {
  state: reads(
    'How the store is: where it lies, its newest snapshot, its schema.',
    Nothing,
    z.strictObject({
      folder: z.string(),
      schema: z.int(),
      sqlite: z.string(),
      lastSnapshot: Snapshot.nullable(),
      snapshots: z.int(),
      version: z.string(),
    }),
  ),
  snapshot: writes('Write a verified snapshot now.', Nothing, z.strictObject({ snapshot: Snapshot })),
  snapshots: reads('All snapshots, newest first.', Nothing, z.strictObject({ snapshots: z.array(Snapshot) })),
};

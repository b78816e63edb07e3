import { z } from 'zod';
import { reads } from './base.ts';
import { Id, Line } from './parts.ts';

export const Found = z.strictObject({
  kind: z.enum(['job', 'paper', 'client', 'hand', 'place', 'rate card']),
  id: Id.or(z.string()),
  jobId: Id.nullable(),
  title: z.string(),
  second: z.string(),
});
export type Found = z.infer<typeof Found>;

export const find = {
  search: reads(
    'Jobs, papers, clients, hands and rate cards that hold the words.',
    z.strictObject({ text: Line, limit: z.int().min(1).max(50).default(12) }),
    z.strictObject({ found: z.array(Found) }),
  ),
};

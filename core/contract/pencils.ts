import { z } from 'zod';
import { reads, writes } from './base.ts';
import { DateText, DeedKey, Id, Moment } from './parts.ts';

const Other = z.strictObject({ jobId: Id, title: z.string() });

/** Where a live pencil stands on each of its dates: 1 is first. */
const PencilRank = z.strictObject({ date: DateText, rank: z.int().min(1), before: z.array(Other), behind: z.array(Other) });
export type PencilRank = z.infer<typeof PencilRank>;

export const Challenge = z.strictObject({
  until: Moment,
  unanswered: z.boolean().describe('the moment is past; letting go is offered, never done alone'),
});
export type Challenge = z.infer<typeof Challenge>;

export const pencils = {
  ranks: reads(
    'The rank of a pencil for each of its dates, and whether it is challenged. A job without a live pencil has no ranks.',
    z.strictObject({ jobId: Id }),
    z.strictObject({ ranks: z.array(PencilRank), challenge: Challenge.nullable() }),
  ),
  challenge: writes(
    'Ask the holder of a live pencil for a yes or no, by default within 24 h and never past door-out.',
    z.strictObject({ jobId: Id, hours: z.int().min(1).max(240).default(24), key: DeedKey }),
    z.strictObject({ challenge: Challenge }),
  ),
};

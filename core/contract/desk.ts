import { z } from 'zod';
import { reads } from './base.ts';
import { Id, InstantText, Moment, Money, Nothing } from './parts.ts';
import { Stringline } from './road.ts';

/** One running clock: what bites at an instant, and the action that stops it. */
export const Clock = z.strictObject({
  id: z.string(),
  kind: z.enum(['reply-by', 'quote', 'pencil', 'challenge', 'ran out', 'call', 'question']),
  at: InstantText,
  late: z.boolean(),
  jobId: Id,
  jobVersion: z.int(),
  sentence: z.string(),
  second: z.string(),
  action: z.string().describe('name of the action on the screen that stops it'),
});
export type Clock = z.infer<typeof Clock>;

export const desk = {
  see: reads(
    "What bites next, the next fourteen days, and this month's figures.",
    Nothing,
    z.strictObject({
      now: Moment,
      clocks: z.array(Clock),
      stringline: Stringline.nullable(),
      month: z.strictObject({ label: z.string(), inked: Money, pencilled: Money }).nullable(),
    }),
  ),
};

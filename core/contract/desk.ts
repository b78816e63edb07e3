import { z } from 'zod';
import { reads, writes } from './base.ts';
import { Sum } from './ledger.ts';
import { Id, InstantText, Moment, Money, Nothing } from './parts.ts';
import { Stringline } from './road.ts';

/** One running clock: what bites at an instant, and the action that stops it. */
export const Clock = z.strictObject({
  id: z.string(),
  kind: z.enum([
    'reply-by',
    'quote',
    'pencil',
    'challenge',
    'ran out',
    'call',
    'question',
    'kit',
    'deposit',
    'hours',
    'bill',
    'order',
    'due',
    'reminder',
    'pay hand',
    'notes',
    'edit',
    'approval',
    'originals',
    'hand',
    'leg',
    'document',
    'papers',
    'certificate',
  ]),
  at: InstantText,
  late: z.boolean(),
  jobId: Id.nullable().describe('null for what is about no job'),
  jobVersion: z.int(),
  sentence: z.string(),
  second: z.string(),
  action: z.string().describe('name of the action on the screen that stops it'),
  invoiceId: Id.optional().describe('the bill that it is about'),
});
export type Clock = z.infer<typeof Clock>;

/** Something that happened by itself and is told until it is put away. */
export const DeskLine = z.strictObject({
  id: z
    .string()
    .regex(
      /^(moved-up:[0-9a-f-]{36}:[0-9a-f-]{36}|clock:[0-9a-f-]{36}|calendar:([0-9a-f-]{36}|out):\d{1,15})$/,
      'is not a line of the Desk',
    )
    .describe('what ended and who moved up, which clock changed, or which calendar cannot be read since when'),
  at: InstantText,
  jobId: Id.nullable().describe('null for time of my own and for calendars'),
  sentence: z.string(),
  second: z.string(),
});
export type DeskLine = z.infer<typeof DeskLine>;
const OneLine = z.strictObject({ line: DeskLine.shape.id });

export const desk = {
  see: reads(
    "What bites next, the next fourteen days, and this month's figures.",
    Nothing,
    z.strictObject({
      now: Moment,
      clocks: z.array(Clock),
      lines: z.array(DeskLine).describe('what happened in the last fourteen days, and clocks whose rules changed; until it is put away'),
      stringline: Stringline.nullable(),
      month: z
        .strictObject({
          label: z.string(),
          inked: Money,
          pencilled: Money,
          owed: z.strictObject({ open: Sum, late: Sum }).describe('to me, today'),
          perHour: z.strictObject({ jobs: z.int(), perHour: Money }).nullable().describe('kept per hour away, over the last jobs billed'),
        })
        .nullable(),
    }),
  ),
  putAway: writes('Put a line of the Desk away: it was read.', OneLine, Nothing),
  bringBack: writes('Bring a line back that was put away.', OneLine, Nothing),
};

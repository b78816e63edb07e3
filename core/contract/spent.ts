import { z } from 'zod';
import { reads, writes } from './base.ts';
import { DateText, DeedKey, Id, InstantText, Line, Nothing, Version } from './parts.ts';

/** A stretch of work on a deliverable. */
export const TimeSpent = z.strictObject({
  id: Id,
  version: Version,
  deliverableId: Id,
  stageId: Id.nullable(),
  startAt: InstantText,
  endAt: InstantText.nullable().describe('null while the clock runs'),
  typed: z.boolean().describe('typed as a length on a date: its time of day says nothing'),
  date: DateText.describe('at home'),
  minutes: z.int().describe('until now, while it runs'),
  note: z.string(),
});
export type TimeSpent = z.infer<typeof TimeSpent>;

/** The one clock that runs, whatever it is for. */
const Running = TimeSpent.extend({ jobId: Id, title: z.string(), name: z.string().describe('of the deliverable'), stage: z.string() });
export type Running = z.infer<typeof Running>;

const StageTime = z.strictObject({
  stageId: Id.nullable().describe('null for work that no stage was named for'),
  kind: z.string(),
  minutes: z.int(),
  estimate: z.int().describe('minutes'),
  done: z.boolean(),
  sentence: z.string(),
});

const Figure = z.strictObject({ count: z.int(), median: z.number(), least: z.number(), most: z.number() }).describe('hours');
/** What finished edits of a template really took. */
export const Past = z.strictObject({
  edits: z.int(),
  perMinute: Figure.nullable().describe('edit hours for a finished minute'),
  ingest: Figure.nullable(),
  perRound: Figure.nullable(),
  sentences: z.array(z.string()),
});
export type Past = z.infer<typeof Past>;

const DeliverableTime = z.strictObject({
  now: InstantText,
  running: Running.nullable(),
  stages: z.array(StageTime),
  total: z.strictObject({ minutes: z.int(), estimate: z.int(), sentence: z.string() }),
  entries: z.array(TimeSpent).describe('newest first'),
  past: Past.nullable().describe('null without a template'),
});
export type DeliverableTime = z.infer<typeof DeliverableTime>;

const OneEntry = { id: Id, version: Version, key: DeedKey };
const EntryAnswer = z.strictObject({ entry: TimeSpent });

export const spent = {
  of: reads('Time spent on a deliverable, beside what was estimated.', z.strictObject({ deliverableId: Id }), DeliverableTime),
  running: reads('The clock that runs, if one does.', Nothing, z.strictObject({ running: Running.nullable() })),
  past: reads('What finished edits of a template really took.', z.strictObject({ templateId: Id }), z.strictObject({ past: Past })),
  start: writes(
    'Start the clock on a stage. One clock runs at a time: the one that runs stops.',
    z.strictObject({ deliverableId: Id, stageId: Id.nullable(), key: DeedKey }),
    z.strictObject({ entry: TimeSpent, stopped: TimeSpent.nullable() }),
  ),
  stop: writes(
    'Stop the clock, now or at the moment when the work ended.',
    z.strictObject({ ...OneEntry, at: InstantText.optional() }),
    z.strictObject({ entry: TimeSpent.nullable().describe('null where not a minute was spent: nothing is kept') }),
  ),
  type: writes(
    'Type time that was spent: without an id new, with id and version a correction.',
    z.strictObject({
      deliverableId: Id,
      id: Id.optional(),
      version: Version.optional(),
      stageId: Id.nullable(),
      on: DateText,
      minutes: z.int('must be whole minutes').min(1, 'is less than a minute').max(1440, 'is more than a day'),
      note: Line,
      key: DeedKey,
    }),
    EntryAnswer,
  ),
  drop: writes('Take time off that was not spent. What it was stays in the history.', z.strictObject(OneEntry), Nothing),
};

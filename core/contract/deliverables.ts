import { z } from 'zod';
import { reads, writes } from './base.ts';
import { DateText, DeedKey, Id, InstantText, Name, Nothing, Positive, Version, WallTime } from './parts.ts';
import { EditNumbers } from './templates.ts';

/** What is done on a deliverable, in this order. The last two are marks without hours. */
const stageKinds = ['ingest', 'selects', 'rough cut', 'fine cut', 'round', 'picture lock', 'delivered', 'approved'] as const;
export const StageKind = z.enum(stageKinds);
export type StageKind = z.infer<typeof StageKind>;

/** A stretch that is set aside for one stage, whatever the plan would say; half-open. */
const Pin = z.strictObject({ id: Id, start: InstantText, end: InstantText });

export const EditStage = z.strictObject({
  id: Id,
  version: Version,
  position: z.int(),
  kind: StageKind,
  name: z.string().describe('as it is shown: "Round 2"'),
  halfHours: z.int().min(0).describe('estimated half hours of editing'),
  releaseDate: DateText.nullable().describe('not before this date'),
  doneAt: InstantText.nullable(),
  pins: z.array(Pin),
});
export type EditStage = z.infer<typeof EditStage>;

const DeliverableFields = EditNumbers.extend({
  name: Name,
  editHours: Positive.nullable().describe('edit hours in place of minutes times hours, where only those are known'),
  due: DateText.nullable().describe('promised date; due at the end of it on the clock of home. Null where it must still be asked'),
  internalDate: DateText.nullable().describe('when it is to be done for myself, at the latest the promised date'),
  handId: Id.nullable().describe('the hand who edits it: its hours leave my calendar'),
});

export const Deliverable = DeliverableFields.extend({
  id: Id,
  version: Version,
  jobId: Id,
  position: z.int(),
  template: z.strictObject({ id: Id, name: z.string(), dropped: z.boolean() }).nullable(),
  agreedDue: DateText.nullable().describe('what was promised first'),
  hand: z.strictObject({ id: Id, name: z.string() }).nullable(),
  off: z.boolean().describe('taken off; it can be restored'),
  state: z.enum(['open', 'delivered', 'approved']),
  hours: Positive.describe('edit hours of all its stages'),
  lacks: z.array(z.string()).describe('what must still be said of it, in words'),
  stages: z.array(EditStage),
});
export type Deliverable = z.infer<typeof Deliverable>;

/** Work of others that lies between what is late and its date. */
const TakesTime = z.strictObject({
  jobId: Id.nullable().describe('null for the candidate, or for time of my own'),
  title: z.string(),
  hours: z.number().describe('of editing; 0 where it takes whole days'),
  days: z.int().describe('dates that it takes on site or on the way; 0 for editing'),
});

/** How one deliverable lies in the plan. */
export const PlannedEdit = z.strictObject({
  deliverableId: Id,
  jobId: Id,
  jobTitle: z.string(),
  name: z.string(),
  due: DateText.nullable(),
  internalDate: DateText.nullable(),
  sameDay: z.boolean(),
  hoursLeft: z.number().describe('edit hours that are still to be done, in halves'),
  unplaced: z.number().describe('hours of them that found no place in the calendar'),
  start: InstantText.nullable().describe('planned; null where nothing is left to do or nothing found a place'),
  finish: InstantText.nullable().describe('planned; null where not all of it found a place'),
  latestStart: InstantText.nullable().describe(
    'from which it still meets its date when all others keep theirs; null where it cannot, or has no date',
  ),
  slackHours: z.number().nullable().describe('open edit hours between planned and latest start'),
  lateDays: z.int().describe('business days that the planned finish lies after the promised date; 0 in time'),
  pastInternal: z.boolean().describe('planned after its internal date'),
  waits: z.string().describe('what it waits for, in words; empty where it waits for nothing'),
  takers: z.array(TakesTime).describe('what takes its time, most first; only where it is late'),
  sentence: z.string().describe('how it stands; names what takes the time where it is late'),
});
export type PlannedEdit = z.infer<typeof PlannedEdit>;

/** A stretch of editing without a pause. */
const PlannedBlock = z.strictObject({
  stageId: Id,
  deliverableId: Id,
  jobId: Id,
  start: InstantText,
  end: InstantText,
  pinned: z.boolean(),
});

export const EditPlan = z.strictObject({
  at: InstantText,
  zone: z.string().describe('clock of home'),
  hoursADay: z.number(),
  edits: z.array(PlannedEdit).describe('all that are not delivered, the earliest date first, those without one last'),
  blocks: z.array(PlannedBlock).describe('in order of time'),
  troubles: z.array(z.string()).describe('why the plan is not whole, in words'),
  sentence: z.string().describe('how many edits there are and how many are late'),
});
export type EditPlan = z.infer<typeof EditPlan>;

/** Changes to try on before anything is saved. */
export const EditTryOn = z.strictObject({
  hired: z.array(Id).max(100).optional().describe('deliverables as if somebody were hired to edit them'),
  moved: z
    .array(z.strictObject({ deliverableId: Id, due: DateText }))
    .max(100)
    .optional()
    .describe('deliverables as if another date had been agreed'),
  hoursADay: z.number().min(0.5).max(24).optional(),
  onTravelDays: z.boolean().optional(),
  onShootDays: z.boolean().optional(),
  closedWeekdays: z.array(z.int().min(1).max(7)).max(7).optional().describe('1 is Monday'),
  order: z
    .enum(['fewest late'])
    .optional()
    .describe('as few edits late as can be, however late those are; without it the largest lateness is the least'),
});
export type EditTryOn = z.infer<typeof EditTryOn>;

const One = z.strictObject({ deliverable: Deliverable });
const Which = { id: Id, version: Version, key: DeedKey };

export const deliverables = {
  of: reads(
    'What is promised of a job, in order; what was taken off stands at the end.',
    z.strictObject({ jobId: Id }),
    z.strictObject({
      deliverables: z.array(Deliverable),
      canMake: z.boolean().describe('the job is in ink and something of its quote was not made into a deliverable yet'),
      filesThereFrom: InstantText.nullable().describe('last wrap: camera files are not there before'),
    }),
  ),
  makeFromQuote: writes(
    'Make deliverables from the quote that was agreed on. It is done with the ink; what was made already, or taken off, is not made again.',
    z.strictObject({ jobId: Id, key: DeedKey }),
    z.strictObject({ made: z.array(Deliverable), sentence: z.string() }),
  ),
  add: writes(
    'Promise something more: from a template, or with numbers of its own.',
    z.strictObject({ jobId: Id, templateId: Id.optional(), fields: DeliverableFields.partial(), key: DeedKey }),
    One,
  ),
  change: writes(
    'Change a deliverable. Other numbers make its open stages anew; what is done stays done.',
    z.strictObject({ ...Which, changes: DeliverableFields.partial() }),
    One,
  ),
  takeOff: writes('Take a deliverable off: it takes no time any more, and can be restored.', z.strictObject(Which), One),
  restore: writes('Put a deliverable back that was taken off.', z.strictObject(Which), One),
  changeStage: writes(
    'Change the hours of a stage, or the date before which it cannot begin.',
    z.strictObject({
      ...Which,
      changes: z.strictObject({ hours: Positive.optional(), releaseDate: DateText.nullable().optional() }),
    }),
    One,
  ),
  stageDone: writes(
    'A stage is done, and with it all before it.',
    z.strictObject({ ...Which, at: InstantText.optional().describe('when; now if not given') }),
    One,
  ),
  stageOpen: writes('A stage is open again, and with it all after it.', z.strictObject(Which), One),
  pin: writes(
    'Set a stretch aside for a stage, on the clock of home, whatever the plan would say.',
    z.strictObject({ stageId: Id, start: WallTime, end: WallTime, key: DeedKey }),
    One,
  ),
  unpin: writes('Let a stretch go that was set aside.', z.strictObject({ id: Id, key: DeedKey }), One),
  plan: reads(
    'The edit schedule over all jobs as it is now: blocks, planned start and finish, latest start, and what is late with what takes the time.',
    Nothing,
    z.strictObject({ plan: EditPlan }),
  ),
  tryOn: reads(
    'The edit schedule as it would be with changes that are not saved, and what they would change.',
    z.strictObject({ tryOn: EditTryOn }),
    z.strictObject({
      plan: EditPlan,
      changed: z.array(
        z.strictObject({
          deliverableId: Id,
          name: z.string(),
          jobTitle: z.string(),
          lateDaysBefore: z.int(),
          lateDays: z.int(),
          sentence: z.string(),
        }),
      ),
      sentence: z.string(),
    }),
  ),
};

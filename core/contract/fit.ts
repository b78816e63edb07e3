import { z } from 'zod';
import { reads } from './base.ts';
import { DateText, Id, InstantText, Moment, Place, Role } from './parts.ts';
import { JobDay, JobDays } from './jobs.ts';
import { ShiftDays, Stringline } from './road.ts';
import { KitNeed } from './kit.ts';
import { LegFields } from './trips.ts';
import { TryOn } from './try-on.ts';

export const Hardness = z.enum(['blocks', 'settle', 'know']);
export type Hardness = z.infer<typeof Hardness>;

/** Something that would lift a finding. `tryOn` can be given to `fit.check` to see what it would change. */
export const Lift = z.strictObject({
  kind: z.string(),
  label: z.string(),
  tryOn: TryOn.optional(),
  way: z.strictObject({ from: Place, to: Place }).optional().describe('the way whose real time would be typed'),
  jobId: Id.optional().describe('the job on the books that it would change: whose holder is asked, whose ticket is given up'),
  dates: z.array(DateText).optional().describe('dates of the candidate that a hand would cover'),
});
export type Lift = z.infer<typeof Lift>;

export const Finding = z.strictObject({
  kind: z.string(),
  hardness: Hardness,
  concerns: z.array(z.strictObject({ jobId: Id.nullable(), title: z.string() })),
  numbers: z
    .record(z.string(), z.union([z.number(), z.string()]))
    .describe('the figures that the sentence was made from; minutes unless the name says otherwise'),
  sentence: z.string(),
  lifts: z.array(Lift),
});
export type Finding = z.infer<typeof Finding>;

export const Candidate = z.strictObject({
  title: z.string().trim().min(1).max(120).default('This job'),
  place: Place,
  days: JobDays.min(1, 'has no day; give at least one'),
  replyBy: Moment.nullable().default(null),
  legs: z.array(LegFields).max(60).default([]),
  kit: z.array(KitNeed).max(200).default([]),
  role: Role.default('shoot').describe('what a hand would have to cover'),
});
export type Candidate = z.infer<typeof Candidate>;

export const FitAnswer = z.enum(['free', 'free if', 'not possible']);
export type FitAnswer = z.infer<typeof FitAnswer>;
export const FitResult = z.strictObject({
  answer: FitAnswer,
  findings: z.array(Finding),
  fine: z.string().describe('what is fine, in one line'),
  missing: z.array(z.string()).describe('facts without which the answer is not whole'),
});
export type FitResult = z.infer<typeof FitResult>;

export const Nearest = z.strictObject({
  shiftDays: z.int().describe('later is above zero'),
  days: z.array(JobDay),
  answer: z.enum(['free', 'free if']),
  reason: z.string().describe('what must be settled, or what is fine'),
});
export type Nearest = z.infer<typeof Nearest>;

export const fit = {
  check: reads(
    'Can this be taken, against everything on the books? For a stored job or a candidate that is not stored.',
    z.strictObject({
      jobId: Id.optional(),
      candidate: Candidate.optional(),
      tryOn: TryOn.optional(),
      shiftDays: ShiftDays,
      now: InstantText.optional().describe('the real now, if not given'),
    }),
    z.strictObject({ result: FitResult, stringline: Stringline.nullable() }),
  ),
  nearest: reads(
    'The nearest dates that work: those that are free, then those free if. Typed ways move along, tickets do not.',
    z.strictObject({
      jobId: Id.optional(),
      candidate: Candidate.optional(),
      tryOn: TryOn.optional(),
      now: InstantText.optional(),
      withinDays: z.int().min(1).max(90).default(28),
      limit: z.int().min(1).max(20).default(6),
    }),
    z.strictObject({ nearest: z.array(Nearest) }),
  ),
};

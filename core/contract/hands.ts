import { z } from 'zod';
import { reads, writes } from './base.ts';
import { FitAnswer } from './fit.ts';
import { JobState } from './jobs.ts';
import { DateText, DeedKey, Id, InstantText, Line, Money, WallTime } from './parts.ts';

/** Where a hand stands with a date: only a yes takes it off my lane; a pencil holds their time. */
export const HandState = z.enum(['asked', 'pencilled', 'said yes', 'said no', 'let go']);
export type HandState = z.infer<typeof HandState>;

export const HandDate = z.strictObject({
  date: DateText,
  state: HandState,
  askedAt: InstantText,
  at: InstantText.describe('of the last word'),
  how: z.string(),
  wanted: z.boolean().describe('it is a date of the job still'),
});
export type HandDate = z.infer<typeof HandDate>;

/** A hand on a job, with what the check says to the dates that they hold or would hold. */
export const HandOnJob = z.strictObject({
  handId: Id,
  name: z.string(),
  backup: z.boolean(),
  dates: z.array(HandDate),
  answer: FitAnswer.nullable().describe('null where the place is not known or none of the dates is wanted'),
  sentences: z.array(z.string()),
});
export type HandOnJob = z.infer<typeof HandOnJob>;

/** Somebody who could take over dates. */
const StandIn = z.strictObject({
  handId: Id,
  name: z.string(),
  backup: z.boolean(),
  answer: FitAnswer,
  cost: z.array(Money).describe('by their rates; one for each currency'),
  sentences: z.array(z.string()),
  asked: z.boolean().describe('was asked for one of these dates and has not said no'),
  message: z.string().describe('asks them, to copy'),
});
export type StandIn = z.infer<typeof StandIn>;

const HeldDay = z.strictObject({ date: DateText, call: WallTime, wrap: WallTime });

/** What is held in days on which I cannot come. */
export const HeldJob = z.strictObject({
  jobId: Id,
  title: z.string(),
  state: JobState,
  place: z.string(),
  zone: z.string(),
  days: z.array(HeldDay).describe('that I would do myself'),
  byHands: z.array(z.strictObject({ date: DateText, name: z.string() })).describe('dates that hands said yes to; they stand'),
  contact: z.strictObject({ name: z.string(), email: z.string(), phone: z.string() }),
  standIns: z.array(StandIn).describe('who has a rate for the role: backups first, those who are free before the others'),
  message: z.string().describe('tells the client, to copy; it promises nothing'),
});
export type HeldJob = z.infer<typeof HeldJob>;

const Dates = z.array(DateText).min(1, 'has no date; give at least one').max(366);
const OnJob = z.strictObject({ hands: z.array(HandOnJob) });

export const hands = {
  of: reads('Hands on a job: who was asked for which dates, what they said, and whether they can.', z.strictObject({ jobId: Id }), OnJob),
  ask: writes(
    'Note that a hand was asked for dates of a job.',
    z.strictObject({ jobId: Id, handId: Id, dates: Dates, how: Line.default(''), key: DeedKey }),
    OnJob,
  ),
  settle: writes(
    'Note what a hand said: pencilled, yes or no; or that they were let go, or are asked anew.',
    z.strictObject({ jobId: Id, handId: Id, dates: Dates, state: HandState, how: Line.default(''), key: DeedKey }),
    OnJob,
  ),
  cannotCome: reads(
    'I cannot come, ill or held up: what is held in these days, who could take over, and a message to each. Nothing is changed by it.',
    z.strictObject({ from: DateText, to: DateText.describe('included') }),
    z.strictObject({ jobs: z.array(HeldJob) }),
  ),
};

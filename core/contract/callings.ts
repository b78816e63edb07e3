import { z } from 'zod';
import { reads, writes } from './base.ts';
import { Job } from './jobs.ts';
import { DateText, DeedKey, Id, InstantText, Version } from './parts.ts';
import { boundAndPaid, Cancellation } from './quotes.ts';

/** Ink that was cancelled or postponed, with what it owes as it was shown when it was done. */
export const CallingOff = z.strictObject({
  id: Id,
  at: InstantText,
  told: InstantText.describe('when notice was given'),
  quoteVersion: z.int().describe('the version whose terms count'),
  from: DateText.describe('first date as it was'),
  postponedTo: DateText.nullable().describe('first date as agreed anew; null where it was cancelled'),
  owes: Cancellation,
});
export type CallingOff = z.infer<typeof CallingOff>;

const OneJob = { id: Id, version: Version, key: DeedKey };

export const callings = {
  list: reads(
    'What was called off of a job and stands, newest first.',
    z.strictObject({ jobId: Id }),
    z.strictObject({ callings: z.array(CallingOff) }),
  ),
  off: writes(
    'Call off a job in ink: cancel it, or postpone it to a date agreed now. What it owes by its terms is kept.',
    z.strictObject({
      ...OneJob,
      told: InstantText.optional().describe('when notice was given; now, if not given'),
      postponeTo: DateText.nullable().describe('new first date, the others follow at the same distance; null to cancel'),
      ...boundAndPaid,
    }),
    z.strictObject({ job: Job, calling: CallingOff }),
  ),
  takeBack: writes(
    'Take back the last calling off: a cancelled job is in ink again, a postponed one has the dates that it had.',
    z.strictObject(OneJob),
    z.strictObject({ job: Job }),
  ),
};

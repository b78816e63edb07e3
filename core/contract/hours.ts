import { z } from 'zod';
import { reads, writes } from './base.ts';
import { DateText, DayKind, DeedKey, Decimal, Id, InstantText, Line, Money, Name, Nothing, Version, WallTime, Zone } from './parts.ts';

const OfTwo = z.enum(['first', 'second']).optional().describe('which is meant where the clock showed that time twice');

/** Hours as a person types them: wall times on the clock of where it was. */
export const WorkedFields = z.strictObject({
  handId: Id.nullable().describe('null for me'),
  kind: DayKind,
  zone: Zone,
  call: WallTime,
  wrap: WallTime.nullable().describe('null while it runs'),
  callIs: OfTwo,
  wrapIs: OfTwo,
  unpaidBreakMinutes: z.int('must be whole minutes').min(0, 'is below zero; give zero or more').max(1440, 'is more than a day'),
  note: Line,
});
export type WorkedFields = z.infer<typeof WorkedFields>;

export const Worked = WorkedFields.extend({
  id: Id,
  version: Version,
  jobId: Id,
  handName: z.string().describe('empty for me'),
  date: DateText.describe('of the call at the place'),
  callAt: InstantText,
  wrapAt: InstantText.nullable(),
});
export type Worked = z.infer<typeof Worked>;

/** Overtime that was asked for, and what was said. */
export const OvertimeAsk = z.strictObject({
  id: Id,
  jobId: Id,
  date: DateText,
  minutes: z.int(),
  askedAt: InstantText,
  state: z.enum(['asked', 'approved', 'refused']),
  who: z.string(),
  at: InstantText.nullable(),
  how: z.string(),
});
export type OvertimeAsk = z.infer<typeof OvertimeAsk>;

export const HandDue = z.strictObject({
  handId: Id,
  name: z.string(),
  jobId: Id,
  title: z.string(),
  amount: Money.describe('for the days worked; as quoted until hours are entered'),
  paid: Money,
  open: Money,
  due: DateText.nullable(),
  reason: z.string(),
  cautions: z.array(z.string()),
});
export type HandDue = z.infer<typeof HandDue>;

const PayLine = z.strictObject({ what: z.string(), quantity: Decimal, unit: z.string(), amount: Money, reason: z.string() });

export const JobHours = z.strictObject({
  now: InstantText,
  zone: Zone.describe('of the place'),
  days: z.array(Worked),
  asks: z.array(OvertimeAsk),
  overtime: z.array(
    z.strictObject({ date: DateText, over: z.int(), open: z.int().describe('minutes that nobody agreed to'), sentence: z.string() }),
  ),
  lines: z.array(PayLine).describe('finished hours of mine, before rush, discount and tax'),
  total: Money.nullable(),
  owed: z.array(HandDue),
  cautions: z.array(z.string()),
  toEnter: z.array(DateText).describe('paid dates that are over and have no hours'),
  approver: z.string().describe('who may approve overtime, as far as it is known'),
});
export type JobHours = z.infer<typeof JobHours>;

const OneWorked = z.strictObject({ worked: Worked });
const OneAsk = z.strictObject({ ask: OvertimeAsk });

export const hours = {
  of: reads(
    'The hours of a job as they were worked, what they come to by the card that was agreed on, overtime asked for, and what hands are owed.',
    z.strictObject({ jobId: Id }),
    JobHours,
  ),
  save: writes(
    'Save hours: without an id new ones, with id and version a correction.',
    z.strictObject({ jobId: Id, id: Id.optional(), version: Version.optional(), fields: WorkedFields, key: DeedKey }),
    OneWorked,
  ),
  drop: writes('Take hours off. What they were stays in the history.', z.strictObject({ id: Id, version: Version, key: DeedKey }), Nothing),
  callNow: writes(
    'Somebody is on the clock from now on, on the clock of the place.',
    z.strictObject({ jobId: Id, handId: Id.nullable().optional().describe('me, if not given'), key: DeedKey }),
    OneWorked,
  ),
  wrapNow: writes('The call that runs ends now.', z.strictObject({ id: Id, version: Version, key: DeedKey }), OneWorked),
  ask: writes(
    'Note that overtime was asked for.',
    z.strictObject({
      jobId: Id,
      date: DateText,
      minutes: z.int('must be whole minutes').min(1, 'is less than a minute').max(1440, 'is more than a day'),
      key: DeedKey,
    }),
    OneAsk,
  ),
  dropAsk: writes('Take back an ask that nobody has answered.', z.strictObject({ id: Id, key: DeedKey }), Nothing),
  settleAsk: writes(
    'Note who said yes or no to overtime, when and how.',
    z.strictObject({ id: Id, approved: z.boolean(), who: Name, at: InstantText.optional(), how: Line, key: DeedKey }),
    OneAsk,
  ),
  openAsk: writes('An answer that was noted by mistake is open again.', z.strictObject({ id: Id, key: DeedKey }), OneAsk),
  handPaid: writes(
    'Note what was paid to a hand for a job; an amount below zero takes a payment back.',
    z.strictObject({ jobId: Id, handId: Id, amount: Money, on: DateText, how: Line, key: DeedKey }),
    z.strictObject({ owed: z.array(HandDue) }),
  ),
};

import { z } from 'zod';
import { reads, writes } from './base.ts';
import { Currency, DateText, Id, Money, Name, Note, Nothing, Percent, Positive, Role, Version } from './parts.ts';

/** Overtime in hours past the day length: from (inclusive) to (exclusive, null = without end), times the hourly base. */
const OvertimeTier = z.strictObject({ fromHours: Positive, toHours: Positive.nullable(), times: Positive });
/** A surcharge on the section "days" when notice is strictly under so many hours. */
const RushStep = z.strictObject({ underHours: z.int().min(1).max(2000), percent: Percent });
/** What a cancellation owes of the net of days, kit and editing, under so many hours before first call. */
const CancelStep = z.strictObject({ underHours: z.int().min(1).max(5000), percent: Percent });
/** A distance rate with the date it is valid from. */
export const MileageRate = z.strictObject({ from: DateText, rate: Positive.describe('currency units for one mile or km') });
const KitFee = z.strictObject({ name: Name, perDay: Positive });

export const Terms = z.strictObject({
  validDays: z.int().min(1).max(365).describe('days that a quote is valid, at most to first call'),
  depositPercent: Percent,
  payDays: z.int().min(0).max(180),
  cancellation: z.array(CancelStep).max(12),
  cancelBy: z
    .enum(['hours', 'business days'])
    .optional()
    .describe('how notice is counted, hours if absent; by business days every started 24 hours of a step are one'),
  rounds: z.int().min(0).max(20),
  overtimeApprover: Note,
  illness: Note,
  weather: Note,
  usage: Note,
  originals: Note,
  postponement: Note,
});
export type Terms = z.infer<typeof Terms>;

export const RateCardFields = z.strictObject({
  name: Name,
  role: Role,
  currency: Currency,
  validFrom: DateText,
  validTo: DateText.nullable(),
  dayRate: Positive.describe('price of a day, currency units'),
  dayHours: Positive,
  halfUpToHours: Positive,
  halfPercent: Percent,
  graceMinutes: z.int().min(0).max(120).describe('before overtime is billed'),
  halfGraceMinutes: z.int().min(0).max(120),
  overtime: z.array(OvertimeTier).max(6),
  prepPercent: Percent,
  standbyPercent: Percent,
  travelPercent: Percent,
  weekendPercent: Percent,
  holidayPercent: Percent,
  nightPercent: Percent,
  turnaroundHours: Positive,
  forcedTimes: Positive,
  editHour: Positive.describe('price of an edit hour'),
  rush: z.array(RushStep).max(6),
  mileage: z.array(MileageRate).max(20),
  mileageUnit: z.enum(['mi', 'km']),
  allowanceNight: Positive.nullable().describe('charged allowance for each night away, or none'),
  kit: z.array(KitFee).max(30),
  terms: Terms,
});
export type RateCardFields = z.infer<typeof RateCardFields>;
export const RateCard = RateCardFields.extend({ id: Id, version: Version });
export type RateCard = z.infer<typeof RateCard>;

/** Terms that suit a kind of client; texts are starting points, not legal advice. */
export const TermsPreset = z.strictObject({ name: z.string(), about: z.string(), terms: Terms });
export type TermsPreset = z.infer<typeof TermsPreset>;

/** One job's quote, priced with the card as it is and as it would be; facts of the job as they stand now. */
export const PreviewRow = z.strictObject({ jobId: Id, title: z.string(), number: z.int(), before: Money, after: Money, difference: Money });
export type PreviewRow = z.infer<typeof PreviewRow>;

/** A quote that a change cannot be compared on, with why. */
export const Incomparable = PreviewRow.pick({ jobId: true, title: true, number: true }).extend({ why: z.string() });
export type Incomparable = z.infer<typeof Incomparable>;

export const rates = {
  list: reads('All rate cards, newest validity first.', Nothing, z.strictObject({ cards: z.array(RateCard) })),
  defaults: reads(
    'A rate card filled with the defaults of the trade, for a role and currency; nothing is saved.',
    z.strictObject({ role: Role, currency: Currency, validFrom: DateText }),
    z.strictObject({ fields: RateCardFields }),
  ),
  presets: reads('Sets of terms to start from, each with what it is for.', Nothing, z.strictObject({ presets: z.array(TermsPreset) })),
  preview: reads(
    'What a change to a card would do to the last ten quotes that were made from it. Nothing is saved.',
    z.strictObject({ id: Id, fields: RateCardFields }),
    z.strictObject({
      rows: z.array(PreviewRow),
      apart: z.array(Incomparable).describe('quotes that cannot be compared: amounts of two currencies are never set against each other'),
      sentence: z.string(),
    }),
  ),
  save: writes(
    'Save a rate card: without an id a new one, with id and version a change.',
    z.strictObject({ id: Id.optional(), version: Version.optional(), fields: RateCardFields }),
    z.strictObject({ card: RateCard }),
  ),
};

import { z } from 'zod';
import { reads, writes } from './base.ts';
import { Country, Currency, DateText, DeedKey, Id, InstantText, Line, Message, MINOR_LIMIT, Place, Role, WallTime, Zone } from './parts.ts';

export const factNames = [
  'start',
  'end',
  'firstCall',
  'lastWrap',
  'place',
  'country',
  'role',
  'days',
  'replyBy',
  'budget',
  'contactName',
  'contactEmail',
  'contactPhone',
  'organisation',
  'deliverables',
] as const;
export const FactName = z.enum(factNames);
export type FactName = z.infer<typeof FactName>;

export const Budget = z.strictObject({
  amount: z
    .number('must be a number')
    .min(0, 'is below zero')
    .max(MINOR_LIMIT / 100, 'is too large'),
  currency: Currency.optional(),
  per: z.enum(['day', 'job', 'hour']).optional(),
});
export type Budget = z.infer<typeof Budget>;

/** What was read from a message. A fact that is not known is absent; nothing is guessed silently. */
export const InquiryFields = z.strictObject({
  start: DateText.optional(),
  end: DateText.optional().describe('last event day, even when its wrap is past midnight'),
  firstCall: WallTime.optional(),
  lastWrap: WallTime.optional(),
  place: z.string().max(200).optional().describe('name of the place'),
  country: Country.optional(),
  role: Role.optional(),
  days: z.int().min(1).max(366).optional().describe('number of event days'),
  replyBy: WallTime.optional().describe('wall time in the home zone'),
  budget: Budget.optional(),
  contactName: z.string().max(200).optional(),
  contactEmail: z.string().max(200).optional(),
  contactPhone: z.string().max(60).optional(),
  organisation: z.string().max(200).optional(),
  deliverables: z.array(z.string().max(300)).optional(),
});
export type InquiryFields = z.infer<typeof InquiryFields>;

/** Something unclear or missing, with the choices where there are some. */
export const Question = z.strictObject({
  field: FactName,
  ask: z.string().describe('the question as a sentence'),
  put: z.string().optional().describe('the sentence as it is put to a client, where it is not the usual one of its field'),
  choices: z.array(
    z.strictObject({
      label: z.string(),
      value: z.unknown().describe('the value that the fact would take'),
      place: Place.optional().describe('the gazetteer entry behind a choice of place'),
      days: z.array(DateText).optional().describe('the days behind a choice of dates'),
    }),
  ),
});
export type Question = z.infer<typeof Question>;

/** Where in the text a fact came from: UTF-16 offsets, end exclusive. */
export const Span = z.strictObject({ field: FactName, start: z.int().min(0), end: z.int().min(0), text: z.string() });
export type Span = z.infer<typeof Span>;

/** What of a reading is remembered for its sender once a person corrected it; currency and per belong to the budget. */
export const rememberedFacts = ['place', 'role', 'currency', 'per', 'organisation', 'contactName'] as const;
const RememberedFact = z.enum(rememberedFacts);
export type RememberedFact = z.infer<typeof RememberedFact>;

/** A fact that stands as it was corrected before for the same sender, and when that was. */
export const Remembered = z.strictObject({ id: Id, fact: RememberedFact, at: InstantText });
export type Remembered = z.infer<typeof Remembered>;

export const Reading = z.strictObject({
  isInquiry: z.boolean(),
  fields: InquiryFields,
  questions: z.array(Question),
  spans: z.array(Span),
  datesFound: z.array(DateText).optional().describe('the days themselves, where there are others between them'),
  placeFound: Place.optional().describe('the gazetteer entry that the place was taken for'),
  remembered: z.array(Remembered).optional().describe('facts as they were corrected before for this sender'),
});
export type Reading = z.infer<typeof Reading>;

/** `2026-11-25T09:12:00-06:00[America/Chicago]` */
const ReceivedAt = z
  .string()
  .max(100)
  .refine((text) => {
    try {
      Temporal.ZonedDateTime.from(text, { offset: 'use' });
      return true;
    } catch {
      return false;
    }
  }, 'is not a moment with a zone; write it as 2026-11-25T09:12:00-06:00[America/Chicago]');

export const inquiries = {
  read: reads(
    'Read dates, times, place, role, budget and people from a pasted message. Stores nothing.',
    z.strictObject({
      text: Message,
      receivedAt: ReceivedAt,
      homeZone: Zone,
      homePlace: Place.optional().describe('my home if it is not the stored one'),
      homeCurrency: Currency.optional(),
      remember: z.boolean().optional().describe('true: as it was corrected before for the same sender'),
    }),
    Reading,
  ),
  take: writes(
    'Read a pasted message and put it on the books as an inquiry.',
    z.strictObject({
      text: Message,
      receivedAt: ReceivedAt.optional().describe('now, if not given'),
      title: Line.optional(),
      key: DeedKey,
    }),
    z.strictObject({ jobId: Id, reading: Reading }),
  ),
};

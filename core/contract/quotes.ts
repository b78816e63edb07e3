import { z } from 'zod';
import { reads, writes } from './base.ts';
import { Currency, DateText, Decimal, DeedKey, Id, InstantText, Line, Moment, Money, Name, Percent, Positive, Version } from './parts.ts';
import { Job, Paper } from './jobs.ts';
import { Terms } from './rates.ts';
import { Closed } from './people.ts';
import { PublicHoliday } from './setup.ts';

export const sections = ['days', 'kit', 'travel', 'allowances', 'editing', 'extras', 'rush', 'discount'] as const;
export const Section = z.enum(sections);
export type Section = z.infer<typeof Section>;

/** Whether a tax is charged at its rate, or why it is not. */
export const TaxState = z.enum(['rated', 'exempt', 'reverse charge', 'not registered']);

export const QuoteLine = z.strictObject({
  id: z.string().describe('stable name of the line, e.g. days/shoot'),
  section: Section,
  what: z.string(),
  quantity: Decimal,
  unit: z.string(),
  unitPrice: Decimal,
  amount: Money,
  taxed: z.boolean(),
  bears: z
    .strictObject({ state: TaxState, names: z.array(z.string()) })
    .optional()
    .describe('how the line stands to which of my taxes; absent where none are charged'),
  reason: z.string().describe('how this came about, with its numbers'),
  estimated: z.boolean(),
  changed: z.boolean().describe('changed by hand against the rate card'),
  cost: Money.optional().describe('what the line costs me (a hand, sub-hire); never printed'),
});
export type QuoteLine = z.infer<typeof QuoteLine>;

export const TaxGroup = z.strictObject({
  name: z.string(),
  percent: Decimal,
  net: Money,
  tax: Money,
  note: z.string(),
  state: TaxState.optional(),
});
export const Totals = z.strictObject({ net: Money, taxes: z.array(TaxGroup), tax: Money, gross: Money });
export type Totals = z.infer<typeof Totals>;

/** What a job costs me beside expenses; never printed. */
export const QuoteCost = z.strictObject({
  id: z.string(),
  kind: z.enum(['hand', 'sub-hire', 'wear']),
  what: z.string(),
  amount: Money,
  reason: z.string().describe('how this came about, with its numbers'),
});
export type QuoteCost = z.infer<typeof QuoteCost>;

/** The scale that a price is read on; every figure is a day's, in the quote's currency. */
export const Scale = z.strictObject({
  floor: Money.nullable(),
  budget: Money.nullable().describe('null when its currency or its unit is not known'),
  thisJob: Money,
  daysUsed: Decimal,
  keptPerHourAway: Money,
  hoursAway: Decimal,
});
export type Scale = z.infer<typeof Scale>;

export const Deposit = z.strictObject({ amount: Money, due: z.string().describe('when, in words'), note: z.string() }).nullable();

/** One of up to three offers on a paper. */
const OfferNumber = z.int().min(1).max(3);

/** What is said of one offer: its lines and what they come to. */
const offerShape = {
  lines: z.array(QuoteLine),
  dropped: z
    .array(z.strictObject({ id: z.string(), what: z.string() }))
    .describe('lines that were taken off by hand; they can be restored'),
  totals: Totals,
  cancelBase: Money.describe('net of days, kit and editing: what a cancellation owes its share of'),
  deposit: Deposit,
  scale: Scale,
  costs: z.array(QuoteCost).optional().describe('hands, sub-hire and wear; taken off in the scale'),
  discount: z
    .strictObject({ percent: Decimal, fixed: Decimal, over: z.array(Section).nullable().describe('null for all but expenses') })
    .optional()
    .describe('what was asked for by hand'),
};
export const Offer = z.strictObject({
  number: OfferNumber,
  name: z.string(),
  ticked: z.boolean(),
  forMoney: z.boolean().describe('the one that counts for money: the ticked, until then the cheapest'),
  forTime: z.boolean().describe('the one that counts for time: the ticked, until then the dearest'),
  ...offerShape,
});
export type Offer = z.infer<typeof Offer>;

export const QuoteDraft = z.strictObject({
  jobId: Id,
  draftVersion: z.int().min(0),
  cardId: Id,
  cardName: z.string(),
  currency: Currency,
  ...offerShape,
  offers: z.array(Offer).describe('none, or two to three; the lines and totals above are those of the one that counts for money'),
  validUntil: Moment,
  terms: Terms,
  holidays: z.array(DateText).optional().describe('dates of the job that count as public holidays'),
  publicHolidays: z
    .array(PublicHoliday)
    .optional()
    .describe('what a public list gives for the place on those dates: they count until the change `holidays` says otherwise'),
  clientClosed: z
    .array(Closed)
    .optional()
    .describe("the client's own holidays up to first call, where a cancellation is counted in business days"),
  undoable: z.int().min(0).optional().describe('changes by hand that can be taken back, one after another'),
  pencilUntil: Moment.nullable().describe('when the pencil would run out'),
  cautions: z.array(z.string()),
  missing: z.array(z.string()).describe('what must be known before a quote can be made'),
});
export type QuoteDraft = z.infer<typeof QuoteDraft>;

/** What a cancellation owes. The deposit is set against it: what is left is owed, or paid back. */
export const Cancellation = z.strictObject({
  noticeHours: z.number(),
  percent: Decimal,
  base: Money,
  fee: Money,
  bound: Money,
  total: Money,
  deposit: Money.describe('paid already'),
  owed: Money,
  paidBack: Money,
  reason: z.string(),
  caution: z.string(),
});
export type Cancellation = z.infer<typeof Cancellation>;

/** What a calling off sets against the scale, in units of the quote's currency. */
export const boundAndPaid = {
  bound: Positive.optional().describe('costs already bound (rooms, tickets, sub-hire), owed in full'),
  depositPaid: Positive.optional().describe('set against what is owed; what was paid of deposits by the books, if not given'),
};

/** A change with this holds in one offer only; without, in all. */
const inOffer = { offer: OfferNumber.optional() };

export const DraftChange = z.discriminatedUnion('op', [
  z.strictObject({
    op: z.literal('set'),
    id: z.string().max(80),
    quantity: Positive.optional(),
    unitPrice: Positive.optional(),
    what: Name.optional(),
    cost: Positive.optional().describe('what the whole line costs me, currency units'),
    ...inOffer,
  }),
  z.strictObject({
    op: z.literal('add'),
    section: Section,
    what: Name,
    quantity: Positive,
    unit: Line,
    unitPrice: Decimal,
    cost: Positive.optional(),
    ...inOffer,
  }),
  z.strictObject({
    op: z.literal('move'),
    id: z.string().max(80).describe('a line that was added by hand'),
    section: Section,
    before: z.string().max(80).nullable().describe('the line of that section that it stands before; null for its end'),
    ...inOffer,
  }),
  z.strictObject({ op: z.literal('drop'), id: z.string().max(80), ...inOffer }),
  z.strictObject({ op: z.literal('restore'), id: z.string().max(80).describe('back to what the rate card says'), ...inOffer }),
  z.strictObject({
    op: z.literal('discount'),
    percent: Percent.optional().describe('worked out first'),
    fixed: Positive.optional().describe('currency units, taken off after the per cent'),
    over: z.array(Section).max(8).optional().describe('sections that it applies to; all but expenses if not given'),
    ...inOffer,
  }),
  z.strictObject({ op: z.literal('terms'), terms: Terms.partial() }),
  z.strictObject({
    op: z.literal('tax'),
    ids: z.array(z.string().max(80)).max(200).optional().describe('lines; all of them if not given'),
    state: TaxState.exclude(['not registered']),
    names: z.array(z.string().max(120)).max(4).optional().describe('which of my taxes; all of them if not given'),
    reason: Line.optional().describe('why no tax is charged; printed'),
  }),
  z.strictObject({
    op: z.literal('holidays'),
    dates: z.array(DateText).max(366).describe('dates of the job that count as public holidays'),
  }),
  z.strictObject({
    op: z.literal('offers'),
    names: z.array(Name).max(3).describe('fewer than two: one plain quote'),
    from: z
      .array(OfferNumber.nullable())
      .max(3)
      .optional()
      .describe('for each name, the offer of before whose lines it keeps, null for none; without it every number stays as it is'),
  }),
  z.strictObject({
    op: z.literal('hand'),
    handId: Id,
    days: Positive.optional().describe('all dates of the job if not given; zero takes the hand off'),
    ...inOffer,
  }),
  z.strictObject({
    op: z.literal('sub-hire'),
    what: Name,
    cost: Positive.describe('currency units for all of it; zero takes it off'),
    ...inOffer,
  }),
  z.strictObject({ op: z.literal('tick'), offer: OfferNumber.nullable().describe('the offer that the client took, or none yet') }),
]);
export type DraftChange = z.infer<typeof DraftChange>;

export const Reply = z.strictObject({ subject: z.string(), text: z.string() });

export const QuoteVersion = z.strictObject({
  id: Id,
  jobId: Id,
  number: z.int().min(1),
  madeAt: InstantText,
  draft: QuoteDraft,
  sentAt: InstantText.nullable(),
  paper: Paper,
  reply: Reply,
});
export type QuoteVersion = z.infer<typeof QuoteVersion>;

export const quotes = {
  draft: reads(
    'The quote as the rate card, trip and notice price it now, with what was changed by hand.',
    z.strictObject({ jobId: Id }),
    z.strictObject({ draft: QuoteDraft }),
  ),
  change: writes(
    'Change lines of a draft.',
    z.strictObject({ jobId: Id, draftVersion: z.int().min(0), changes: z.array(DraftChange).min(1).max(200) }),
    z.strictObject({ draft: QuoteDraft }),
  ),
  undo: writes(
    'Take back the last change of a draft.',
    z.strictObject({ jobId: Id, draftVersion: z.int().min(0) }),
    z.strictObject({ draft: QuoteDraft }),
  ),
  make: writes(
    'Freeze the draft as the next version, write its PDF and reply text, and pencil the dates where asked.',
    z.strictObject({ jobId: Id, jobVersion: Version, draftVersion: z.int().min(0), pencil: z.boolean(), key: DeedKey }),
    z.strictObject({ version: QuoteVersion, job: Job }),
  ),
  versions: reads(
    "Every made version of a job's quote, newest first.",
    z.strictObject({ jobId: Id }),
    z.strictObject({ versions: z.array(QuoteVersion) }),
  ),
  differences: reads(
    "What differs between two versions of a job's quote, or between a version and the draft as it is now, in words.",
    z.strictObject({ jobId: Id, from: z.int().min(1), to: z.int().min(1).nullable().describe('null for the draft') }),
    z.strictObject({ sentences: z.array(z.string()) }),
  ),
  cancellation: reads(
    'What a cancellation or postponement would owe at an instant, by the scale that was frozen into the version agreed on (else the newest).',
    z.strictObject({
      jobId: Id,
      at: InstantText.optional().describe('when notice was given; now, if not given'),
      postponed: z.boolean().optional().describe('a new date is agreed now'),
      ...boundAndPaid,
    }),
    z.strictObject({ version: z.int(), cancellation: Cancellation }),
  ),
  sent: writes(
    'Note that a version is sent: its reply was copied or drafted as a mail.',
    z.strictObject({ id: Id }),
    z.strictObject({ version: QuoteVersion }),
  ),
};

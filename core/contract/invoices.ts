/**
 * Invoices and credit notes: drafts that follow the facts of a job, issued papers that never change, and what happened to those since.
 */
import { z } from 'zod';
import { reads, writes } from './base.ts';
import { Paper } from './jobs.ts';
import { Country, Currency, DateText, Decimal, DeedKey, Id, InstantText, Line, Money, Name, Note, Percent, Positive } from './parts.ts';
import { Reply, Section, TaxState, Totals } from './quotes.ts';
import { SetupFields } from './setup.ts';

const draftKinds = ['deposit', 'final', 'instalment', 'cancellation'] as const;
export const DraftKind = z.enum(draftKinds);
export type DraftKind = z.infer<typeof DraftKind>;
export const InvoiceKind = z.enum([...draftKinds, 'credit note']);
export type InvoiceKind = z.infer<typeof InvoiceKind>;

const LineTax = z.strictObject({
  name: z.string(),
  percent: Decimal,
  state: TaxState,
  reason: z.string(),
  compound: z.boolean().optional(),
});

const InvoiceLine = z.strictObject({
  id: z.string().describe('stable name of the line, e.g. days/shoot'),
  section: z.string(),
  what: z.string(),
  quantity: Decimal,
  unit: z.string(),
  unitPrice: Decimal,
  amount: Money,
  taxes: z.array(LineTax),
});

const DraftLine = InvoiceLine.extend({
  reason: z.string().describe('how this came about, with its numbers'),
  estimated: z.boolean(),
  changed: z.boolean().describe('changed by hand'),
  unapproved: z.boolean().optional().describe('holds overtime or a further round that nobody said yes to'),
});

/** A deposit or instalment that a bill sets off, by tax group as its own invoice says; amounts are below zero. */
const Credited = z.strictObject({
  invoiceId: Id,
  number: z.string(),
  date: DateText,
  groups: z.array(z.strictObject({ name: z.string(), percent: Decimal, note: z.string(), net: Money, tax: Money })),
  net: Money,
  tax: Money,
  gross: Money,
});

const BillTo = z.strictObject({
  name: z.string(),
  address: z.string(),
  taxId: z.string(),
  country: Country.nullable(),
  order: z.string().describe('purchase-order number; empty where none is known'),
});
const Supply = z.strictObject({ from: DateText, to: DateText });
/** Home currency for one unit of the other, on a date. */
const HomeRate = z.strictObject({ rate: Positive, date: DateText, home: Currency });

export const InvoiceDraft = z.strictObject({
  jobId: Id,
  kind: DraftKind,
  draftVersion: z.int().min(0),
  currency: Currency,
  included: z.boolean().describe('amounts of lines hold their tax'),
  later: z.boolean().optional().describe('the last bill stands, and this one has only what came after it'),
  billTo: BillTo,
  lines: z.array(DraftLine),
  dropped: z
    .array(z.strictObject({ id: z.string(), what: z.string() }))
    .describe('lines that were taken off by hand; they can be restored'),
  credited: z.array(Credited),
  totals: Totals,
  toPay: Money.describe('below zero where more was billed before than is owed'),
  supply: Supply.nullable(),
  dueDate: DateText,
  rate: HomeRate.nullable().describe('null in the home currency, and while it is not known'),
  note: z.string().describe('a sentence of my own, printed'),
  terms: z.array(z.string()),
  series: z.string(),
  differences: z.array(z.string()).describe('against what was agreed, in words, with who approved what'),
  missing: z.array(z.string()).describe('what must be known before it can be issued'),
  cautions: z.array(z.string()),
  undoable: z.int().min(0),
});
export type InvoiceDraft = z.infer<typeof InvoiceDraft>;

/** Everything that the paper of an issued invoice or credit note says; frozen with it. */
export const InvoiceContent = z.strictObject({
  kind: InvoiceKind,
  number: z.string(),
  issueDate: DateText,
  dueDate: DateText.nullable().describe('null on a credit note'),
  issuedAt: InstantText,
  sender: SetupFields.pick({
    name: true,
    address: true,
    email: true,
    phone: true,
    registered: true,
    taxId: true,
    paper: true,
    logo: true,
    accent: true,
  }),
  payTo: z.strictObject({ name: z.string(), iban: z.string(), bic: z.string(), words: z.string() }).describe('empty texts are not known'),
  billTo: BillTo,
  job: z.strictObject({ title: z.string() }).nullable(),
  supply: Supply.nullable(),
  currency: Currency,
  included: z.boolean(),
  lines: z.array(InvoiceLine),
  totals: Totals,
  credited: z.array(Credited),
  toPay: Money,
  rate: HomeRate.nullable(),
  terms: z.array(z.string()),
  credits: z.strictObject({ number: z.string(), date: DateText, reason: z.string() }).nullable().describe('what a credit note turns'),
});
export type InvoiceContent = z.infer<typeof InvoiceContent>;

export const InvoiceState = z.enum(['open', 'part paid', 'paid', 'late', 'disputed', 'credited', 'written off']);
export type InvoiceState = z.infer<typeof InvoiceState>;
export const ReminderTone = z.enum(['kind', 'plain', 'firm']);
export type ReminderTone = z.infer<typeof ReminderTone>;

/** An issued paper as a list shows it, with where it stands today. */
export const InvoiceRow = z.strictObject({
  id: Id,
  kind: InvoiceKind,
  number: z.string(),
  jobId: Id.nullable(),
  jobTitle: z.string(),
  clientId: Id.nullable(),
  billedTo: z.string(),
  issuedAt: InstantText,
  issueDate: DateText,
  dueDate: DateText,
  currency: Currency,
  rate: z.strictObject({ rate: Positive, date: DateText }).nullable(),
  net: Money,
  tax: Money,
  gross: Money,
  toPay: Money,
  credits: Id.nullable().describe('the invoice that a credit note turns'),
  state: InvoiceState,
  open: Money,
  paid: Money,
  credited: Money,
  writtenOff: Money,
  over: Money.describe("paid or credited past what was asked: the client's credit"),
  daysLate: z.int().min(0),
});
export type InvoiceRow = z.infer<typeof InvoiceRow>;

export const Invoice = InvoiceRow.extend({
  series: z.string(),
  year: z.int(),
  sequence: z.int().min(1),
  content: InvoiceContent,
  paper: Paper,
  reminders: z.array(z.strictObject({ tone: ReminderTone, at: InstantText })),
  disputed: z.string().nullable().describe('why, while it is disputed'),
  left: z.array(z.strictObject({ id: z.string(), what: z.string(), left: Money })).describe('what can still be credited, line by line'),
});
export type Invoice = z.infer<typeof Invoice>;

export const InvoiceChange = z.discriminatedUnion('op', [
  z.strictObject({
    op: z.literal('set'),
    id: z.string().max(80),
    quantity: Positive.optional(),
    unitPrice: Positive.optional(),
    what: Name.optional(),
  }),
  z.strictObject({ op: z.literal('add'), section: Section, what: Name, quantity: Positive, unit: Line, unitPrice: Decimal }),
  z.strictObject({ op: z.literal('drop'), id: z.string().max(80) }),
  z.strictObject({ op: z.literal('restore'), id: z.string().max(80) }),
  z.strictObject({
    op: z.literal('tax'),
    ids: z.array(z.string().max(80)).max(200).optional().describe('lines; all of them if not given'),
    state: TaxState.exclude(['not registered']),
    names: z.array(z.string().max(120)).max(4).optional(),
    reason: Line.optional().describe('why no tax is charged; printed'),
  }),
  z
    .strictObject({ op: z.literal('ask'), amount: Positive.optional(), percent: Percent.optional() })
    .describe('how much a deposit or instalment asks for: currency units, or per cent of what is left to bill')
    .refine(({ amount, percent }) => (amount === undefined) !== (percent === undefined), 'asks for an amount or for per cent, one of them'),
  z.strictObject({ op: z.literal('due'), date: DateText }),
  z.strictObject({ op: z.literal('supply'), from: DateText, to: DateText }).refine(({ from, to }) => to >= from, {
    path: ['to'],
    error: 'is before its first date',
  }),
  z.strictObject({ op: z.literal('rate'), rate: Positive.describe('home currency for one unit'), date: DateText }),
  z.strictObject({ op: z.literal('note'), text: Note }),
]);
export type InvoiceChange = z.infer<typeof InvoiceChange>;

const OneDraft = { jobId: Id, kind: DraftKind, draftVersion: z.int().min(0) };
const DraftAnswer = z.strictObject({ draft: InvoiceDraft });
const InvoiceAnswer = z.strictObject({ invoice: Invoice });

export const invoices = {
  draft: reads(
    'A bill as the facts of its job make it now: what was agreed on the hours as worked, with what was changed by hand.',
    z.strictObject({ jobId: Id, kind: DraftKind }),
    DraftAnswer,
  ),
  change: writes('Change a draft bill.', z.strictObject({ ...OneDraft, changes: z.array(InvoiceChange).min(1).max(200) }), DraftAnswer),
  undo: writes('Take back the last change of a draft bill.', z.strictObject(OneDraft), DraftAnswer),
  issue: writes(
    'Issue a bill: it takes the next number of its series and year, its paper is written, and it never changes again.',
    z.strictObject({ ...OneDraft, override: Name.optional().describe('why it goes without the purchase-order number'), key: DeedKey }),
    InvoiceAnswer,
  ),
  credit: writes(
    'Issue a credit note for an invoice: all of it, or amounts of its lines.',
    z.strictObject({
      id: Id,
      lines: z.union([
        z.literal('all'),
        z
          .array(z.strictObject({ id: z.string().max(80), amount: Money }))
          .min(1)
          .max(400),
      ]),
      reason: Name,
      key: DeedKey,
    }),
    InvoiceAnswer,
  ),
  dispute: writes(
    'Note that an invoice is disputed, and why; or, without a why, that this is settled.',
    z.strictObject({ id: Id, why: Name.nullable(), key: DeedKey }),
    InvoiceAnswer,
  ),
  writeOff: writes(
    'Give up what is open of an invoice. Money that comes later counts all the same.',
    z.strictObject({ id: Id, reason: Name, key: DeedKey }),
    InvoiceAnswer,
  ),
  list: reads(
    'Issued invoices and credit notes, newest number first, as they stand today.',
    z.strictObject({
      text: Line.optional().describe('narrows by number, job and whom it is billed to'),
      state: InvoiceState.optional(),
      clientId: Id.optional(),
      jobId: Id.optional(),
    }),
    z.strictObject({ invoices: z.array(InvoiceRow) }),
  ),
  get: reads('One issued invoice or credit note, whole.', z.strictObject({ id: Id }), InvoiceAnswer),
  reminder: reads(
    'A reminder to copy or to send, in the tone asked for and as the client writes.',
    z.strictObject({ id: Id, tone: ReminderTone }),
    Reply,
  ),
  reminded: writes('Note that a reminder went out.', z.strictObject({ id: Id, tone: ReminderTone, key: DeedKey }), InvoiceAnswer),
  statement: reads(
    'What a client was billed and has paid up to a date, by currency, with what is left after each.',
    z.strictObject({ clientId: Id, asOf: DateText.optional().describe('today, if not given') }),
    z.strictObject({
      asOf: DateText,
      statements: z.array(
        z.strictObject({
          currency: Currency,
          rows: z.array(
            z.strictObject({
              on: DateText,
              kind: z.enum(['invoice', 'credit note', 'payment', 'refund', 'write-off']),
              name: z.string(),
              amount: Money,
              balance: Money,
            }),
          ),
          balance: Money,
        }),
      ),
    }),
  ),
  statementPaper: writes(
    'Put a statement of one currency on paper, to be sent.',
    z.strictObject({
      clientId: Id,
      currency: Currency,
      asOf: DateText.optional().describe('today, if not given'),
      key: DeedKey,
    }),
    z.strictObject({ paper: Paper }),
  ),
};

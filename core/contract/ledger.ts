/**
 * The ledger: who owes me, what did it earn? Reads only; every figure follows from issued papers, payments, hours and expenses.
 */
import { z } from 'zod';
import { reads } from './base.ts';
import { InvoiceRow } from './invoices.ts';
import { Currency, DateText, Decimal, Id, Line, Money, Nothing } from './parts.ts';

/** Amounts of several currencies: each by itself, home first; and all in the home currency by the rates that are stored with them. */
export const Sum = z.strictObject({
  by: z.array(Money),
  home: Money.nullable().describe('null where a rate is not known'),
});

const AsOf = DateText.optional().describe('today at home, if not given');
const Year = z.int('must be a year').min(1970, 'is before 1970').max(2199, 'is after 2199').optional().describe('this one, if not given');

const AgeRow = z.strictObject({
  bucket: z.enum(['not due', '1-30', '31-60', '61-90', 'over 90']).describe('days past due'),
  amount: Money,
  count: z.int(),
});

const ToCome = z.strictObject({
  kind: z.enum(['due', 'disputed', 'deposit', 'to bill']).describe('deposit and to bill: agreed on, not billed yet'),
  on: DateText,
  what: z.string(),
  jobId: Id.nullable(),
  amount: Money,
});

const MovedSums = { billed: Sum, received: Sum };

const EarnedRow = z.strictObject({
  jobId: Id,
  title: z.string(),
  on: DateText.describe('of its last bill'),
  kept: Money,
  hours: Decimal.describe('door-out to door-in, and edit hours outside'),
  perHour: Money,
  quoted: Money.nullable().describe('kept per hour away as the quote that was agreed on said'),
  reason: z.string(),
  pulledDown: z.array(z.string()),
  cautions: z.array(z.string()),
});
export type EarnedRow = z.infer<typeof EarnedRow>;

const LedgerShow = z.enum(['open', 'late', 'paid', 'all']);
export type LedgerShow = z.infer<typeof LedgerShow>;
const LedgerTable = z.enum(['invoices', 'payments', 'expenses', 'mileage', 'per diem', 'income']);
export type LedgerTable = z.infer<typeof LedgerTable>;

const LedgerSeen = z.strictObject({
  asOf: DateText,
  home: Currency,
  open: Sum,
  openCount: z.int(),
  late: Sum,
  lateCount: z.int(),
  disputed: Sum,
  ageing: z.array(z.strictObject({ currency: Currency, total: Money, rows: z.array(AgeRow) })),
  clients: z.array(z.strictObject({ clientId: Id.nullable(), name: z.string(), open: Sum, late: Sum, count: z.int(), daysLate: z.int() })),
  expected: z.array(
    z.strictObject({
      from: DateText.nullable().describe('a Monday; null for what is late already'),
      to: DateText.nullable().describe('null for what is later than the weeks shown'),
      sum: Sum.describe('without what is disputed'),
      parts: z.array(ToCome),
    }),
  ),
});
export type LedgerSeen = z.infer<typeof LedgerSeen>;

const LedgerYear = z.strictObject({
  year: z.int(),
  years: z.array(z.int()).describe('that hold papers or payments, newest first'),
  home: Currency,
  ...MovedSums,
  months: z.array(z.strictObject({ month: z.string().describe('YYYY-MM'), ...MovedSums })),
  clients: z.array(z.strictObject({ clientId: Id.nullable(), name: z.string(), ...MovedSums })),
  jobs: z.array(z.strictObject({ jobId: Id.nullable(), title: z.string(), ...MovedSums })),
  setAside: z.strictObject({
    income: Money.describe('received without the tax that was collected'),
    collected: Money,
    costs: Money,
    profit: Money,
    amount: Money,
    reason: z.string(),
    selfEmployment: z.strictObject({ tax: Money, reason: z.string() }).nullable(),
    cautions: z.array(z.string()),
  }),
});
export type LedgerYear = z.infer<typeof LedgerYear>;

export const ledger = {
  see: reads(
    'Who owes me as of a date: open, late, by age and by client, and what is expected in the weeks to come.',
    z.strictObject({ asOf: AsOf }),
    LedgerSeen,
  ),
  papers: reads(
    'Issued papers as they stood on a date, newest first; what is open, the longest due first.',
    z.strictObject({ asOf: AsOf, show: LedgerShow, text: Line.optional().describe('narrows by number, job and whom it is billed to') }),
    z.strictObject({ asOf: DateText, rows: z.array(InvoiceRow), more: z.int().describe('how many are not shown') }),
  ),
  year: reads(
    'A calendar year by month, client and job: billed and received; and what to set aside of it.',
    z.strictObject({ year: Year }),
    LedgerYear,
  ),
  earned: reads(
    'What each billed job kept per hour away, and what pulled it down; newest bill first.',
    Nothing,
    z.strictObject({
      rows: z.array(EarnedRow),
      together: z.strictObject({ jobs: z.int(), perHour: Money }).nullable().describe('the last five in the home currency'),
    }),
  ),
  csv: reads(
    'A table for the accountant as CSV, which a spreadsheet opens without running anything. Both dates are counted.',
    z
      .strictObject({ what: LedgerTable, from: DateText, to: DateText })
      .refine(({ from, to }) => from <= to, { path: ['to'], error: 'is before its first date' }),
    z.strictObject({ name: z.string(), text: z.string(), rows: z.int() }),
  ),
};

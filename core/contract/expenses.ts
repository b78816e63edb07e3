import { z } from 'zod';
import { reads, writes, writesFile } from './base.ts';
import { DateText, Decimal, DeedKey, FileBytes, Id, Line, Money, Name, Nothing, Percent, Positive, Version } from './parts.ts';

export const ExpenseCategory = z.enum(['travel', 'lodging', 'meals', 'parking', 'sub-hire', 'consumables', 'fees', 'other']);
export type ExpenseCategory = z.infer<typeof ExpenseCategory>;

/** An exchange rate with its date: the job's currency for one unit of the expense's. */
const DatedRate = z.strictObject({
  rate: Positive.refine((text) => Number(text) > 0, 'is zero; give what one unit is worth'),
  date: DateText,
});

export const ExpenseFields = z.strictObject({
  jobId: Id.nullable().describe('null for what is for no job'),
  on: DateText,
  category: ExpenseCategory,
  what: Name,
  amount: Money.refine(({ minor }) => minor > 0, 'is not above zero; give what was paid'),
  rate: DatedRate.nullable().describe(
    "the job's currency for one unit of the expense's; null in the same currency, or while it is not known",
  ),
  markUpPercent: Percent,
  billed: z.boolean().describe('charged on to the client'),
  untaxed: Line.nullable().describe('why no tax is charged when it is charged on; null: as my other lines'),
});
export type ExpenseFields = z.infer<typeof ExpenseFields>;

export const Expense = ExpenseFields.extend({
  id: Id,
  version: Version,
  receipt: z.strictObject({ id: Id, name: z.string(), type: z.string(), bytes: z.int() }).nullable(),
});
export type Expense = z.infer<typeof Expense>;

/** One drive, for the log. */
export const MileageRow = z.strictObject({
  jobId: Id,
  title: z.string(),
  date: DateText,
  from: z.string(),
  to: z.string(),
  distance: Decimal,
  unit: z.enum(['mi', 'km']),
  rate: Decimal.nullable().describe('for one mile or km, on that date'),
  amount: Money.nullable(),
  source: z.enum(['actual', 'estimate']),
  reason: z.string(),
});
export type MileageRow = z.infer<typeof MileageRow>;

/** One date away, for the log. */
export const PerDiemRow = z.strictObject({
  jobId: Id,
  title: z.string(),
  date: DateText,
  place: z.string().describe('where the next night is spent; on the last date where the last one was'),
  amount: Money.nullable(),
  reason: z.string(),
});
export type PerDiemRow = z.infer<typeof PerDiemRow>;

const Span = z
  .strictObject({ from: DateText, to: DateText })
  .refine(({ from, to }) => from <= to, { path: ['to'], error: 'is before its first date' });
const OneExpense = z.strictObject({ expense: Expense });
const One = { id: Id, version: Version, key: DeedKey };

export const expenses = {
  of: reads(
    'What was spent for a job, what of it is charged on, and how each amount comes about.',
    z.strictObject({ jobId: Id }),
    z.strictObject({
      currency: z.string().describe('of the job'),
      expenses: z.array(Expense.extend({ charged: Money.nullable(), reason: z.string() })),
      spent: z.array(Money).describe('by currency'),
      charged: Money,
      cautions: z.array(z.string()),
    }),
  ),
  list: reads(
    'What was spent between two dates, both counted, for jobs and for none.',
    Span,
    z.strictObject({ expenses: z.array(Expense.extend({ title: z.string().nullable().describe('of its job') })) }),
  ),
  save: writes(
    'Save an expense: without an id a new one, with id and version a change.',
    z.strictObject({ id: Id.optional(), version: Version.optional(), fields: ExpenseFields, key: DeedKey }),
    OneExpense,
  ),
  drop: writes('Take an expense off. Its receipt stays among the papers.', z.strictObject(One), Nothing),
  attach: writesFile(
    'Put a receipt with an expense: a PDF or a JPEG, PNG, WebP or HEIC picture of up to 8 MB.',
    z.strictObject({ ...One, name: Name, base64: FileBytes }),
    OneExpense,
  ),
  putReceipt: writes(
    'Put a receipt that is kept already with an expense, or none.',
    z.strictObject({ ...One, receiptId: Id.nullable() }),
    OneExpense,
  ),
  receipt: reads(
    "The bytes of an expense's receipt, checked against their hash.",
    z.strictObject({ id: Id }),
    z.strictObject({ name: z.string(), type: z.string(), base64: z.string() }),
  ),
  mileage: reads(
    'Drives of jobs in ink between two dates: as they were driven where that was typed, else as estimated.',
    Span,
    z.strictObject({ rows: z.array(MileageRow), totals: z.array(Money), cautions: z.array(z.string()) }),
  ),
  perDiem: reads(
    'What each date away on jobs in ink is allowed for meals and incidentals, by the published rates of its date.',
    Span,
    z.strictObject({ rows: z.array(PerDiemRow), totals: z.array(Money), cautions: z.array(z.string()) }),
  ),
};

/**
 * What was spent, with its receipts.
 */
import type { Expense, ExpenseFields } from '../../core/contract/expenses.ts';
import { charged } from '../../core/expenses/billed.ts';
import { sumsByCurrency } from '../../core/money/sums.ts';
import { formatMoney } from '../../core/money/format.ts';
import { sum } from '../../core/money/money.ts';
import { namedBy } from '../../core/papers/file-type.ts';
import { dateIn, nextDate } from '../../core/time/wall.ts';
import { dateInWords } from '../../core/words/dates.ts';
import { dropExpense, expenseById, expensesBetween, expensesOf, keepExpense, setReceipt } from '../../db/expenses.ts';
import { writeHistory } from '../../db/keeping.ts';
import { insertPaper, paperById } from '../../db/papers.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import { keepPaper } from '../papers/keep.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { currencyOfJob } from './agreed-terms.ts';
import { givenFile } from './given-file.ts';
import { whole } from './job-deed.ts';
import { badFacts, homeZone } from './job-facts.ts';
import { mileage, perDiem } from './logs.ts';
import { os } from './os.ts';
import { paperBytes } from './papers.ts';
import { notFound, stale } from './trouble.ts';

const of = os.expenses.of.handler(({ input, context }) =>
  context.store.read((db) => {
    const job = whole(db, input.jobId, context.now());
    const currency = currencyOfJob(db, job);
    const kept = expensesOf(db, job.id);
    const known = kept.map((expense) => ({ expense, charged: charged(expense, currency) }));
    return {
      currency,
      expenses: known.map(({ expense, charged: { amount, reason } }) => ({ ...expense, charged: amount, reason })),
      spent: sumsByCurrency(kept.map(({ amount }) => amount)),
      charged: sum(
        currency,
        known.flatMap((each) => each.charged.amount ?? []),
      ),
      cautions: known.flatMap((each) => each.charged.caution ?? []),
    };
  }),
);

const list = os.expenses.list.handler(({ input, context }) => ({ expenses: context.store.read((db) => expensesBetween(db, input)) }));

const save = os.expenses.save.handler(({ input, context }) =>
  deed(context, 'expenses.save', input, (db) => {
    const { id, version, fields } = input;
    const now = context.now();
    refuseWrong(db, context, fields);
    const before = id === undefined ? undefined : expenseById(db, id);
    if (id !== undefined && !before) throw notFound('This expense');
    if (before && before.version !== version) throw stale('This expense', before, fields);
    const expense = known(db, keepExpense(db, before, fields, now));
    note(db, expense, 'expenses.save', `${inWords(expense)}.${before ? ` Before: ${inWords(before)}.` : ''}`, before ?? null, now);
    // Where it was moved to another job, the one it was taken from says so too.
    if (before && before.jobId !== null && before.jobId !== expense.jobId)
      note(db, before, 'expenses.save', `${inWords(before)} is not for this job any more.`, before, now);
    return { expense };
  }),
);

const drop = os.expenses.drop.handler(({ input, context }) =>
  deed(context, 'expenses.drop', input, (db) => {
    const before = one(db, input);
    dropExpense(db, before.id);
    note(db, before, 'expenses.drop', `${inWords(before)} was taken off.`, before, context.now());
    return {};
  }),
);

const attach = os.expenses.attach.handler(({ input, context }) => {
  const { store } = context;
  const { bytes, kind: found } = givenFile(input.base64);
  // Nothing is written to the folder for an expense that is not there, or was changed meanwhile.
  store.read((db) => one(db, input));
  const kept = keepPaper(store.papers, bytes, found.type);
  return deed(context, 'expenses.attach', input, (db) => {
    const before = one(db, input);
    const now = context.now();
    const paper = insertPaper(db, {
      jobId: before.jobId,
      kind: 'receipt',
      name: namedBy(found, input.name),
      type: found.type,
      ...kept,
      madeAt: now,
    });
    return { expense: withReceipt(db, before, paper.id, now) };
  });
});

const putReceipt = os.expenses.putReceipt.handler(({ input, context }) =>
  deed(context, 'expenses.putReceipt', input, (db) => {
    const before = one(db, input);
    const { receiptId } = input;
    if (receiptId !== null && paperById(db, receiptId)?.paper.kind !== 'receipt') throw notFound('This receipt');
    return { expense: withReceipt(db, before, receiptId, context.now()) };
  }),
);

const receipt = os.expenses.receipt.handler(({ input, context: { store } }) => {
  const expense = store.read((db) => known(db, input.id));
  if (!expense.receipt) throw notFound('A receipt of this expense');
  const { name, type } = expense.receipt;
  return { name, type, base64: Buffer.from(paperBytes(store, expense.receipt.id).bytes).toString('base64') };
});

function refuseWrong(db: ReadableDb, context: Context, { jobId, on, billed, amount, rate }: ExpenseFields): void {
  const now = context.now();
  const job = jobId === null ? null : whole(db, jobId, now);
  // Somewhere it is tomorrow already.
  if (on > nextDate(dateIn(homeZone(db, context), now)))
    throw badFacts([{ field: 'fields.on', sentence: `${dateInWords(on)} is still to come; an expense is entered once it was paid.` }]);
  if (billed && !job)
    throw badFacts([{ field: 'fields.billed', sentence: 'What is for no job cannot be charged on. Say for which job it was.' }]);
  if (job && rate && amount.currency === currencyOfJob(db, job))
    throw badFacts([{ field: 'fields.rate', sentence: `${amount.currency} is the currency of this job; it needs no rate.` }]);
}

function known(db: ReadableDb, id: string): Expense {
  const expense = expenseById(db, id);
  if (!expense) throw notFound('This expense');
  return expense;
}

function one(db: ReadableDb, { id, version }: { id: string; version: number }): Expense {
  const expense = known(db, id);
  if (expense.version !== version) throw stale('This expense', expense, null);
  return expense;
}

function withReceipt(db: WritableDb, before: Expense, receiptId: string | null, now: number): Expense {
  setReceipt(db, before, receiptId, now);
  const after = known(db, before.id);
  const said = after.receipt ? `Receipt ${after.receipt.name} is with ${inWords(before)}.` : `${inWords(before)} has no receipt any more.`;
  note(db, before, 'expenses.receipt', said, before, now);
  return after;
}

/** "Parking at the dock, USD 12.00, Sat 12 December 2026". */
function inWords({ what, amount, on }: Expense): string {
  return `${what}, ${formatMoney(amount, { code: true })}, ${dateInWords(on)}`;
}

function note(db: WritableDb, expense: Expense, name: string, sentence: string, before: Expense | null, at: number): void {
  const of = expense.jobId === null ? { subject: 'expense', subjectId: expense.id } : { subject: 'job', subjectId: expense.jobId };
  writeHistory(db, { at, ...of, deed: name, sentence, before });
}

export const expenses = { of, list, save, drop, attach, putReceipt, receipt, mileage, perDiem };

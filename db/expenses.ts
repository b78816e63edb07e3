/**
 * What was spent, for jobs and for none, each with its receipt.
 */
import { and, asc, eq, gte, lte, sql } from 'drizzle-orm';
import type { Expense, ExpenseFields } from '../core/contract/expenses.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { expenses } from './schema/expenses.ts';
import { jobs } from './schema/jobs.ts';
import { papers } from './schema/quotes.ts';
import type { ReadableDb, WritableDb } from './store.ts';

const reading = perStore((db) => {
  const each = () =>
    db
      .select({ row: expenses, paper: papers, title: jobs.title })
      .from(expenses)
      .leftJoin(papers, eq(papers.id, expenses.receiptId))
      .leftJoin(jobs, eq(jobs.id, expenses.jobId));
  return {
    ofJob: each()
      .where(eq(expenses.jobId, sql.placeholder('jobId')))
      .orderBy(asc(expenses.on), asc(expenses.id))
      .prepare(),
    between: each()
      .where(and(gte(expenses.on, sql.placeholder('from')), lte(expenses.on, sql.placeholder('to'))))
      .orderBy(asc(expenses.on), asc(expenses.id))
      .prepare(),
    one: each()
      .where(eq(expenses.id, sql.placeholder('id')))
      .prepare(),
  };
});

type Joined = { row: typeof expenses.$inferSelect; paper: typeof papers.$inferSelect | null; title: string | null };

function expenseOf({ row, paper }: Joined): Expense {
  const { id, version, jobId, on, category, what, amountMinor, currency, rate, rateDate, markUpPercent, billed, taxes } = row;
  return {
    id,
    version,
    jobId,
    on,
    category: category as Expense['category'],
    what,
    amount: { minor: amountMinor, currency },
    rate: rate === null || rateDate === null ? null : { rate, date: rateDate },
    markUpPercent,
    billed,
    untaxed: taxes === null ? null : (taxes[0]?.reason ?? ''),
    receipt: paper && { id: paper.id, name: paper.name, type: paper.type, bytes: paper.bytes },
  };
}

/** What was spent for a job, by date. */
export function expensesOf(db: ReadableDb, jobId: string): Expense[] {
  return reading(db).ofJob.all({ jobId }).map(expenseOf);
}

/** What was spent between two dates, both counted, with the title of its job. */
export function expensesBetween(db: ReadableDb, span: { from: string; to: string }): (Expense & { title: string | null })[] {
  return reading(db)
    .between.all(span)
    .map((joined) => ({ ...expenseOf(joined), title: joined.title }));
}

export function expenseById(db: ReadableDb, id: string): Expense | undefined {
  const row = reading(db).one.get({ id });
  return row && expenseOf(row);
}

/** Save an expense: a new one, or the next version of `before`, whose receipt stays. `now` in epoch milliseconds. */
export function keepExpense(db: WritableDb, before: Expense | undefined, fields: ExpenseFields, now: number): string {
  const { jobId, on, category, what, amount, rate, markUpPercent, billed, untaxed } = fields;
  const kept = {
    jobId,
    on,
    category,
    what,
    amountMinor: amount.minor,
    currency: amount.currency,
    rate: rate?.rate ?? null,
    rateDate: rate?.date ?? null,
    markUpPercent,
    billed,
    taxes: untaxed === null ? null : [{ name: '', percent: '0', state: 'exempt' as const, reason: untaxed }],
    updatedAt: now,
  };
  const id = before?.id ?? newId();
  if (before)
    db.update(expenses)
      .set({ ...kept, version: before.version + 1 })
      .where(eq(expenses.id, id))
      .run();
  else
    db.insert(expenses)
      .values({ ...kept, id, createdAt: now })
      .run();
  return id;
}

/** Put a receipt with an expense, or none. `now` in epoch milliseconds. */
export function setReceipt(db: WritableDb, { id, version }: Expense, receiptId: string | null, now: number): void {
  db.update(expenses)
    .set({ receiptId, version: version + 1, updatedAt: now })
    .where(eq(expenses.id, id))
    .run();
}

export function dropExpense(db: WritableDb, id: string): void {
  db.delete(expenses).where(eq(expenses.id, id)).run();
}

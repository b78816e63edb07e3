/**
 * Ageing: what is open, by how many days it is past due as of a date. Dates are `YYYY-MM-DD`; an invoice is due on its due date and late the day after.
 */
import { add, zero, type Money } from '../money/money.ts';

const ageBuckets = ['not due', '1-30', '31-60', '61-90', 'over 90'] as const;
export type AgeBucket = (typeof ageBuckets)[number];
/** The last day of each bucket but the open one. */
const LAST_DAYS = [0, 30, 60, 90] as const;

export type OpenAmount<C extends string = string> = { dueDate: string; open: Money<C> };
export type AgeRow<C extends string = string> = { bucket: AgeBucket; amount: Money<C>; count: number };

/** Days from the due date to a date; below zero before it. */
export function daysPastDue(dueDate: string, asOf: string): number {
  return Temporal.PlainDate.from(dueDate).until(Temporal.PlainDate.from(asOf)).days;
}

/** The bucket of a number of days past due. */
export function bucketOf(days: number): AgeBucket {
  const place = LAST_DAYS.findIndex((last) => days <= last);
  return ageBuckets[place === -1 ? ageBuckets.length - 1 : place] ?? 'over 90';
}

/**
 * Open amounts of one currency by age, every bucket named, the youngest first. What is not open does not count.
 * @throws CurrencyMixError when an amount is in another currency
 */
export function ageingOf<C extends string>(currency: C, amounts: readonly OpenAmount<NoInfer<C>>[], asOf: string): AgeRow<C>[] {
  const rows = new Map(ageBuckets.map((bucket): [AgeBucket, AgeRow<C>] => [bucket, { bucket, amount: zero(currency), count: 0 }]));
  for (const { dueDate, open } of amounts) {
    const row = rows.get(bucketOf(daysPastDue(dueDate, asOf)));
    if (!row || open.minor === 0) continue;
    row.amount = add(row.amount, open);
    row.count += 1;
  }
  return [...rows.values()];
}

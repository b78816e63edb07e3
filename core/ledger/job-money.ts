/**
 * What the papers of a job say about its money and time, beside their sums.
 */
import type { InvoiceContent } from '../contract/invoices.ts';
import type { QuoteDraft } from '../contract/quotes.ts';
import { exact, roundHalfAway } from '../money/exact.ts';
import { money, sum, zero, type Money } from '../money/money.ts';
import { expenseSections } from '../quotes/discount.ts';

/** `of` x part / whole, rounded once, half away from zero; nothing of nothing. Part and whole are in one currency. */
export function partOf<C extends string>(of: Money<C>, part: Money, whole: Money): Money<C> {
  if (whole.minor === 0) return zero(of.currency);
  return money(roundHalfAway(exact(of.minor).mul(exact(part.minor)).div(exact(whole.minor))), of.currency);
}

/** Net of mileage, fares and allowances on a bill, which pay for what they cost; expenses are counted as they were spent. */
export function passedThrough({
  lines,
  totals,
  included,
  currency,
}: Pick<InvoiceContent, 'lines' | 'totals' | 'included' | 'currency'>): Money {
  const passed = lines.filter(({ id, section }) => expenseSections.some((each) => each === section) && !/^expenses?\//.test(id));
  const amount = sum(
    currency,
    passed.map((line) => line.amount),
  );
  return included ? partOf(totals.net, amount, totals.gross) : amount;
}

/** Minutes of editing that a quote counts in hours. */
export function editMinutes(lines: readonly Pick<QuoteDraft['lines'][number], 'section' | 'unit' | 'quantity'>[]): number {
  const hours = lines
    .filter(({ section, unit }) => section === 'editing' && /^(hours?|h)$/i.test(unit))
    .reduce((total, { quantity }) => total.add(exact(quantity)), exact(0));
  return Number(roundHalfAway(hours.mul(60n)));
}

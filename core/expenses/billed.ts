/**
 * Expenses that are charged on: at the dated rate into the job's currency, with their mark-up, rounded once.
 */
import type { Expense } from '../contract/expenses.ts';
import type { DraftChange } from '../contract/quotes.ts';
import { exact, type Exact } from '../money/exact.ts';
import { formatMoney, formatNumber } from '../money/format.ts';
import { amountOf, majorOf, type Money } from '../money/money.ts';
import type { PricedLine } from '../quotes/line.ts';
import { dateInWords } from '../words/dates.ts';

/** What an expense comes to on a bill; no amount where it is not charged on, or its rate is not known. */
export type Charged = { amount: Money | null; exact: Exact; reason: string; caution: string | null };
type Billable = Pick<Expense, 'id' | 'on' | 'category' | 'what' | 'amount' | 'rate' | 'markUpPercent' | 'billed' | 'untaxed'>;

/** @param currency of the job */
export function charged(expense: Billable, currency: string): Charged {
  const { amount, rate, billed, markUpPercent, what, on } = expense;
  const nothing = { amount: null, exact: exact(0), caution: null };
  if (!billed) return { ...nothing, reason: 'Not charged on.' };
  const same = amount.currency === currency;
  if (!same && !rate) {
    const caution = `"${what}" of ${dateInWords(on)} is in ${amount.currency} and this job in ${currency}: it is not charged on until its rate is typed.`;
    return { ...nothing, reason: `No rate from ${amount.currency} to ${currency} is known.`, caution };
  }
  const times = same || !rate ? exact(1) : exact(rate.rate);
  const price = majorOf(amount).mul(times).mul(exact(markUpPercent).add(100n)).div(100n);
  const parts = [
    `Paid ${formatMoney(amount, { code: true })} on ${dateInWords(on)}`,
    same || !rate ? '' : `at ${rate.rate} ${currency} for one ${amount.currency}, the rate of ${dateInWords(rate.date)}`,
    exact(markUpPercent).equals(0) ? '' : `with ${formatNumber(markUpPercent)} % of mark-up`,
  ].filter((part) => part !== '');
  return { amount: amountOf(price, currency), exact: price, reason: `${parts.join(', ')}.`, caution: null };
}

export type BilledExpenses = {
  /** One line for each that is charged on; ids `expense/<id>`, in the section that no discount takes from. */
  lines: PricedLine[];
  /** What makes lines bear no tax where that is so. */
  changes: DraftChange[];
  cautions: string[];
};

/** @param currency of the job */
export function billedExpenses(expenses: readonly Billable[], currency: string): BilledExpenses {
  const known = expenses.map((expense) => ({ expense, charged: charged(expense, currency), id: `expense/${expense.id}` }));
  const billed = known.filter((each) => each.charged.amount !== null);
  return {
    lines: billed.map(({ expense, charged: { exact: unitPrice, reason }, id }) => ({
      id,
      section: 'travel',
      what: expense.what,
      quantity: exact(1),
      unit: '',
      unitPrice,
      reason,
      estimated: false,
      changed: false,
    })),
    changes: billed.flatMap(({ expense: { untaxed }, id }): DraftChange[] =>
      untaxed === null ? [] : [{ op: 'tax', ids: [id], state: 'exempt', ...(untaxed === '' ? {} : { reason: untaxed }) }],
    ),
    cautions: known.flatMap(({ charged: { caution } }) => caution ?? []),
  };
}

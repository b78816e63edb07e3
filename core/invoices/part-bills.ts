/**
 * Bills that ask for a part: a deposit, an instalment, and what a cancellation owes.
 */
import type { Cancellation, DraftChange } from '../contract/quotes.ts';
import type { SetupFields } from '../contract/setup.ts';
import { exact } from '../money/exact.ts';
import { formatMoney, formatNumber } from '../money/format.ts';
import { amountOf, compare, majorOf, percentOf, type Money } from '../money/money.ts';
import { taxLines, type TaxedLine } from '../money/taxes.ts';
import { foldChanges, overlay } from '../quotes/changes.ts';
import { quoteLine, type PricedLine } from '../quotes/line.ts';
import { taxesOf, taxesOfLine } from '../quotes/taxes.ts';
import type { Asked } from './asked.ts';
import type { BillLine } from './bill-lines.ts';
import { depositLines } from './deposit.ts';

export type PartBill = { lines: BillLine[]; missing: string[]; dropped: { id: string; what: string }[] };

/** What a part is taken of: the lines with their taxes, and whether their amounts hold tax. */
export type Whole = { currency: string; lines: readonly TaxedLine<string>[]; included: boolean };

/**
 * A share of a whole, its taxes in the same proportion, tax included.
 * @param usual what is asked for where nobody said; null where that must be said
 * @param most the most that can be asked for
 */
export function shareBill(whole: Whole, { ask }: Pick<Asked, 'ask'>, usual: Money | null, most: Money, what: string): PartBill {
  const amount = ask ? askedAmount(ask, most) : usual;
  const none = { lines: [], dropped: [] };
  if (amount === null) return { ...none, missing: ['How much it asks for: an amount, or per cent of what is left to bill.'] };
  if (amount.minor <= 0) return { ...none, missing: ['Nothing is asked for. Give an amount.'] };
  if (compare(amount, most) > 0)
    return { ...none, missing: [`${formatMoney(most)} is left to bill, less than the ${formatMoney(amount)} that is asked for.`] };
  const { baskets } = taxLines(whole.currency, whole.lines, whole.included);
  const lines = depositLines(amount, baskets, what).map((line) => ({
    ...line,
    reason: ask?.percent
      ? `${formatNumber(ask.percent)} % of ${formatMoney(most)}.`
      : `${formatMoney(amount)}, shared over the taxes of the whole.`,
    estimated: false,
    changed: ask !== undefined,
  }));
  return { lines, missing: [], dropped: [] };
}

function askedAmount({ amount, percent }: NonNullable<Asked['ask']>, most: Money): Money {
  return percent === undefined ? amountOf(amount ?? '0', most.currency) : percentOf(most, percent);
}

/** The fee of a calling off and costs already bound, each a line; changes by hand on top. */
export function cancellationBill(
  owes: Pick<Cancellation, 'fee' | 'bound' | 'percent' | 'reason' | 'base'>,
  setup: Pick<SetupFields, 'registered' | 'tax' | 'moreTaxes'>,
  changes: readonly DraftChange[],
  what: { fee: string; bound: string },
): PartBill {
  const { currency } = owes.base;
  const overrides = foldChanges(changes, 1);
  const made = [
    feeLine('cancellation/fee', what.fee, owes.fee, owes.reason),
    feeLine('cancellation/bound', what.bound, owes.bound, 'Costs already bound, owed in full.'),
  ].filter((line) => line.unitPrice.n !== 0n);
  const mine = taxesOf(setup);
  const lines = overlay(made, overrides, () => true, currency).map((line): BillLine => {
    const taxes = taxesOfLine(line.id, mine, overrides.taxes);
    const { id, quantity, unit, unitPrice, amount, reason, estimated, changed, what: words } = quoteLine(line, currency, taxes);
    return { id, section: 'cancellation', what: words, quantity, unit, unitPrice, amount, taxes, reason, estimated, changed };
  });
  const dropped = made.filter(({ id }) => overrides.dropped.has(id)).map(({ id, what: words }) => ({ id, what: words }));
  return {
    lines,
    dropped,
    missing: lines.length === 0 ? ['Nothing is owed by the terms. Credit the deposit instead, if there was one.'] : [],
  };
}

function feeLine(id: string, what: string, amount: Money, reason: string): PricedLine {
  return {
    id,
    section: 'extras',
    what,
    quantity: exact(1),
    unit: '',
    unitPrice: majorOf(amount),
    reason,
    estimated: false,
    changed: false,
  };
}

/**
 * A discount is worked out once on the whole, per cent before fixed, and then shared over the tax groups that it applies to.
 */
import type { Section } from '../contract/quotes.ts';
import { exact } from '../money/exact.ts';
import { formatMoney, formatNumber } from '../money/format.ts';
import { amountOf, compare, majorOf, money, negate, percentOf, subtract, sum, zero, type Money } from '../money/money.ts';
import { joined } from '../words/lists.ts';
import type { DiscountAsked } from './changes.ts';
import { amountOfLine, type PricedLine } from './line.ts';

/** Expenses are passed on as they are: a discount leaves them alone unless it is told otherwise. */
export const expenseSections: readonly Section[] = ['travel', 'allowances'];
const discountable: readonly Section[] = ['days', 'kit', 'editing', 'extras', 'rush'];

/** The sections that a discount applies to. */
export function discountedSections(asked: DiscountAsked): readonly Section[] {
  return asked.over ?? discountable;
}

/** The discount's lines, as negative amounts; never more than there is to discount. */
export function discountLines(asked: DiscountAsked, lines: readonly PricedLine[], currency: string): PricedLine[] {
  const sections = discountedSections(asked);
  const within = lines.filter((line) => sections.includes(line.section));
  const base = sum(
    currency,
    within.map((line) => amountOfLine(line, currency)),
  );
  const byPercent = capped(percentOf(base, asked.percent), base);
  const fixed = capped(amountOf(asked.fixed, currency), subtract(base, byPercent));
  const over = `${formatMoney(base)} for ${joined([...new Set(within.map((line) => line.section))])}`;
  const made: PricedLine[] = [];
  if (byPercent.minor > 0)
    made.push(
      line('discount/percent', `Discount ${formatNumber(asked.percent)} %`, byPercent, `${formatNumber(asked.percent)} % of ${over}.`),
    );
  if (fixed.minor > 0) made.push(line('discount/fixed', 'Discount', fixed, `A fixed sum taken off ${over}, after any per cent.`));
  return made;
}

function capped(amount: Money, most: Money): Money {
  if (most.minor <= 0) return zero(amount.currency);
  return compare(amount, most) > 0 ? money(most.minor, most.currency) : amount;
}

function line(id: string, what: string, amount: Money, reason: string): PricedLine {
  return {
    id,
    section: 'discount',
    what,
    quantity: exact(1),
    unit: '',
    unitPrice: majorOf(negate(amount)),
    reason,
    estimated: false,
    changed: true,
  };
}

/**
 * What to set aside of a year: what came in without the tax that was collected, less what was spent and paid to hands.
 */
import { formatMoney } from '../money/format.ts';
import { sum, zero, type Money } from '../money/money.ts';
import { countInWords } from '../words/amounts.ts';
import type { Income } from './income.ts';
import { selfEmploymentTax } from './self-employment.ts';
import { setAsideOf, type SetAside } from './set-aside.ts';
import { worthOf, type Rated } from './sums.ts';

export type YearMoney = {
  year: number;
  home: { currency: string; country: string };
  /** Share to set aside, exact decimal; null where my own year is not filled in. */
  percent: string | null;
  received: readonly Income[];
  spent: readonly Rated[];
  paidToHands: readonly Rated[];
};
export type YearSetAside = SetAside & {
  income: Money;
  /** Tax that was collected; it is not mine. */
  collected: Money;
  costs: Money;
  /** United States only. */
  selfEmployment: { tax: Money; reason: string } | null;
  cautions: string[];
};

/** In the home currency; what has no rate is left out and named. */
export function yearSetAside({ year, home, percent, received, spent, paidToHands }: YearMoney): YearSetAside {
  const { currency } = home;
  const inHome = received.flatMap((each) => each.home ?? []);
  const collected = total(
    currency,
    inHome.map(({ tax }) => tax),
  );
  const gross = total(
    currency,
    inHome.map(({ amount }) => amount),
  );
  const income = { minor: gross.minor - collected.minor, currency };
  const costOf = (all: readonly Rated[]): Money[] => all.flatMap((each) => worthOf(each, currency) ?? []);
  const known = [...costOf(spent), ...costOf(paidToHands)];
  const costs = total(currency, known);
  const aside = setAsideOf(income, costs, percent ?? '0');
  return {
    ...aside,
    income,
    collected,
    costs,
    selfEmployment: ofSelf(aside.profit, home, year),
    cautions: [
      percent === null ? 'The share to set aside is part of your own year: fill it in in Setup.' : '',
      leftOut(received.length - inHome.length, 'payment'),
      leftOut(spent.length + paidToHands.length - known.length, 'cost'),
      'Mileage, per diem and the wear of kit are not taken off here; the logs have them.',
    ].filter((caution) => caution !== ''),
  };
}

const total = (currency: string, amounts: readonly Money[]): Money => (amounts.length === 0 ? zero(currency) : sum(currency, amounts));

function leftOut(count: number, what: string): string {
  return count === 0 ? '' : `${countInWords(count, what)} in another currency without a rate ${count === 1 ? 'is' : 'are'} left out.`;
}

function ofSelf(profit: Money, { currency, country }: YearMoney['home'], year: number): YearSetAside['selfEmployment'] {
  if (country !== 'US' || currency !== 'USD' || profit.minor <= 0) return null;
  const found = selfEmploymentTax({ minor: profit.minor, currency: 'USD' }, year);
  if (!found) return null;
  const reason = `Self-employment tax on ${formatMoney(profit)} would be about ${formatMoney(found.tax)}; half of it, ${formatMoney(found.half)}, is taken off income. It is part of what you set aside, not on top of it.`;
  return { tax: found.tax, reason };
}

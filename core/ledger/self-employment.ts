/**
 * US self-employment tax, as an estimate of what to set aside: 26 USC 1401(a), (b), 1402(a)(12), 164(f); wage bases of the Social Security Administration.
 * Never advice. A year whose wage base is not known says so.
 */
import { exact, type Exact } from '../money/exact.ts';
import { amountOf, majorOf, type Money } from '../money/money.ts';

/** Net earnings from self-employment: this share of the profit (26 USC 1402(a)(12)). */
const NET_SHARE = exact('0.9235');
const SOCIAL = exact('0.124');
const MEDICARE = exact('0.029');
/** Under this much of net earnings nothing is due (26 USC 1402(b)(2)). */
const LEAST = exact(400);
/** Contribution and benefit base by year, dollars (Social Security Administration). */
const WAGE_BASES: Readonly<Record<number, string>> = { 2025: '176100', 2026: '184500' };

export type SelfEmployment = { tax: Money<'USD'>; half: Money<'USD'> };

/**
 * Tax on a year's profit, and the half of it that is deducted from income. The additional Medicare tax is left aside: it depends on the household.
 * @returns undefined for a year whose wage base is not known
 */
export function selfEmploymentTax(profit: Money<'USD'>, year: number): SelfEmployment | undefined {
  const base = WAGE_BASES[year];
  if (base === undefined) return undefined;
  const net = majorOf(profit).mul(NET_SHARE);
  if (net.lt(LEAST)) return { tax: amountOf(0, 'USD'), half: amountOf(0, 'USD') };
  const social = least(net, exact(base)).mul(SOCIAL);
  const tax = amountOf(social.add(net.mul(MEDICARE)), 'USD');
  return { tax, half: amountOf(majorOf(tax).div(2n), 'USD') };
}

function least(one: Exact, other: Exact): Exact {
  return one.lt(other) ? one : other;
}

/**
 * What to set aside from what was earned, by the share of my own year. An estimate, never advice.
 */
import { exact } from '../money/exact.ts';
import { formatMoney, formatNumber } from '../money/format.ts';
import { compare, percentOf, subtract, zero, type Money } from '../money/money.ts';

export type SetAside = { profit: Money; amount: Money; reason: string };

/**
 * The share of what is left of an income after its costs; nothing of a loss.
 * @param percent share to set aside, exact decimal
 * @throws CurrencyMixError when income and costs are in different currencies
 */
export function setAsideOf(income: Money, costs: Money, percent: string): SetAside {
  const profit = subtract(income, costs);
  const none = zero(income.currency);
  const amount = compare(profit, none) > 0 ? percentOf(profit, percent) : none;
  const from = `${formatMoney(income)} received less ${formatMoney(costs)} spent is ${formatMoney(profit)}`;
  const share = exact(percent).equals(0) ? 'no share is set aside in your year' : `${formatNumber(percent)} % of it ${formatMoney(amount)}`;
  return {
    profit,
    amount,
    reason: `${from}; ${profit.minor > 0 ? share : 'nothing is set aside of a loss'}. An estimate, not tax advice.`,
  };
}

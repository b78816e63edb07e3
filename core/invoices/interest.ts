/**
 * Late interest: simple, on the gross that is open, from the day after the due date, actual/365, rounded once at the end.
 * What may be charged is a matter of contract and law: the figure is a starting point.
 */
import { exact } from '../money/exact.ts';
import { formatMoney, formatNumber } from '../money/format.ts';
import { amountOf, majorOf, zero, type Money } from '../money/money.ts';
import { countInWords } from '../words/amounts.ts';
import { daysPastDue } from './ageing.ts';

/** Days of a year, whatever the calendar says (actual/365). */
const YEAR = 365n;

export type LateInterest<C extends string = string> = { days: number; amount: Money<C>; reason: string };

/**
 * Interest on an open amount as of a date.
 * @param percent a year, exact decimal
 * @returns nothing owed on or before the due date
 */
export function lateInterest<C extends string>(open: Money<C>, percent: string, dueDate: string, asOf: string): LateInterest<C> {
  const days = Math.max(0, daysPastDue(dueDate, asOf));
  const amount =
    days === 0 ? zero(open.currency) : amountOf(majorOf(open).mul(exact(percent)).mul(BigInt(days)).div(100n).div(YEAR), open.currency);
  return {
    days,
    amount,
    reason: `${formatMoney(open)} x ${formatNumber(percent)} % x ${countInWords(days, 'day')} / 365 = ${formatMoney(amount)}.`,
  };
}

/**
 * The scale that a price is read on: my floor, their budget, this job a day, and what is kept for each hour away.
 */
import type { z } from 'zod';
import type { Budget } from '../contract/inquiries.ts';
import type { Scale } from '../contract/quotes.ts';
import type { SetupFields } from '../contract/setup.ts';
import { decimalText, exact, measured, roundHalfAway, type Exact } from '../money/exact.ts';
import { formatMoney, formatNumber } from '../money/format.ts';
import { amountOf, money, zero, type Money } from '../money/money.ts';

type Year = NonNullable<SetupFields['year']>;

/**
 * The day rate under which the year does not pay: (yearly costs + wanted pay / (1 - set-aside share)) / days that can be sold.
 * @returns null where everything is to be set aside: no price is high enough
 */
export function floorOf(year: Year, currency: string): Money | null {
  const kept = exact(1).sub(exact(year.setAsidePercent).div(100n));
  if (kept.lte(0)) return null;
  return money(roundHalfAway(exact(year.costs).add(exact(year.pay).div(kept)).div(exact(year.days))), currency);
}

/** The floor with the figures that it comes from, in one sentence. */
export function floorInWords(year: Year, currency: string): string {
  const floor = floorOf(year, currency);
  if (!floor) return `With ${formatNumber(year.setAsidePercent)} % set aside nothing is left to live on: no day rate is high enough.`;
  const [costs, pay] = [money(year.costs, currency), money(year.pay, currency)].map((amount) => formatMoney(amount));
  return `Your floor is ${formatMoney(floor, { code: true })} a day: costs of ${costs} and pay of ${pay} after ${formatNumber(year.setAsidePercent)} % set aside, over ${year.days} days.`;
}

/** A budget as a day's figure, or null when its currency or unit is not known or is not the quote's. */
function budgetADay(budget: z.infer<typeof Budget> | null, currency: string, daysUsed: Exact, dayHours: string): Money | null {
  if (!budget?.per || budget.currency !== currency) return null;
  const amount = measured(budget.amount, 4);
  if (budget.per === 'day') return amountOf(amount, currency);
  if (budget.per === 'hour') return amountOf(amount.mul(exact(dayHours)), currency);
  return daysUsed.gt(0) ? amountOf(amount.div(daysUsed), currency) : null;
}

/** What is left of a job and what it uses up. */
export type JobYield = {
  /** Net less expenses passed through and what hands and sub-hire cost me. */
  kept: Money;
  /** Shoot, half, travel, prep and standby dates, each counting 1. */
  dates: number;
  /** Edit hours that are not done on site. */
  editHours: Exact;
  /** Hours from door-out to door-in; at home, hours from call to wrap. */
  hoursOut: Exact;
};

/** Days used up: dates, and edit hours by how many make a day. */
function daysUsed(job: Pick<JobYield, 'dates' | 'editHours'>, editHoursADay: string): Exact {
  return exact(job.dates).add(job.editHours.div(exact(editHoursADay)));
}

/** This job a day, and kept for each hour away (edit hours at home count as away from other work). */
export function scaleOf(job: JobYield, floor: Money | null, budget: z.infer<typeof Budget> | null, dayHours: string): Scale {
  const { currency } = job.kept;
  const used = daysUsed(job, dayHours);
  const hours = job.hoursOut.add(job.editHours);
  const each = (divisor: Exact): Money =>
    divisor.gt(0) ? money(roundHalfAway(exact(job.kept.minor).div(divisor)), currency) : zero(currency);
  return {
    floor,
    budget: budgetADay(budget, currency, used, dayHours),
    thisJob: each(used),
    daysUsed: decimalText(used, 2),
    keptPerHourAway: each(hours),
    hoursAway: decimalText(hours, 2),
  };
}

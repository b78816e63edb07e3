/**
 * Until when a quote is valid, and when its deposit is due.
 */
import type { Deposit } from '../contract/quotes.ts';
import type { Terms } from '../contract/rates.ts';
import type { Moment } from '../contract/parts.ts';
import type { z } from 'zod';
import { exact } from '../money/exact.ts';
import { formatNumber } from '../money/format.ts';
import { percentOf, type Money } from '../money/money.ts';
import { instantText, wallAt } from '../time/read.ts';
import { dateInWords } from '../words/dates.ts';

/** A date without a time is due at this wall time. */
const END_OF_DAY = '23:59';

/** A moment on the clock of a zone; seconds are dropped. */
export function momentAt(at: number, zone: string): Moment {
  const wall = wallAt(at, zone);
  return { wall, zone, at: instantText(Math.floor(at / 60_000) * 60_000) };
}

/** The instant, epoch milliseconds, at which what is due on a date without a time is due. */
export function endOfDay(date: string, zone: string): number {
  return Temporal.PlainDateTime.from(`${date}T${END_OF_DAY}`).toZonedDateTime(zone).epochMilliseconds;
}

/**
 * Valid until the end of the last of so many days, at most to first call. A first call that is past does not cut it short: the quote says so elsewhere.
 * @param now epoch milliseconds
 * @param firstCallAt epoch milliseconds, null when no day is known
 */
export function validUntil(now: number, terms: Pick<Terms, 'validDays'>, firstCallAt: number | null, zone: string): Moment {
  const last = Temporal.PlainDate.from(wallAt(now, zone).slice(0, 10)).add({ days: terms.validDays }).toString();
  const end = endOfDay(last, zone);
  return momentAt(firstCallAt !== null && firstCallAt > now ? Math.min(end, firstCallAt) : end, zone);
}

export type DepositDue = { deposit: z.infer<typeof Deposit>; caution: string | null };

/**
 * The deposit: so many per cent of the gross, rounded; the rest is what remains. It is due as an invoice is; where that would fall after
 * first call it is due at call instead, and one is asked whether to drop it.
 */
export function depositOf(
  gross: Money,
  terms: Pick<Terms, 'depositPercent' | 'payDays'>,
  now: number,
  firstCallAt: number | null,
  zone: string,
): DepositDue {
  const percent = exact(terms.depositPercent);
  if (percent.equals(0) || gross.minor <= 0) return { deposit: null, caution: null };
  const amount = percentOf(gross, percent.gt(100) ? '100' : terms.depositPercent);
  const note = `${formatNumber(percent)} % of the total`;
  const dueDate = Temporal.PlainDate.from(wallAt(now, zone).slice(0, 10)).add({ days: terms.payDays }).toString();
  if (firstCallAt === null || endOfDay(dueDate, zone) <= firstCallAt)
    return { deposit: { amount, due: `by ${dateInWords(dueDate)}`, note }, caution: null };
  const callDate = dateInWords(wallAt(firstCallAt, zone).slice(0, 10));
  return {
    deposit: { amount, due: `at first call, ${callDate}`, note },
    caution: `With ${terms.payDays} days to pay, the deposit would fall due on ${dateInWords(dueDate)}, after first call; it is due at call instead. Or drop it: set it to 0 per cent.`,
  };
}

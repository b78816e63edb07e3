import type { JobDay } from '../contract/jobs.ts';
import { decimalText, exact } from '../money/exact.ts';
import { parseAmount } from '../money/parse.ts';
import { daysOnSite } from '../trips/stays.ts';

/**
 * What a sub-hire costs me, from the price of one as it was told: "USD 35 a day", "90 the job". A price "a day", "per day" or "/day" counts
 * for each date on site.
 * @param price as typed; the first amount in it counts
 * @returns currency units as an exact decimal; null where no amount can be read
 */
export function subHireCost(price: string, count: number, days: readonly JobDay[]): string | null {
  const figures = /\d[\d.,]*/.exec(price)?.[0].replace(/[.,]$/, '');
  const read = figures === undefined ? undefined : parseAmount(figures, 9);
  if (!read?.ok) return null;
  const onSite = new Set(daysOnSite(days).map(({ date }) => date));
  const times = /(\ba|\bper|\/)\s*day\b/i.test(price) ? onSite.size : 1;
  return decimalText(exact(read.value).mul(count).mul(times));
}

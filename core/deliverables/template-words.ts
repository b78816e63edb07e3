/**
 * A template in words.
 */
import type { DueRule, EditNumbers } from '../contract/templates.ts';
import { formatNumber } from '../money/format.ts';
import { countInWords } from '../words/amounts.ts';
import { hoursTogether } from './blank.ts';

/** "15 business days after the last wrap". */
export function dueInWords({ days, count }: DueRule): string {
  if (days === 0) return 'on the day of the last wrap';
  return `${countInWords(days, count === 'business' ? 'business day' : 'day')} after the last wrap`;
}

/** "3 min, 17 h in all": the finished length and the hours of all stages. */
export function workInWords(numbers: EditNumbers): string {
  return `${formatNumber(numbers.finishedMinutes)} min, ${formatNumber(hoursTogether(numbers))} h in all`;
}

/** "2, with 5 business days for notes"; on the same day there are none. */
export function roundsInWords({ rounds, windowDays, sameDay }: EditNumbers): string {
  if (sameDay) return 'none: cut on site';
  return rounds === 0 ? 'none' : `${rounds}, with ${countInWords(windowDays, 'business day')} for notes`;
}

/** How long until an instant, or how late it is, in the few words that fit beside a clock. */
import { countInWords } from './amounts.ts';

const MINUTE = 60_000;
const DAY = 24 * 60;

/**
 * "45 min", "2 h 50", "38 h", then from 48 hours on whole days and from three weeks on whole weeks; the same with "late" once it is past.
 * Rounded towards zero, so that no clock shows more time than there is.
 * @param at epoch milliseconds of the instant
 * @param now epoch milliseconds of the present
 */
export function timeLeft(at: number, now: number): string {
  const minutes = Math.floor(Math.abs(at - now) / MINUTE);
  const length = lengthBeside(minutes);
  return at <= now ? `${length} late` : length;
}

function lengthBeside(minutes: number): string {
  if (minutes < 60) return `${minutes} min`;
  if (minutes < 2 * DAY) {
    const rest = minutes % 60;
    return `${Math.floor(minutes / 60)} h${rest === 0 ? '' : ` ${String(rest).padStart(2, '0')}`}`;
  }
  const days = Math.floor(minutes / DAY);
  return days < 21 ? countInWords(days, 'day') : countInWords(Math.floor(days / 7), 'week');
}

export type Nearness = 'late' | 'today' | 'tomorrow' | 'this week' | 'next week' | 'later';

/** Which stretch of the ruler an instant hangs on, by the calendar of a zone; weeks begin on Monday (ISO 8601). Midnight ends the day before it. */
export function nearness(at: number, now: number, zone: string): Nearness {
  if (at <= now) return 'late';
  const date = (ms: number): Temporal.PlainDate => Temporal.Instant.fromEpochMilliseconds(ms).toZonedDateTimeISO(zone).toPlainDate();
  const [then, today] = [date(at - 1), date(now)];
  const days = today.until(then, { largestUnit: 'day' }).days;
  const toSunday = 7 - today.dayOfWeek;
  if (days === 0) return 'today';
  if (days === 1) return 'tomorrow';
  if (days <= toSunday) return 'this week';
  return days <= toSunday + 7 ? 'next week' : 'later';
}

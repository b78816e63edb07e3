/**
 * A moment in the few words that fit into a sentence on the Desk: "14:00" for today, "Sat 12:00" for within a week, else with its date.
 */
import { wallAt } from '../time/read.ts';

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** The end of a day is said with that day: 00:00 is "midnight" of the date before it, and so is 23:59. Both in epoch milliseconds. */
export function whenWords(at: number, zone: string, now: number): string {
  const wall = wallAt(at, zone);
  const clock = wall.slice(11);
  const midnight = clock === '00:00' || clock === '23:59';
  const day = dayWords(clock === '00:00' ? at - 1 : at, zone, now);
  if (midnight) return day === '' ? 'midnight' : `the end of ${day}`;
  return day === '' ? clock : `${day} ${clock}`;
}

/** Nothing for today, the weekday within six days either way, else with its date: "Sat 19 Dec". Both in epoch milliseconds. */
export function dayWords(at: number, zone: string, now: number): string {
  const date = dateAt(at, zone);
  const today = dateAt(now, zone);
  const distance = today.until(date, { largestUnit: 'days' }).days;
  if (distance === 0) return '';
  const weekday = WEEKDAYS[date.dayOfWeek - 1] ?? '';
  if (Math.abs(distance) < 7) return weekday;
  return `${weekday} ${date.day} ${MONTHS[date.month - 1]}${date.year === today.year ? '' : ` ${date.year}`}`;
}

function dateAt(at: number, zone: string): Temporal.PlainDate {
  return Temporal.PlainDate.from(wallAt(at, zone).slice(0, 10));
}

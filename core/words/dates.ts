/**
 * Dates and wall times as words, in English, day before month: "Sat 12 and Sun 13 December 2026". No locale data: the same on every computer.
 */
import type { Moment } from '../contract/parts.ts';
import { joined } from './lists.ts';

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];

const dayOfWeek = (date: Temporal.PlainDate) => `${WEEKDAYS[date.dayOfWeek - 1]} ${date.day}`;
const month = (date: Temporal.PlainDate) => MONTHS[date.month - 1];

/** "Sat 12 December 2026" for `2026-12-12`. */
export function dateInWords(date: string): string {
  const day = Temporal.PlainDate.from(date);
  return `${dayOfWeek(day)} ${month(day)} ${day.year}`;
}

/** "3 December 2026" for `2026-12-03`: the date of a paper, without its weekday. */
export function paperDate(date: string): string {
  const day = Temporal.PlainDate.from(date);
  return `${day.day} ${month(day)} ${day.year}`;
}

/** "December" for `2026-12`. */
export function monthInWords(yearMonth: string): string {
  return MONTHS[Number(yearMonth.slice(5, 7)) - 1] ?? yearMonth;
}

/** Two dates and all between: "27 to 28 November 2026", "27 November to 3 December 2026", and one date where both are the same. */
export function paperSpan(from: string, to: string): string {
  const [first, last] = [Temporal.PlainDate.from(from), Temporal.PlainDate.from(to)];
  if (first.equals(last)) return paperDate(from);
  const said = [`${first.day}`, month(first), `${first.year}`].slice(0, first.year !== last.year ? 3 : first.month !== last.month ? 2 : 1);
  return `${said.join(' ')} to ${paperDate(to)}`;
}

/** "Sat 12 December 2026, 14:00" for `2026-12-12T14:00`. */
export function wallInWords(wall: string): string {
  return `${dateInWords(wall.slice(0, 10))}, ${wall.slice(11, 16)}`;
}

/** A moment at which something ends: "the end of Sat 19 December 2026" for 23:59, else with its time. */
export function deadlineInWords(moment: Moment): string {
  return moment.wall.endsWith('T23:59') ? `the end of ${dateInWords(moment.wall.slice(0, 10))}` : wallInWords(moment.wall);
}

/** The city of an IANA zone, as people say it: "New York" for `America/New_York`. */
export function zoneInWords(zone: string): string {
  return (zone.split('/').at(-1) ?? zone).replaceAll('_', ' ');
}

/**
 * Any dates in one phrase, sorted, each once. Three or more in a row become a range; month and year are said once where they stay the same.
 * "Sun 6 to Thu 10 December 2026", "Sat 12 and Sun 13 December 2026", "Wed 30 December 2026 to Sat 2 January 2027".
 */
export function datesInWords(dates: readonly string[]): string {
  const days = [...new Set(dates)].sort().map((date) => Temporal.PlainDate.from(date));
  const items = runsOf(days).flatMap((run) => (run.length > 2 ? [[run[0], run.at(-1)]] : run.map((day) => [day])));
  const ends = items.flat().filter((day) => day !== undefined);
  let index = 0;
  const said = items.map((item) =>
    item.flatMap((day) => (day === undefined ? [] : [dayOfWeek(day) + monthAfter(day, ends[++index])])).join(' to '),
  );
  return joined(said);
}

/** Dates in words without their last year, where the days beside them say it. */
export function withoutYear(dates: string): string {
  return dates.replace(/ \d{4}$/, '');
}

/** What follows a day's number: nothing where the next day said shares month and year, else what differs. */
function monthAfter(day: Temporal.PlainDate, next: Temporal.PlainDate | undefined): string {
  if (next && next.year === day.year && next.month === day.month) return '';
  return next && next.year === day.year ? ` ${month(day)}` : ` ${month(day)} ${day.year}`;
}

function runsOf(days: readonly Temporal.PlainDate[]): Temporal.PlainDate[][] {
  const runs: Temporal.PlainDate[][] = [];
  for (const day of days) {
    const run = runs.at(-1);
    if (run?.at(-1)?.add({ days: 1 }).equals(day)) run.push(day);
    else runs.push([day]);
  }
  return runs;
}

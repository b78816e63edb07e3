/**
 * Rows in which each day has its hour: "Call Tue 06:30 / Wed 07:30", "Wrap: 18:00 (14th), 17:00 (15th)". The word before the row is said of all of it, and
 * each hour is of the day beside it.
 */
import { day } from './walls.ts';
import type { SaidTime, Scene } from './scene.ts';

const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];
/** All that may stand between two hours of a row. */
const BETWEEN =
  /^(?:[\s,/;&|()@–-]|(?<!\p{L})(?:(?:mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?|and|on|at|the|\d{1,2}(?:st|nd|rd|th))(?!\p{L}))*$/iu;
const DAY = /(?<!\p{L})(mon|tue|wed|thu|fri|sat|sun)|(?<!\d)(\d{1,2})(?:st|nd|rd|th)(?!\p{L})/giu;
const [MOST_BETWEEN, MOST_BESIDE] = [30, 16];

/** The place among the days of each day that a few words name; 0 for one that is none of them. */
const namedIn = (words: string, days: readonly string[]): number[] =>
  [...words.matchAll(DAY)].map(
    ([, weekday, number]) =>
      days.findIndex((one) =>
        weekday ? day(one).dayOfWeek === WEEKDAYS.indexOf(weekday.toLowerCase()) + 1 : day(one).day === Number(number),
      ) + 1,
  );

/** The hours, those of rows with as many hours as there are days each on its day. */
export function eachOnItsDay({ text, times }: Scene, days: readonly string[]): readonly SaidTime[] {
  if (days.length < 2) return times;
  const told = [...times];
  for (let head = 0; head + days.length <= times.length; head++) {
    const row = times.slice(head, head + days.length);
    const [{ said, start }, last] = [row[0] as SaidTime, row.at(-1) as SaidTime];
    if ((said !== 'call' && said !== 'wrap') || row.some(({ to }) => to)) continue;
    const gaps = row.slice(1).map((time, at) => text.slice((row[at] as SaidTime).end, time.start));
    if (!gaps.every((gap) => gap.length <= MOST_BETWEEN && !gap.includes('\n') && BETWEEN.test(gap))) continue;
    const before =
      text
        .slice(Math.max(0, start - MOST_BESIDE), start)
        .split('\n')
        .at(-1) ?? '';
    const after = text.slice(last.end, last.end + MOST_BESIDE).split(/[\n.;]/)[0] ?? '';
    const named = namedIn(`${before}${text.slice(start, last.end)}${after}`, days);
    if (named.join() !== days.map((_, at) => at + 1).join()) continue;
    for (const [at, time] of row.entries()) told[head + at] = { ...time, said, date: undefined, dayBefore: false, nthDay: at + 1 };
  }
  return told;
}

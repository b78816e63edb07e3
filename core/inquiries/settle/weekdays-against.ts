/**
 * Weekdays beside a run of dates: those that are not of its ends, and those that only point at its days.
 */
import { askedDays, namedAmong } from './days-among.ts';
import type { DateMention, EventDays } from './scene.ts';

/** At most a comma, a bracket and blanks. */
const BESIDE = 3;

/** "Fri to Sun 12-14 June" where the twelfth is no Friday: weekdays beside a run of dates must be those of its ends. */
export function weekdaysAgainst(main: readonly DateMention[], weekdays: readonly DateMention[]): EventDays | undefined {
  for (const named of weekdays) {
    const [first, last] = named.sequence.items.map(({ atom }) => atom.weekday);
    const run = main.find((mention) => mention.start >= named.end && mention.start - named.end <= BESIDE && mention.readings.length === 1);
    const dates = run?.readings[0];
    if (!run || !dates || dates.length < 2 || named.sequence.items.length !== 2 || first === undefined || last === undefined) continue;
    const ends = [dates[0] as string, dates.at(-1) as string].map((date) => Temporal.PlainDate.from(date).dayOfWeek);
    if (ends[0] !== first || ends[1] !== last) return askedDays([named, run], [dates], 'weekday');
  }
  return undefined;
}

/** "Tuesday to Thursday of the week after next ... 7am on the Tuesday": a weekday of a run that is told with its week is a day of it. */
export function withoutTheirOwn(weekdays: readonly DateMention[]): DateMention[] {
  const told = weekdays.filter(
    ({ sequence: { items }, readings }) =>
      readings.length === 1 && (readings[0]?.length ?? 0) > 1 && items.some(({ atom }) => atom.relative),
  );
  const [run, ...more] = told;
  if (!run || more.length > 0) return [...weekdays];
  const days = run.readings[0] ?? [];
  return weekdays.filter(
    (one) => one === run || one.sequence.items.some(({ atom }) => atom.relative) || namedAmong(one, days).length === 0,
  );
}

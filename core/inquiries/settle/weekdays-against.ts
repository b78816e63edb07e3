/**
 * Weekdays beside a run of dates that are not those of its ends.
 */
import { askedDays } from './days-among.ts';
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

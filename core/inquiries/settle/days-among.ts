/**
 * What every decider of days needs: how many dates are looked at, which known days a mention means, days in a row, days to be asked about.
 */
import type { DateMention, EventDays, SaidTime, Where } from './scene.ts';

/** More dates than this are a calendar, not a message. */
export const MOST_MENTIONS = 60;
/** So many sets of days are offered. */
export const MOST_CHOICES = 4;

/** What dates and hours are said of that are never the job's own. */
export const OF_ELSE: ReadonlySet<SaidTime['said']> = new Set(['reply', 'delivery', 'other', 'past']);

/** Days in a row. */
export const consecutive = (dates: readonly string[]): boolean =>
  dates.every((date, at) => at === 0 || Temporal.PlainDate.from(dates[at - 1] as string).until(Temporal.PlainDate.from(date)).days === 1);

/** Whether every day of one list is in the other. */
export const within = (inner: readonly string[], outer: readonly string[]): boolean => inner.every((date) => outer.includes(date));

/** The days of several lists, each once, in order. */
export const union = (...lists: readonly (readonly string[])[]): string[] => [...new Set(lists.flat())].sort();

/** The date of a day's number in the month of another date; undefined where that month has no such day. */
export function inMonthOf(date: string, number: number): string | undefined {
  const month = Temporal.PlainDate.from(date);
  return number >= 1 && number <= month.daysInMonth ? month.with({ day: number }).toString() : undefined;
}

/** No days yet, and those of which some are meant. */
export const askedDays = (
  where: readonly Where[],
  choices: readonly string[][],
  doubt: NonNullable<EventDays['doubt']> = 'several',
): EventDays => ({
  dates: [],
  where: [...where],
  choices: [...new Map(choices.map((days) => [days.join(), days])).values()].slice(0, MOST_CHOICES),
  doubt,
});

/** The days that a mention means among the known ones: by its date, by its number or by its weekday, where that is of one day. */
export function namedAmong({ sequence, readings, explicit, doubt }: DateMention, known: readonly string[]): string[] {
  if (explicit && !doubt) return known.filter((date) => readings.length === 1 && (readings[0] ?? []).includes(date));
  const found = sequence.items.map(({ atom }) =>
    known.filter((date) => {
      const plain = Temporal.PlainDate.from(date);
      return atom.day === undefined ? atom.weekday === plain.dayOfWeek && !atom.relative : atom.day === plain.day;
    }),
  );
  if (found.some((days) => days.length > 1)) return [];
  const [first, last] = [found[0]?.[0], found.at(-1)?.[0]];
  return sequence.items.some(({ join }) => join === 'range')
    ? known.filter((date) => first !== undefined && last !== undefined && date >= first && date <= last)
    : known.filter((date) => found.some(([day]) => day === date));
}

/** The one day that was settled, where no other was told or counted beside it. */
export const settledDay = ({ dates: [day, ...more], dropped, counted }: EventDays): string | undefined =>
  more.length > 0 || dropped || counted ? undefined : day;

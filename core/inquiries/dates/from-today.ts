/**
 * Dates that are told from today, as dates of the calendar; two where people mean either.
 */
import type { Relative } from './pieces.ts';

export type PlainDate = Temporal.PlainDate;
const { PlainDate: Dates } = Temporal;

/** Why a date is not certain. */
export type Doubt = 'weekday' | 'passed' | 'impossible' | 'order' | 'which week' | 'choice' | 'month';

export function dateOf(year: number, month: number, day: number): PlainDate | undefined {
  try {
    return Dates.from({ year, month, day }, { overflow: 'reject' });
  } catch {
    return undefined;
  }
}

export const before = (a: PlainDate, b: PlainDate): boolean => Dates.compare(a, b) < 0;
export const nextWeekday = (from: PlainDate, weekday: number): PlainDate => from.add({ days: (weekday - from.dayOfWeek + 7) % 7 });

export type Choices = { dates: PlainDate[][]; doubt?: Doubt; past?: boolean };

/** What the words of a date come to. */
export type Resolved = {
  /** Each reading is a sorted list of dates, YYYY-MM-DD. One reading is a certainty, none means only roughly known or impossible. */
  readings: string[][];
  doubt?: Doubt;
  /** Written as a range or as days in a row. */
  range: boolean;
  /** Has a month, said or in numbers. */
  explicit: boolean;
  /** Only weekdays are named. */
  weekdayOnly: boolean;
  /** Clearly before the message: "last Friday", a year gone by. */
  past: boolean;
  /** Known only as a month or week. */
  vague: boolean;
};

export const one = (...dates: PlainDate[]): Choices => ({ dates: [dates] });

/** "of next month" as a month of its year. */
function ofItsMonth(relative: Relative, today: PlainDate): Relative {
  if (!('ahead' in relative) || relative.kind === 'monthEnd' || relative.ahead === undefined) return relative;
  const { month, year } = today.with({ day: 1 }).add({ months: relative.ahead });
  return { ...relative, month, year };
}

export function resolveRelative(said: Relative, today: PlainDate): Choices {
  const relative = ofItsMonth(said, today);
  switch (relative.kind) {
    case 'days':
      return { dates: [[today.add({ months: relative.months ?? 0 }).add({ days: relative.days })]], past: relative.days < 0 };
    case 'week':
      return { dates: [], past: relative.weeks < 0 };
    case 'weekday': {
      const monday = today.subtract({ days: today.dayOfWeek - 1 });
      const coming = nextWeekday(today.add({ days: 1 }), relative.weekday);
      if (relative.ofYear !== undefined) return one(inWeekOfYear(relative.ofYear, relative.weekday, today));
      if (relative.which === 'ahead') return weeksOn(relative, coming, monday, today);
      if (relative.which === 'last') return { dates: [[coming.subtract({ days: 7 })]], past: true };
      if (relative.which === 'this' && relative.weeks !== 0) return one(monday.add({ days: relative.weekday - 1 + 7 * relative.weeks }));
      if (relative.which === 'next') {
        const sunday = today.dayOfWeek === 7 ? today : monday.add({ days: 6 });
        const doubtful = today.dayOfWeek === 7 || !before(sunday, coming);
        const shift = 7 * relative.weeks;
        if (doubtful && today.dayOfWeek !== relative.weekday)
          return { dates: [[coming.add({ days: shift })], [coming.add({ days: shift + 7 })]], doubt: 'which week' };
        return one(coming.add({ days: shift }));
      }
      if (today.dayOfWeek === relative.weekday && relative.which !== 'coming') {
        if (relative.weeks > 0) return one(today.add({ days: 7 * relative.weeks }));
        return { dates: [[today], [coming]], doubt: 'which week' };
      }
      return one(coming.add({ days: 7 * relative.weeks }));
    }
    case 'weekend': {
      const saturday = today.dayOfWeek === 7 ? today.subtract({ days: 1 }) : nextWeekday(today, 6);
      const pair = (from: PlainDate): PlainDate[] => [from, from.add({ days: 1 })];
      if (relative.which === 'last') return { dates: [pair(saturday.subtract({ days: 7 }))], past: true };
      if (relative.weeks > 0) return one(...pair(saturday.add({ days: 7 * relative.weeks })));
      const inside = today.dayOfWeek >= 6;
      if (relative.which === 'next')
        return inside
          ? one(...pair(saturday.add({ days: 7 })))
          : { dates: [pair(saturday), pair(saturday.add({ days: 7 }))], doubt: 'which week' };
      return inside ? { dates: [pair(saturday), pair(saturday.add({ days: 7 }))], doubt: 'which week' } : one(...pair(saturday));
    }
    case 'nth': {
      const years = relative.year === undefined ? [today.year, today.year + 1] : [relative.year];
      const found = years
        .map((year) => nthWeekday(year, relative.month, relative.weekday, relative.nth))
        .find((date) => date && (relative.year !== undefined || !before(date, today)));
      return found ? { dates: [[found]], past: before(found, today) } : { dates: [] };
    }
    case 'every':
      return resolveEvery(relative, today);
    case 'edgeDays':
      return resolveEdgeDays(relative, today);
    case 'nthDays':
      return resolveNthDays(relative, today);
    case 'easter': {
      const days = [today.year, today.year + 1].map((year) => easterOf(year).add({ days: relative.days }));
      return one(days.find((day) => !before(day, today)) as PlainDate);
    }
    case 'beside':
      return resolveBeside(relative, today);
    case 'nthWeekend':
      return resolveNthWeekend(relative, today);
    case 'monthEnd':
      return resolveMonthEnd(relative, today);
    case 'places':
      return resolvePlaces(relative, today);
    default:
      return { dates: [] };
  }
}

/**
 * Easter Sunday of a year by the Gregorian calendar.
 * The rule without exceptions of "Nature" (1876), as in J. Meeus, Astronomical Algorithms (1991), chapter 8; from memory, tried on dates that are known.
 */
function easterOf(year: number): PlainDate {
  const [golden, century, rest] = [year % 19, Math.floor(year / 100), year % 100];
  const leaps = Math.floor(century / 4);
  const moon = (19 * golden + century - leaps - Math.floor((century - Math.floor((century + 8) / 25) + 1) / 3) + 15) % 30;
  const sunday = (32 + 2 * (century % 4) + 2 * Math.floor(rest / 4) - moon - (rest % 4)) % 7;
  const late = Math.floor((golden + 11 * moon + 22 * sunday) / 451);
  const days = moon + sunday - 7 * late + 114;
  return Dates.from({ year, month: Math.floor(days / 31), day: (days % 31) + 1 });
}

/** A weekday of a week of the year as ISO 8601 counts them: of the next year where this year's is over. */
function inWeekOfYear(week: number, weekday: number, today: PlainDate): PlainDate {
  const [found] = [today.year, today.year + 1]
    // 4 January is always in the first week.
    .map((year) => Dates.from({ year, month: 1, day: 4 }))
    .map((first) => first.add({ days: 7 * (week - 1) + weekday - first.dayOfWeek }))
    .filter((date) => !before(date, today));
  return found as PlainDate;
}

/** "Saturday in two weeks": so long after the coming one, or in the week so many ahead; a choice where these are two. */
function weeksOn({ weekday, weeks }: Relative & { kind: 'weekday' }, coming: PlainDate, monday: PlainDate, today: PlainDate): Choices {
  if (today.dayOfWeek === weekday) return one(today.add({ days: 7 * weeks }));
  const after = coming.add({ days: 7 * weeks });
  const within = monday.add({ days: 7 * weeks + weekday - 1 });
  return after.equals(within) ? one(after) : { dates: [[within], [after]], doubt: 'which week' };
}

/** "the Monday after 12 March": never that day itself. */
function resolveBeside(relative: Relative & { kind: 'beside' }, today: PlainDate): Choices {
  const { weekday, after, month, day } = relative;
  const years = relative.year === undefined ? [today.year, today.year + 1] : [relative.year];
  const from = years
    .map((year) => (relative.feast === 'easter' ? easterOf(year) : dateOf(year, month, day)))
    .find((date) => date && (relative.year !== undefined || !before(date, today)));
  if (!from) return { dates: [] };
  const found = after ? nextWeekday(from.add({ days: 1 }), weekday) : nextWeekday(from.subtract({ days: 7 }), weekday);
  // "the Thursday before Christmas" that is Christmas Eve, "the Monday after Easter": that day or the one a week off.
  if (relative.feast !== undefined && Math.abs(from.until(found).days) <= 1)
    return { dates: [[found], [found.add({ days: after ? 7 : -7 })]], doubt: 'which week' };
  return { dates: [[found]], past: before(found, today) };
}

/** "the last weekend of March": by its Saturday or by its Sunday, which is a choice where a month begins or ends between them. */
function resolveNthWeekend({ nth, month, year, on }: Relative & { kind: 'nthWeekend' }, today: PlainDate): Choices {
  const years = year === undefined ? [today.year, today.year + 1] : [year];
  for (const one of years) {
    const saturdays = [nthWeekday(one, month, 6, nth), nthWeekday(one, month, 7, nth)?.subtract({ days: 1 })].filter(
      (day) => day !== undefined,
    );
    const first = saturdays[0];
    if (first === undefined || (year === undefined && before(first, today))) continue;
    const dates = saturdays
      .filter((day, at) => at === 0 || !day.equals(first))
      .map((day) => [day, day.add({ days: 1 })].filter(({ dayOfWeek }) => on === undefined || on === dayOfWeek));
    return dates.length > 1 ? { dates, doubt: 'which week' } : { dates, past: before(first, today) };
  }
  return { dates: [] };
}

/** The months that may be meant by a name, the next one first. */
const monthsAhead = (year: number | undefined, month: number, today: PlainDate): number[] =>
  (year === undefined ? [today.year, today.year + 1] : [year]).filter((one) => year !== undefined || !before(lastDay(one, month), today));

/** All Tuesdays of a month, or so many from its beginning or end; nothing in a month that has begun, or where they are not as many as is said. */
function resolveEvery({ weekday, month, year, most, fromEnd, count }: Relative & { kind: 'every' }, today: PlainDate): Choices {
  const [of] = monthsAhead(year, month, today);
  if (of === undefined || (of === today.year && month === today.month)) return { dates: [] };
  const days = [1, 2, 3, 4, 5].flatMap((nth) => nthWeekday(of, month, weekday, nth) ?? []);
  const [first] = days;
  if (!first || (count !== undefined && count !== days.length)) return { dates: [] };
  return { dates: [fromEnd && most !== undefined ? days.slice(-most) : days.slice(0, most)], past: before(first, today) };
}

/** Days in a row of which each is the last or the first of its name; a choice where a month begins or ends between them. */
function resolveNthDays({ nth, weekdays, month, year }: Relative & { kind: 'nthDays' }, today: PlainDate): Choices {
  const [of] = monthsAhead(year, month, today);
  if (of === undefined) return { dates: [] };
  const days = weekdays.flatMap((weekday) => nthWeekday(of, month, weekday, nth) ?? []);
  const [first] = days;
  if (first === undefined || days.length < weekdays.length) return { dates: [] };
  const inRow = days.every((day, at) => day.equals(first.add({ days: at })));
  return inRow ? { dates: [days], past: before(first, today) } : { dates: [days], doubt: 'which week' };
}

/** The first or the last days of a month, in a row. */
function resolveEdgeDays({ nth, count, month, year }: Relative & { kind: 'edgeDays' }, today: PlainDate): Choices {
  const [of] = monthsAhead(year, month, today);
  if (of === undefined) return { dates: [] };
  const first = nth === 1 ? Dates.from({ year: of, month, day: 1 }) : lastDay(of, month).subtract({ days: count - 1 });
  return { dates: [Array.from({ length: count }, (_, step) => first.add({ days: step }))], past: before(first, today) };
}

/** "the first and third Saturday of November", each by itself where only one of them is meant. */
function resolvePlaces({ places, either, month, year }: Relative & { kind: 'places' }, today: PlainDate): Choices {
  const [of] = monthsAhead(year, month, today);
  if (of === undefined) return { dates: [] };
  const found = places.map(({ nth, weekday }) =>
    weekday === undefined
      ? resolveNthWeekend({ kind: 'nthWeekend', nth, month, year: of }, today).dates
      : [nthWeekday(of, month, weekday, nth)].flatMap((day) => (day ? [[day]] : [])),
  );
  if (found.some(({ length }) => length !== 1)) return { dates: [] };
  const days = found.map(([one]) => one as PlainDate[]);
  return either ? { dates: days, doubt: 'choice' } : { dates: [days.flat()], past: days.flat().every((day) => before(day, today)) };
}

function resolveMonthEnd(relative: Relative & { kind: 'monthEnd' }, today: PlainDate): Choices {
  if (relative.month === undefined) {
    const { year, month } = today.with({ day: 1 }).add({ months: relative.ahead });
    return one(lastDay(year, month));
  }
  const year = relative.year ?? (before(lastDay(today.year, relative.month), today) ? today.year + 1 : today.year);
  const last = lastDay(year, relative.month);
  return { dates: [[last]], past: before(last, today) };
}

export const lastDay = (year: number, month: number): PlainDate => Dates.from({ year, month, day: 31 }, { overflow: 'constrain' });

function nthWeekday(year: number, month: number, weekday: number, nth: number): PlainDate | undefined {
  if (nth < 0) {
    const last = lastDay(year, month);
    return last.subtract({ days: ((last.dayOfWeek - weekday + 7) % 7) + 7 * (-1 - nth) });
  }
  const date = nextWeekday(Dates.from({ year, month, day: 1 }), weekday).add({ days: 7 * (nth - 1) });
  return date.month === month ? date : undefined;
}

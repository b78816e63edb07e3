/**
 * From dates as written to dates of the calendar, seen from the day on which the message came. Where two readings are possible both are given.
 */
import { before, dateOf, lastDay, one, resolveRelative, type Choices, type Doubt, type PlainDate, type Resolved } from './from-today.ts';
import type { Order } from './order.ts';
import type { Atom, Relative } from './pieces.ts';
import type { Sequence } from './sequences.ts';
import { openReadings } from './open-readings.ts';
import { shiftDays } from './shifted.ts';
import type { Item } from './trims.ts';
import { weekendAround } from './weekends-around.ts';

export type Seen = { today: PlainDate; order: Order; month?: number | undefined; stray?: number | undefined; longest?: number };

/** Dates without a year that lie this little before the message are more likely a slip or a look back than next year's. */
const PASSED_DAYS = 45;
/** A day that is told by its number alone is nearer than this. */
const LONGEST_AHEAD = 300;
/** A longer run of dates is a season, not a shoot. */
const LONGEST_RUN = 45;

/** Candidates for a day and month without a year: this year's if still to come, else the next year that has it. */
function comingOf(month: number, day: number, today: PlainDate): PlainDate | undefined {
  for (let year = today.year; year <= today.year + 8; year++) {
    const date = dateOf(year, month, day);
    if (date && !before(date, today)) return date;
  }
  return undefined;
}

/** A day of the month on a weekday, this month or the next; nothing where it is neither. */
function comingOn(day: number, weekday: number, today: PlainDate): PlainDate | undefined {
  return [today, today.with({ day: 1 }).add({ months: 1 })]
    .map(({ year, month }) => dateOf(year, month, day))
    .find((date) => date && !before(date, today) && date.dayOfWeek === weekday);
}

/** The date nearest to a numbered one that falls on the weekday that was said. */
function onWeekday(date: PlainDate, weekday: number): PlainDate {
  const ahead = (weekday - date.dayOfWeek + 7) % 7;
  return ahead <= 3 ? date.add({ days: ahead }) : date.subtract({ days: 7 - ahead });
}

function resolveDay(atom: Atom, seen: Seen): Choices {
  const { today } = seen;
  const day = atom.day as number;
  if (atom.month === undefined) return resolveOrdinal(atom, seen);
  const month = atom.month;
  if (atom.year !== undefined) {
    const date = dateOf(atom.year, month, day);
    if (!date) return { dates: [], doubt: 'impossible' };
    const past = before(date, today);
    if (atom.weekday !== undefined && date.dayOfWeek !== atom.weekday)
      return { dates: [[date], [onWeekday(date, atom.weekday)]], doubt: 'weekday', past };
    return { dates: [[date]], past };
  }
  const coming = comingOf(month, day, today);
  if (!coming) return { dates: [], doubt: 'impossible' };
  const gone = dateOf(coming.year - 1, month, day);
  const justPassed = gone !== undefined && before(gone, today) && gone.until(today).days <= PASSED_DAYS;
  if (atom.weekday !== undefined) {
    if (coming.dayOfWeek === atom.weekday) return one(coming);
    if (justPassed && gone.dayOfWeek === atom.weekday) return { dates: [[gone]], past: true };
    return { dates: [[coming], [onWeekday(coming, atom.weekday)]], doubt: 'weekday' };
  }
  return justPassed ? { dates: [[coming]], doubt: 'passed' } : one(coming);
}

/** "the 12th", "Saturday the 12th": the next month that has it. */
function resolveOrdinal(atom: Atom, seen: Seen): Choices {
  const { today } = seen;
  const day = atom.day as number;
  if (atom.monthsAhead !== undefined) {
    const month = today.with({ day: 1 }).add({ months: atom.monthsAhead });
    const { monthsAhead: _, ...said } = atom;
    return resolveDay({ ...said, month: month.month, year: month.year }, seen);
  }
  // "the check for November": a month that is nearly a year away is not that of a day.
  const named = seen.month === undefined ? undefined : comingOf(seen.month, day, today);
  // "in March ... by Friday the 28th": a weekday that is not that month's tells the nearest day that it is of.
  const near = atom.weekday === undefined || named?.dayOfWeek === atom.weekday ? undefined : comingOn(day, atom.weekday, today);
  if (near) return one(near);
  if (seen.month !== undefined && !(named && today.until(named).days > LONGEST_AHEAD))
    return resolveDay({ ...atom, month: seen.month }, { today, order: seen.order });
  // "the Saturday of the May long weekend (the 22nd)": a month that is named elsewhere may be that of the day.
  const strayed = seen.stray === undefined ? undefined : comingOf(seen.stray, day, today);
  for (let months = 0; months <= 6; months++) {
    const first = today.with({ day: 1 }).add({ months });
    const date = dateOf(first.year, first.month, day);
    if (date && !before(date, today) && (atom.weekday === undefined || date.dayOfWeek === atom.weekday)) {
      if (strayed && !strayed.equals(date)) return { dates: [[date], [strayed]], doubt: 'month' };
      return atom.weekday === undefined || months <= 2 ? one(date) : { dates: [[date]], doubt: 'month' };
    }
  }
  return { dates: [], doubt: 'impossible' };
}

function resolveAtom(atom: Atom, seen: Seen): Choices {
  if (atom.relative?.kind === 'shifted') return shiftDays(atom.relative, resolveAtom(atom.relative.of, seen), seen.today);
  if (atom.relative) return resolveRelative(atom.relative, seen.today);
  if (atom.day === undefined)
    return resolveRelative({ kind: 'weekday', weekday: atom.weekday as number, which: 'plain', weeks: 0 }, seen.today);
  if (!atom.slashed) return resolveDay(atom, seen);
  const swapped: Atom = { ...atom, day: atom.month as number, month: atom.day };
  const order = seen.order;
  if (order === 'day first') return resolveDay(atom, seen);
  if (order === 'month first') return resolveDay(swapped, seen);
  const readings = [resolveDay(atom, seen), resolveDay(swapped, seen)];
  const fitting = readings.filter((reading) => reading.dates.length > 0 && reading.doubt === undefined && !reading.past);
  if (fitting.length === 1 && atom.weekday !== undefined) return fitting[0] as Choices;
  return { dates: readings.flatMap((reading) => reading.dates), doubt: 'order' };
}

/** "the first Saturday in November and again on the 20th" */
const monthOf = (relative: Relative | undefined): number | undefined =>
  relative !== undefined && /^(?:nth|nthDays|nthWeekend|every|places)$/.test(relative.kind) && 'month' in relative && relative.month
    ? relative.month
    : undefined;

/** Months and years that are said once for several days. */
function filled(items: readonly Item[]): Atom[] {
  const atoms = items.map(({ atom }) => ({ ...atom }));
  let month: number | undefined;
  let year: number | undefined;
  let yearMonth: number | undefined;
  let ahead: number | undefined;
  let week: Relative | undefined;
  for (const atom of atoms.toReversed()) {
    // "Thursday through Sunday of next week": the week is said once.
    if (
      atom.relative?.kind === 'weekday' &&
      (atom.relative.which === 'this' || (atom.relative.which === 'plain' && atom.relative.weeks > 0))
    )
      week = atom.relative;
    else if (week?.kind === 'weekday' && atom.weekday !== undefined && atom.day === undefined && atom.relative === undefined)
      atom.relative = { ...week, weekday: atom.weekday };
    if (atom.month === undefined && atom.day !== undefined && month !== undefined && !atom.relative) atom.month = month;
    if (atom.month === undefined && atom.day !== undefined && atom.monthsAhead === undefined && ahead !== undefined)
      atom.monthsAhead = ahead;
    ahead = atom.monthsAhead ?? ahead;
    // "30 December to 2 January 2027": the year is that of the second date.
    if (atom.month !== undefined && atom.year === undefined && year !== undefined)
      atom.year = yearMonth !== undefined && atom.month > yearMonth ? year - 1 : year;
    month = atom.monthFirst ? undefined : (atom.month ?? month);
    if (atom.year !== undefined) [year, yearMonth] = [atom.year, atom.month ?? yearMonth];
  }
  month = undefined;
  for (const [at, atom] of atoms.entries()) {
    if (atom.month === undefined && atom.day !== undefined && month !== undefined && !atom.relative) {
      // "29 April to Monday the 1st": a run that goes back goes into the next month.
      const back = items[at]?.join === 'range' && atom.day < (atoms[at - 1]?.day ?? 0);
      atom.month = back ? (month % 12) + 1 : month;
      if (back && month === 12 && atom.year !== undefined) atom.year++;
    }
    month = atom.month ?? monthOf(atom.relative) ?? month;
  }
  return atoms;
}

/** "from the 29th to the 31st", said in a November: the first month to come that has both days. */
function inTheRun({ month, monthsAhead, day = 0 }: Atom, last: Atom | undefined, item: Item | undefined, seen: Seen): Seen {
  const until = last?.day ?? 0;
  const bare = month === undefined && monthsAhead === undefined && last?.month === undefined && last?.relative === undefined;
  if (!bare || item?.join !== 'range' || day === 0 || until <= day || seen.month !== undefined) return seen;
  const { year, month: now, day: date } = seen.today;
  return date <= day && dateOf(year, now, until) === undefined ? { ...seen, today: seen.today.with({ day: 1 }).add({ months: 1 }) } : seen;
}

const LATER_WEEKS = 7;

/** A later date of a run is sought from the one before it: "Sunday to Thursday", "30 Dec to 2 Jan". */
function resolveChain(items: readonly Item[], seen: Seen): Choices {
  const atoms = filled(items);
  const runs: PlainDate[][] = [[]];
  let doubt: Doubt | undefined;
  let past = false;
  let last: PlainDate | undefined;
  let chains: PlainDate[][] = runs;
  for (const [index, atom] of atoms.entries()) {
    const join = items[index]?.join;
    const from: Seen = last === undefined ? seen : atom.day === undefined && atom.relative === undefined ? { ...seen, today: last } : seen;
    let choice = resolveAtom(atom, last === undefined ? inTheRun(atom, atoms[index + 1], items[index + 1], seen) : from);
    const first = choice.dates[0]?.[0];
    if (last && first && atom.year === undefined && choice.dates.length === 1 && before(first, last) && atom.day !== undefined) {
      const later = atom.month === undefined ? undefined : comingOf(atom.month, atom.day, last);
      if (later && last.until(later).days <= LATER_WEEKS * 7) choice = { dates: [[later]] };
    }
    if (choice.dates.length === 0) return { dates: [], doubt: choice.doubt ?? 'impossible', past: choice.past ?? false };
    doubt ??= choice.doubt;
    past ||= choice.past === true;
    const grown: PlainDate[][] = [];
    for (const [at, chain] of chains.entries()) {
      const options = chains.length === choice.dates.length && chains.length > 1 ? [choice.dates[at] as PlainDate[]] : choice.dates;
      for (const dates of options) {
        const begin = chain.at(-1);
        const end = dates.at(-1) as PlainDate;
        if (join === 'range' && begin) {
          const length = begin.until(dates[0] as PlainDate).days;
          if (length < 0 || length > (seen.longest ?? LONGEST_RUN)) continue;
          grown.push([...chain, ...Array.from({ length }, (_, step) => begin.add({ days: step + 1 })), ...dates.slice(1)]);
        } else if (begin && atom.day === undefined && atom.relative?.kind !== 'shifted' && before(end, begin)) continue;
        else grown.push([...chain, ...dates]);
      }
    }
    if (grown.length === 0 || grown.length > 4) return { dates: [], doubt: doubt ?? 'impossible', past };
    chains = grown;
    last = chains[0]?.at(-1);
  }
  return { dates: chains, past, ...(doubt ? { doubt } : {}) };
}

const text = (dates: readonly PlainDate[]): string[] => [...new Set(dates.map((date) => date.toString()))].sort();

/** "29 and 30 March or 5 and 6 April": as many days on either side. */
function inPairs(items: readonly Item[]): boolean {
  const at = items.findIndex(({ join }) => join === 'or');
  return at > 1 && items.length === 2 * at && items.filter(({ join }) => join === 'or').length === 1;
}

/** What tells the month as well. */
const HAS_MONTH = /^(?:nth|nthDays|edgeDays|every|nthWeekend|monthEnd|easter|beside|unknown|places)$/;

/** All readings of a run of dates. */
export function resolve(sequence: Sequence, seen: Seen): Resolved {
  const open = openReadings(sequence, seen.order, (items, order) => resolve({ ...sequence, items }, { ...seen, order }));
  if (open) return open;
  const atoms = sequence.items.map(({ atom }) => atom);
  const hasMonth = (atom: Atom): boolean =>
    atom.month !== undefined ||
    (atom.relative?.kind === 'shifted' ? hasMonth(atom.relative.of) : HAS_MONTH.test(atom.relative?.kind ?? ''));
  const explicit = atoms.some(hasMonth);
  const shape = {
    explicit,
    weekdayOnly:
      atoms.length > 0 &&
      atoms.every((atom) => atom.day === undefined && (atom.relative === undefined || atom.relative.kind === 'weekday')),
    range:
      sequence.items.some(({ join }) => join === 'range') ||
      atoms.some((atom) => atom.relative?.kind === 'weekend' || atom.relative?.kind === 'nthWeekend'),
  };
  const roughly = { readings: [], vague: true, past: false, ...shape };
  if (sequence.month) {
    const { month, year } = sequence.month;
    return { ...roughly, explicit: true, past: year !== undefined && before(lastDay(year, month), seen.today) };
  }
  // A week, or a day that only its country's custom tells: known roughly, and no slip.
  if (atoms.length > 0 && atoms.every(({ relative }) => relative?.kind === 'week' || relative?.kind === 'unknown'))
    return { ...roughly, past: atoms.every(({ relative }) => relative?.kind === 'week' && relative.weeks < 0) };
  const groups: Item[][] = [[]];
  const either = sequence.items.some(({ join }) => join === 'or') && !inPairs(sequence.items);
  for (const item of sequence.items) {
    if (
      item.join === 'or' ||
      (either && item.join === 'and' && item.atom.day !== undefined && sequence.items.every(({ join }) => join !== 'range'))
    )
      groups.push([]);
    groups.at(-1)?.push(item);
  }
  // Months and years reach over an "or", so they are filled in before the groups are parted.
  const whole = filled(sequence.items);
  let at = 0;
  const parted = groups.map((group) => group.map((item) => ({ ...item, atom: whole[at++] as Atom })));
  const choices = parted.map((group) => resolveChain(group, seen));
  const doubt = choices.find((choice) => choice.doubt)?.doubt;
  const past = choices.every((choice) => choice.past === true);
  let dates = choices.flatMap((choice) => choice.dates);
  if (sequence.around === 'week') return { ...roughly, past };
  if (sequence.around === 'weekend' || sequence.around === 'weekends') {
    const weekends = dates.map((days) => weekendAround(days, sequence));
    if (weekends.some((weekend) => weekend === undefined)) return { ...roughly, past };
    dates = weekends as PlainDate[][];
    shape.range = true;
  }
  const readings = [...new Map(dates.map((list) => [text(list).join(), text(list)])).values()];
  const chosen = choices.length > 1 && readings.length > 1 ? 'choice' : doubt;
  return { readings, past, vague: readings.length === 0 && chosen === undefined, ...(chosen ? { doubt: chosen } : {}), ...shape };
}

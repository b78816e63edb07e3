/**
 * The open half hours of an editor: a ceiling of hours a day from a time in the morning, none on dates that are out, none in busy stretches.
 */
import type { Slot } from './schedule.ts';

export type EditCalendar = {
  /** IANA name: the clock of home. */
  zone: string;
  /** First date, YYYY-MM-DD, and how many dates. */
  from: string;
  days: number;
  /** Hours of editing a day at most, and when the day begins, HH:MM. */
  ceilingHours: number;
  dayStart: string;
  /** Dates without editing: shoot and travel days unless allowed, days off, holidays. */
  closed: ReadonlySet<string>;
  /** Weekdays without editing, 1 for Monday to 7 for Sunday. */
  closedWeekdays: readonly number[];
  /** Stretches that are taken otherwise, half-open, epoch milliseconds. Where that is editing too, as a pinned block is, it counts in its day. */
  busy: readonly { start: number; end: number; editing?: boolean }[];
};

const HALF_HOUR = 30 * 60_000;

/**
 * Open half hours in order, as instants, so that a changed clock makes none longer or shorter. A day's hours end at its midnight.
 * A start that the clock skips is the first moment after the gap; one that occurs twice is the first.
 */
export function openHalfHours(calendar: EditCalendar): Slot[] {
  const { zone, from, days, ceilingHours, dayStart, closed, closedWeekdays, busy } = calendar;
  const taken = busy.toSorted((a, b) => a.start - b.start);
  const slots: Slot[] = [];
  let passed = 0;
  const first = EPOCH.until(from, { largestUnit: 'day' }).days;
  for (let day = first; day < first + days; day += 1) {
    const date = dateOf(day);
    if (closed.has(date) || closedWeekdays.includes(weekdayOf(day))) continue;
    const midnight = instantAt(dateOf(day + 1), '00:00', zone);
    let at = instantAt(date, dayStart, zone);
    const begins = instantAt(date, '00:00', zone);
    while (passed < taken.length && (taken[passed]?.end ?? Infinity) <= begins) passed += 1;
    const today = within(taken, passed, begins, midnight);
    const edited = today.reduce((sum, block) => sum + (block.editing ? lengthIn(block, begins, midnight) : 0), 0);
    const most = Math.floor(ceilingHours * 2) - Math.ceil(edited / HALF_HOUR);
    for (let open = 0; open < most && at + HALF_HOUR <= midnight;) {
      const [begun, ended] = [at, at + HALF_HOUR];
      if (!today.some(({ start, end }) => start < ended && end > begun)) {
        slots.push({ start: begun, end: ended });
        open += 1;
      }
      at = ended;
    }
  }
  return slots;
}

type Stretch = { start: number; end: number; editing?: boolean };

/** Of stretches by their start, those that have time in common with a span; none before `first` has. */
function within(sorted: readonly Stretch[], first: number, from: number, to: number): Stretch[] {
  const found: Stretch[] = [];
  for (let at = first; at < sorted.length && (sorted[at]?.start ?? Infinity) < to; at += 1) {
    const stretch = sorted[at];
    if (stretch && stretch.end > from) found.push(stretch);
  }
  return found;
}

const lengthIn = ({ start, end }: Stretch, from: number, to: number): number => Math.min(end, to) - Math.max(start, from);

/** Dates and their instants are asked for again and again while a plan is tried on. */
const knownInstants = new Map<string, number>();
const MOST_KNOWN = 20_000;

function instantAt(date: string, time: string, zone: string): number {
  const key = `${date}T${time} ${zone}`;
  const before = knownInstants.get(key);
  if (before !== undefined) return before;
  const at = Temporal.PlainDateTime.from(`${date}T${time}`).toZonedDateTime(zone, { disambiguation: 'compatible' }).epochMilliseconds;
  if (knownInstants.size >= MOST_KNOWN) knownInstants.clear();
  knownInstants.set(key, at);
  return at;
}

const EPOCH = Temporal.PlainDate.from('1970-01-01');
const knownDates = new Map<number, string>();

/** Of a day counted from the epoch. */
function dateOf(day: number): string {
  const date = knownDates.get(day) ?? EPOCH.add({ days: day }).toString();
  if (knownDates.size >= MOST_KNOWN) knownDates.clear();
  knownDates.set(day, date);
  return date;
}

/** 1 for Monday to 7 for Sunday, of a day counted from the epoch, which began on a Thursday. */
const weekdayOf = (day: number): number => ((((day + 3) % 7) + 7) % 7) + 1;

/**
 * The open half hours of an editor: a ceiling of hours a day from a time in the morning, none on dates that are out, none in busy stretches.
 */
import { dateLater } from '../time/wall.ts';
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
  /** Stretches that are taken otherwise: own time, pinned blocks. Half-open, epoch milliseconds. */
  busy: readonly { start: number; end: number }[];
};

const HALF_HOUR = 30 * 60_000;

/**
 * Open half hours in order, as instants, so that a changed clock makes none longer or shorter. A day's hours end at its midnight.
 * A start that the clock skips is the first moment after the gap; one that occurs twice is the first.
 */
export function openHalfHours(calendar: EditCalendar): Slot[] {
  const { zone, from, days, ceilingHours, dayStart, closed, closedWeekdays, busy } = calendar;
  const taken = busy.toSorted((a, b) => a.start - b.start);
  const most = Math.floor(ceilingHours * 2);
  const slots: Slot[] = [];
  let passed = 0;
  for (let step = 0; step < days; step += 1) {
    const date = dateLater(from, step);
    if (closed.has(date) || closedWeekdays.includes(Temporal.PlainDate.from(date).dayOfWeek)) continue;
    const midnight = instantAt(dateLater(date, 1), '00:00', zone);
    let at = instantAt(date, dayStart, zone);
    for (let open = 0; open < most && at + HALF_HOUR <= midnight;) {
      while (passed < taken.length && (taken[passed]?.end ?? Infinity) <= at) passed += 1;
      // What comes next ends behind this half hour's start; none that begins later can begin sooner.
      if ((taken[passed]?.start ?? Infinity) >= at + HALF_HOUR) {
        slots.push({ start: at, end: at + HALF_HOUR });
        open += 1;
      }
      at += HALF_HOUR;
    }
  }
  return slots;
}

function instantAt(date: string, time: string, zone: string): number {
  return Temporal.PlainDateTime.from(`${date}T${time}`).toZonedDateTime(zone, { disambiguation: 'compatible' }).epochMilliseconds;
}

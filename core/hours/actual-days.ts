/**
 * The paid dates of a job as they were: my own hours in place of the plan.
 */
import type { BookDay } from '../fit/book.ts';
import { finished, type FinishedHours, type WorkedHours } from './worked.ts';

export type ActualDays = {
  days: BookDay[];
  /** Planned dates of which no finished hours of mine are known; they stand as they were planned. */
  notEntered: string[];
};

/**
 * Planned dates with the hours of mine that were entered and have a wrap. Several calls on a date stand beside each other;
 * dates that were worked without being planned are there too.
 */
export function actualDays(planned: readonly BookDay[], worked: readonly WorkedHours[]): ActualDays {
  const mine = finished(worked).filter(({ handId }) => handId === null);
  const known = new Set(mine.map(({ date }) => date));
  const open = planned.filter(({ date }) => !known.has(date));
  const days = [...open, ...mine.map(bookDay)].sort((a, b) => a.callAt - b.callAt);
  return { days, notEntered: open.map(({ date }) => date) };
}

/** Hours as a paid date of the book. */
export function bookDay({ date, kind, call, wrap, callAt, wrapAt, unpaidBreakMinutes, zone }: FinishedHours): BookDay {
  return { date, kind, call, wrap, callAt, wrapAt, zone, ...(unpaidBreakMinutes > 0 ? { unpaidBreakMinutes } : {}) };
}

/** Planned dates that are over at `now` (epoch milliseconds) and of which no hours of mine are known, running or not. */
export function toEnter(planned: readonly BookDay[], worked: readonly WorkedHours[], now: number): string[] {
  const known = new Set(worked.filter(({ handId }) => handId === null).map(({ date }) => date));
  return planned.filter(({ date, wrapAt }) => wrapAt <= now && !known.has(date)).map(({ date }) => date);
}

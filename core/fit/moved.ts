/**
 * A candidate moved by whole days, wall times kept. Typed ways move along, tickets do not.
 */
import { instantOf, WallTimeError } from '../time/read.ts';
import { dateLater } from '../time/wall.ts';
import type { BookJob } from './book.ts';

type Dated = { date: string; call: string; wrap: string };

/** Days with the same wall times so many dates later; earlier below zero. */
export function daysMoved<T extends Dated>(days: readonly T[], shift: number): T[] {
  const moved = (wall: string) => `${dateLater(wall.slice(0, 10), shift)}${wall.slice(10)}`;
  return days.map((day) => ({ ...day, date: dateLater(day.date, shift), call: moved(day.call), wrap: moved(day.wrap) }));
}

/** Nothing where a wall time does not exist, or occurs twice, on the other date. */
export function movedBy(candidate: BookJob, shift: number): BookJob | null {
  const { zone } = candidate.place;
  try {
    const days = daysMoved(candidate.days, shift).map((day) => ({
      ...day,
      callAt: instantOf(day.call, zone).epochMilliseconds,
      wrapAt: instantOf(day.wrap, zone).epochMilliseconds,
    }));
    return days.every((day) => day.wrapAt > day.callAt) ? { ...candidate, days } : null;
  } catch (error) {
    if (error instanceof WallTimeError) return null;
    throw error;
  }
}

/**
 * Days of a job moved to another first date.
 */
import type { JobDay } from '../contract/jobs.ts';
import { dateLater } from '../time/wall.ts';

/**
 * The same days at the same wall times, so many dates later or earlier that the first is on `to`; on other weekdays where the distance says so.
 * @param days in order of their calls
 * @param to YYYY-MM-DD
 */
export function postponed(days: readonly JobDay[], to: string): JobDay[] {
  const [first] = days;
  if (!first) return [];
  const distance = Temporal.PlainDate.from(first.date).until(to).days;
  const wallMoved = (wall: string): string => `${dateLater(wall.slice(0, 10), distance)}${wall.slice(10)}`;
  return days.map(({ date, kind, call, wrap }) => ({
    date: dateLater(date, distance),
    kind,
    call: wallMoved(call),
    wrap: wallMoved(wrap),
  }));
}

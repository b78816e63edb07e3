import type { JobDay } from '../contract/jobs.ts';
import type { TryOn } from '../contract/try-on.ts';
import { instantOf } from '../time/read.ts';
import { changedDays } from './day-changes.ts';

/**
 * The days of a job as they are once what was tried on is agreed: a later call, an earlier wrap, days moved, called off or shifted.
 * @returns null where nothing of it concerns the days
 * @throws WallTimeError where a day would stand at a wall time that its clock skips or shows twice
 */
export function agreedDays(days: readonly JobDay[], zone: string, tryOn: TryOn): JobDay[] | null {
  const { firstCallLaterMinutes, lastWrapEarlierMinutes, shiftDays, daysMoved } = tryOn;
  const ownMoves = daysMoved?.some(({ jobId }) => jobId === null) ?? false;
  if (!firstCallLaterMinutes && !lastWrapEarlierMinutes && !shiftDays && !ownMoves) return null;
  const at = (wall: string) => instantOf(wall, zone).epochMilliseconds;
  const dated = days.map((day) => ({ ...day, callAt: at(day.call), wrapAt: at(day.wrap) }));
  return changedDays(dated, zone, tryOn).map(({ date, kind, call, wrap }) => ({ date, kind, call, wrap }));
}

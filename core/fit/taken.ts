/**
 * Dates that ink takes for certain, seen without the whole check.
 */
import type { TryOn } from '../contract/try-on.ts';
import { instantOf, WallTimeError } from '../time/read.ts';
import { staysOf } from '../trips/stays.ts';
import type { FitInput } from './check.ts';
import { overlaps } from './lane.ts';
import { daysMoved } from './moved.ts';
import { triedOn } from './try-on.ts';

/**
 * Whether the candidate, so many days later, would stand on a stay in ink: then it is not possible, whatever else there is. Of each stay two
 * days alone are placed on the clock, so that a long one costs no more than a short one. False says nothing: the check decides.
 * @returns also true where a wall time of those days does not exist, or occurs twice, on the other date
 */
export function takenByInk({ book, candidate, tryOn = {} }: FitInput): (shiftDays: number) => boolean {
  if (changesDays(tryOn)) return () => false;
  const { zone } = candidate.place;
  const ink = triedOn(book, candidate, tryOn)
    .book.jobs.filter((job) => job.firmness === 'ink' && (candidate.id === null || job.id !== candidate.id))
    .flatMap((job) => staysOf(job.days));
  const edges = staysOf(candidate.days).map(({ days }) => [...days.slice(0, 1), ...days.slice(-1)]);
  return (shiftDays) =>
    edges.some((days) => {
      const [first, last] = daysMoved(days, shiftDays);
      if (!first || !last) return false;
      try {
        const startAt = instantOf(first.call, zone).epochMilliseconds;
        const endAt = instantOf(last.wrap, zone).epochMilliseconds;
        return ink.some((stay) => overlaps(stay, { startAt, endAt }));
      } catch (error) {
        if (error instanceof WallTimeError) return true;
        throw error;
      }
    });
}

/** Days of the candidate that are tried on otherwise, or are a hand's, are for the check alone. */
function changesDays({ firstCallLaterMinutes, lastWrapEarlierMinutes, shiftDays, daysMoved: moved, hands }: TryOn): boolean {
  const changed = [firstCallLaterMinutes, lastWrapEarlierMinutes, shiftDays].some((figure) => (figure ?? 0) !== 0);
  return changed || (hands ?? []).length > 0 || (moved ?? []).some(({ jobId }) => jobId === null);
}

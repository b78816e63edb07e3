/**
 * Whether a call in the morning would be too early for the end of its day: "get here for six, the quiz stops at ten", "be there from 8, home at 1am".
 */
import type { Scene } from './scene.ts';

/** No crew is called before this hour where another hour is its call. */
export const SMALL_CALL = 4 * 60;
/** Longer than this is no evening's job, and than the other no day's. */
export const [LONGEST_DAY, LONGEST_SHIFT] = [14 * 60, 16 * 60];
const LATE = 20 * 60;

/** True where an end that is told comes late and more than `longest` minutes after a call. */
export const endsLate = (call: number, { times }: Scene, longest: number): boolean =>
  times.some(({ said, from, date }) => {
    const end = from.open
      ? from.minutes >= 8 * 60 && from.minutes < 720
        ? from.minutes + 720
        : 0
      : from.minutes + (from.minutes < SMALL_CALL && !date ? 1440 : 0);
    return said === 'wrap' && end >= LATE && end - call > longest;
  });

/**
 * When the rules of a zone's clock change, what is to come keeps its wall time and gets another instant. Hours that were worked, and tickets,
 * keep their instants.
 */
import { lengthInWords } from '../words/amounts.ts';
import { wallInWords, zoneInWords } from '../words/dates.ts';
import { WallTimeError } from './read.ts';

/** The instant of a wall time in a zone, epoch milliseconds; throws WallTimeError where there is none or two. */
export type Resolve = (wall: string, zone: string) => number;
/** A wall time with the instant that was built for it before, epoch milliseconds. */
export type Built = { wall: string; zone: string; at: number };
/** The instant as it is now; `moved` where it is another, `trouble` where the wall time cannot be placed any more and the old instant stays. */
export type Rebuilt = { at: number; moved: boolean; trouble: string | null };

const MINUTE = 60_000;

/**
 * Build an instant anew. Wall times are kept to the minute, so an instant inside the same minute is the same.
 * @param now epoch milliseconds; what is over stays as it is
 */
export function rebuilt({ wall, zone, at }: Built, resolve: Resolve, now: number): Rebuilt {
  const same = { at, moved: false, trouble: null };
  if (at <= now) return same;
  try {
    const again = resolve(wall, zone);
    return Math.floor(at / MINUTE) * MINUTE === again ? same : { at: again, moved: true, trouble: null };
  } catch (error) {
    if (!(error instanceof WallTimeError)) throw error;
    return { ...same, trouble: error.message };
  }
}

/** "Clock rules changed: call of Curling on Sat 12 December 2026, 09:00 in Toronto now comes 1 h earlier." Nothing where nothing moved. */
export function changeInWords(what: string, before: Built, after: Rebuilt): string | null {
  const when = `${what} on ${wallInWords(before.wall)} in ${zoneInWords(before.zone)}`;
  if (after.trouble) return `Clock rules changed: ${when} was left where it was. ${after.trouble}`;
  if (!after.moved) return null;
  const minutes = Math.round((after.at - Math.floor(before.at / MINUTE) * MINUTE) / MINUTE);
  return `Clock rules changed: ${when} now comes ${lengthInWords(Math.abs(minutes))} ${minutes < 0 ? 'earlier' : 'later'} than before.`;
}

import type { Read } from '../../core/money/parse.ts';
import { instantOf, isWallTime, WallTimeError } from '../../core/time/read.ts';

/** A wall time as it was typed on the clock of a zone, as an instant; undefined where nothing was typed, which stands for now. */
export function typedMoment(wall: string, zone: string): Read<string | undefined> {
  if (!isWallTime(wall)) return { ok: true, value: undefined };
  try {
    return { ok: true, value: instantOf(wall, zone).toString() };
  } catch (error) {
    if (!(error instanceof WallTimeError)) throw error;
    return { ok: false, sentence: error.message };
  }
}

/**
 * Which units make one leg: of all ways to cut the text into runs, the one in which the most is used and each leg has two ends and two times.
 */
import { dateLater } from '../../time/wall.ts';
import type { Cue } from './cues.ts';
import type { Marked } from './marks.ts';
import type { PlaceMark } from './places.ts';

/** A leg is said in no more units than this. */
const LONGEST_RUN = 14;
/** Nor are its two ends named more often than this in all. */
const MOST_NAMED = 10;

/** The runs that are legs, in order: first unit and the one behind the last. */
export function runsOf(units: readonly Marked[]): { from: number; to: number }[] {
  type Best = { score: number; from: number; leg: boolean };
  const best: Best[] = [{ score: 0, from: 0, leg: false }];
  for (let to = 1; to <= units.length; to += 1) {
    const loose = units[to - 1] as Marked;
    let here: Best = { score: (best[to - 1]?.score ?? 0) - 6 * loose.times.length - 0.5 * loose.numbers.length, from: to - 1, leg: false };
    const run = { times: 0, places: 0, crossed: 0 };
    for (let from = to - 1; from >= Math.max(0, to - LONGEST_RUN); from -= 1) {
      run.times += units[from]?.times.length ?? 0;
      run.places += units[from]?.places.length ?? 0;
      if (run.times > 2 || run.places > MOST_NAMED) break;
      const score = worthOf(units.slice(from, to), run.crossed);
      if (units[from]?.afterBlank) run.crossed += 1;
      if (score === null) continue;
      const sum = (best[from]?.score ?? 0) + score;
      if (sum > here.score) here = { score: sum, from, leg: true };
    }
    best.push(here);
  }
  const runs: { from: number; to: number }[] = [];
  for (let to = units.length; to > 0;) {
    const { from, leg } = best[to] as Best;
    if (leg) runs.unshift({ from, to });
    to = from;
  }
  return runs;
}

/** What a run is worth as a leg; null where it is none. */
function worthOf(run: readonly Marked[], blanks: number): number | null {
  const times = run.flatMap((unit) => unit.times);
  const ends = endsOf(run.flatMap((unit) => unit.places));
  const numbers = new Set(run.flatMap((unit) => unit.numbers.map(({ text }) => text)));
  const dates = new Set(run.flatMap((unit) => unit.dates.map((date) => date.dates.join())));
  if (ends.length > 2 || numbers.size > 1 || times.length === 0) return null;
  if (times.length === 1 && (ends.length < 2 || dates.size + numbers.size === 0)) return null;
  if (ends.length + numbers.size === 0 && !times.every(({ cue }) => cue !== null)) return null;
  // A line that says something begins and ends a run.
  if ([run[0], run.at(-1)].some((unit) => unit && saysNothing(unit))) return null;
  const beside = run.filter(({ minutes, berth }) => minutes !== null || berth).length;
  const useful = times.length * 5 + ends.length * 4 + Math.min(2, dates.size) * 2.5 + numbers.size * 2.5 + beside;
  return useful - Math.max(0, dates.size - 2) * 4 - (isFarApart(run) ? 6 : 0) - run.length * 0.3 - blanks * 1.2;
}

/** The dates of one leg lie within two days. */
function isFarApart(run: readonly Marked[]): boolean {
  const dates = run.flatMap((unit) => unit.dates.flatMap((date) => date.dates)).toSorted();
  const [first, last] = [dates[0], dates.at(-1)];
  return (
    first !== undefined &&
    last !== undefined &&
    run.every((unit) => unit.dates.every((date) => date.dates.length === 1)) &&
    dateLater(first, 2) < last
  );
}

function saysNothing({ times, places, dates, numbers, modes, berth, minutes }: Marked): boolean {
  return times.length + places.length + dates.length + numbers.length + modes.length === 0 && !berth && minutes === null;
}

/**
 * The different places of a run, in order. Where airports are named by their codes, names beside them say the same; a name in the line
 * of a code belongs to it.
 */
export function endsOf<P extends PlaceMark & { line: number; cue: Cue | null }>(places: readonly P[]): P[] {
  const codes = distinct(places.filter(({ isCode }) => isCode));
  if (codes.length >= 2) return codes;
  const [code] = codes;
  if (!code) return distinct(places);
  // "from Denver (DEN) to Boulder" names another end in the same line.
  const isBeside = ({ line, cue }: P): boolean =>
    places.some((each) => each.isCode && each.line === line && (cue === null || cue === each.cue));
  return distinct(places.filter((place) => place.isCode || !isBeside(place)));
}

function distinct<P extends PlaceMark>(places: readonly P[]): P[] {
  const seen = new Map<string, P>();
  for (const place of places) {
    const key = place.candidates.map((each) => each.key).join();
    if (!seen.has(key)) seen.set(key, place);
  }
  return [...seen.values()];
}

/**
 * Offers are known by their number on the paper. When one is taken out, those behind it move up: a change that was made before then knows them
 * by an earlier number.
 */
import type { DraftChange } from '../contract/quotes.ts';

/** Stands for the time in which an offer was not there yet: no change bears it. */
const NOT_YET = 0;

/** The number by which each of the changes knew an offer. @param offer its number now */
export function numbersOf(changes: readonly DraftChange[], offer: number): number[] {
  let number = offer;
  return changes
    .toReversed()
    .map((change) => {
      const known = number;
      if (change.op === 'offers') number = before(change.from, number);
      return known;
    })
    .toReversed();
}

/** The number of an offer before offers were named anew; one of which nothing is said keeps its own. */
function before(from: readonly (number | null)[] | undefined, number: number): number {
  const was = from?.[number - 1];
  return was === undefined ? number : (was ?? NOT_YET);
}

/** The number of an offer after they were named anew, or null where it was taken out. */
export function after(
  { names, from }: { names: readonly string[]; from?: readonly (number | null)[] | undefined },
  number: number,
): number | null {
  if (names.length < 2) return null;
  const now = from ? from.indexOf(number) + 1 : number;
  return now > 0 && now <= names.length ? now : null;
}

/**
 * Numbers at either end of a list of dates that are no days: "Dec 12, 4 rooms", "room 4, 12 December".
 */
import type { Token } from '../parts/tokens.ts';
import type { Atom } from './pieces.ts';

export type Join = 'range' | 'and' | 'or';
export type Item = { atom: Atom; join: Join | undefined };

/** What may follow a bare last day of a list. */
const AFTER_LIST =
  /^(?:[^\p{L}]+|in|at|for|with|from|and|or|to|on|is|are|we|i|call|load|which|this|if|as|but|so|please|then|both|all|each|if|would|could|can|do|are|the|our|inclusive|plus|only|work|works|need|needing|needed|near|around|during|starting|any|next|of)$/u;

/** Trailing numbers that are no days: "Dec 12, 4 rooms". */
export function trimEnd(tokens: readonly Token[], items: Item[], commas: boolean[]): void {
  // "June 9, 1 to 4": days of a month do not go back.
  const back = items.findIndex(
    ({ atom }, at) =>
      commas[at] && atom.bare && !atom.ordinal && items[at - 1]?.atom.monthFirst && (atom.day ?? 0) <= (items[at - 1]?.atom.day ?? 0),
  );
  if (back > 0) [items.length, commas.length] = [back, back];
  while (items.length > 1) {
    const last = items.at(-1) as Item;
    if (!last.atom.bare) return;
    const after = tokens[last.atom.next];
    const monthBefore = items
      .slice(0, -1)
      .some(
        ({ atom }) =>
          atom.monthFirst ||
          (atom.month !== undefined && !atom.bare && last.atom.ordinal) ||
          (atom.ordinal && last.atom.ordinal) ||
          (atom.weekday !== undefined && atom.day !== undefined && last.atom.ordinal),
      );
    if (last.atom.year !== undefined && monthBefore) return;
    const followed = after === undefined || after.breaks > 0 || AFTER_LIST.test(after.lower) || /^\p{Lu}/u.test(after.text);
    if (monthBefore && (last.join === 'range' || inARow(items))) return;
    if (monthBefore && (commas.at(-1) ? followed && (last.atom.ordinal || rises(items)) : followed || rises(items))) return;
    items.pop();
    commas.pop();
  }
}

/** "July 9, 10, 11": numbers that rise and follow each other, or three and more that rise. */
function rises(items: readonly Item[]): boolean {
  const month = items.findLastIndex(({ atom }) => atom.month !== undefined);
  const days = items.slice(Math.max(0, month)).map(({ atom }) => atom.day ?? 0);
  const up = days.every((day, at) => at === 0 || day > (days[at - 1] ?? 0));
  return up && (days.length > 2 || days.every((day, at) => at === 0 || day === (days[at - 1] ?? 0) + 1));
}

/** "Oct 12, 13, 14 hold?" */
const inARow = (items: readonly Item[]): boolean =>
  items.length > 2 && items.every(({ atom }, at) => at === 0 || atom.day === (items[at - 1]?.atom.day ?? 0) + 1);

const goesUp = (items: readonly Item[]): boolean =>
  items.every(({ atom }, at) => at === 0 || (atom.day ?? 0) > (items[at - 1]?.atom.day ?? 0));

const LEADS_TO_DAYS = /^(?:on|are|is|for|dates?|days|:|\(|from|of|between|both|film|filming|shoot|am|vom|les|los|el|le)$/;

/** Leading numbers that are no days: "room 4, 12 December". */
export function trimStart(tokens: readonly Token[], items: Item[], commas: boolean[]): void {
  while (items.length > 1 && items[0]?.atom.bare) {
    const dated = items.findIndex(({ atom }) => !atom.bare);
    const next = items[dated];
    const dayFirst = next?.atom.month !== undefined && !next.atom.monthFirst && !next.atom.iso;
    // "11, 12, 13 December": days in a row need no more than a comma; two of them a word before them that leads to days.
    const led = LEADS_TO_DAYS.test(tokens[items[0].atom.first - 1]?.lower ?? '') && goesUp(items.slice(0, dated + 1));
    const joinedWell = dayFirst && (inARow(items) || led || !(commas[dated] && !items[0].atom.ordinal));
    if (joinedWell) return;
    items.shift();
    commas.shift();
  }
}

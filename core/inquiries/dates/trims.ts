/**
 * Numbers at either end of a list of dates that are no days: "Dec 12, 4 rooms", "room 4, 12 December".
 */
import type { Token } from '../parts/tokens.ts';
import type { Atom } from './pieces.ts';

export type Join = 'range' | 'and' | 'or';
/** `maybe` where nobody is sure of it: "and possibly the 13th". */
export type Item = { atom: Atom; join: Join | undefined; maybe?: boolean };

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
          listsDays(tokens, items) ||
          (atom.month !== undefined && !atom.bare && last.atom.ordinal) ||
          (atom.ordinal && last.atom.ordinal) ||
          (atom.weekday !== undefined && atom.day !== undefined && last.atom.ordinal),
      );
    if (last.atom.year !== undefined && monthBefore) return;
    if (closesList(tokens, items)) return;
    const followed = after === undefined || after.breaks > 0 || AFTER_LIST.test(after.lower) || /^\p{Lu}/u.test(after.text);
    if (monthBefore && (last.join === 'range' || inARow(items))) return;
    if (monthBefore && (commas.at(-1) ? followed && (last.atom.ordinal || rises(items)) : followed || rises(items))) return;
    items.pop();
    commas.pop();
  }
}

/** "14 November and 28.": a later day of the same month, with which the sentence ends. */
function closesList(tokens: readonly Token[], items: readonly Item[]): boolean {
  const [before, last] = items.slice(-2);
  const after = tokens[last?.atom.next ?? 0];
  const ends = after === undefined || after.breaks > 0 || /^[.;!?)]$/.test(after.text);
  const and = /^(?:and|&|\+)$/.test(tokens[(last?.atom.first ?? 0) - 1]?.lower ?? '');
  return ends && and && before?.atom.month !== undefined && !before.atom.slashed && (last?.atom.day ?? 0) > (before.atom.day ?? 0);
}

/** "11/12-14", "11/12, 13 and 14", "2027-11-12 until 14": numbers that go up from the day, in one way of joining, are days behind a month; hours and counts are not. */
function listsDays(tokens: readonly Token[], items: readonly Item[]): boolean {
  const at = items.findLastIndex(({ atom }) => atom.slashed || atom.turned || atom.iso);
  const [next, ...more] = items.slice(at + 1);
  if (at < 0 || !next || items.slice(at + 1).some(({ atom }) => atom.month !== undefined || atom.weekday !== undefined)) return false;
  const { day = 0, month = 0, slashed } = (items[at] as Item).atom;
  const from = slashed ? Math.max(day, month) : day;
  if (!goesUp([{ atom: { ...next.atom, day: from }, join: undefined }, next, ...more])) return false;
  // "11/12, 13-15" are hours of the day.
  if (next.join === 'range' ? more.length > 0 : more.some(({ join }) => join === 'range')) return false;
  const lead = tokens[next.atom.first - 1];
  if (lead?.text === ',' && more.length === 0) return false;
  const sure = (next.atom.day ?? 0) > LATEST_HOUR || (next.join === 'range' && tokens[next.atom.first]?.tight === true);
  const after = tokens[(more.at(-1) ?? next).atom.next];
  return sure && (after === undefined || after.breaks > 0 || /^(?:[.,;:!?)/]|in|at|for|with|and|we|please|inclusive)$/.test(after.lower));
}
const LATEST_HOUR = 12;

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

/**
 * Which of several dates joined in a row a weekday beside them belongs to.
 */
import { weekdayWord } from '../words.ts';
import { weekdayAt, type Atom, type Tokens } from './pieces.ts';
import { RANGE_WORDS } from './range-words.ts';
import type { Item } from './trims.ts';

/** "Fri-Sun, June 18-20", "Mon-Wed Jan 11-13", "Sunday to Thursday 6-10 December": the second weekday belongs to the first, not to the date after it. */
export function weekdayOf(tokens: Tokens, atom: Atom | undefined, items: readonly Item[]): Atom | undefined {
  if (
    atom?.afterWeekday === undefined ||
    atom.weekday === undefined ||
    !items.every((item) => item.atom.weekday !== undefined && item.atom.day === undefined)
  )
    return atom;
  const firstOfRun = atom.monthFirst === true || (atom.day !== undefined && atom.month === undefined);
  const joins = tokens[atom.next]?.lower ?? '';
  const more = tokens[atom.next + 1]?.lower === 'the' ? atom.next + 2 : atom.next + 1;
  // "sat + sun the 24/25"
  const runs = firstOfRun && (RANGE_WORDS.has(joins) || /^(?:and|&|\+|\/|und|et|y|en)$/.test(joins)) && tokens[more]?.num !== undefined;
  const bracketed = tokens[atom.afterWeekday]?.text === '(';
  return atom.comma || runs || bracketed ? { first: atom.first, next: atom.afterWeekday, weekday: atom.weekday } : atom;
}

/** "Mar 18 thurs and 19 fri": where the day before has its weekday behind it, so has this one. */
export function withItsWeekday(tokens: Tokens, atom: Atom | undefined, last: Atom | undefined): Atom | undefined {
  if (atom?.day === undefined || atom.weekday !== undefined || last?.day === undefined || last.weekday === undefined) return atom;
  if (last.afterWeekday !== undefined || tokens[atom.next]?.breaks !== 0) return atom;
  const bracket = tokens[atom.next]?.text === '(' ? 1 : 0;
  const own = weekdayAt(tokens, atom.next + bracket);
  return own && (bracket === 0 || tokens[own.next]?.text === ')') ? { ...atom, weekday: own.weekday, next: own.next + bracket } : atom;
}

/** "fri + sat (22nd/23rd)", "sat & sun the 24/25", "Sat and Sun, 24 + 25": as many numbers in a row as weekdays right before them. */
export function numbersWeekdays(tokens: Tokens, index: number, items: readonly Item[]): boolean {
  const lead = /^(?:\(|the|,)$/.test(tokens[index - 1]?.lower ?? '') ? index - 2 : index - 1;
  const last = tokens[lead];
  if (last === undefined || weekdayWord(last.lower) === undefined || tokens[index]?.breaks !== 0) return false;
  const ordinals = items.every(({ atom }) => atom.ordinal);
  if (ordinals && tokens[index - 1]?.text === '(') return true;
  const before = /^(?:and|&|\+|-|\/|,|to|und|et|y|en)$/.test(tokens[lead - 1]?.lower ?? '')
    ? weekdayWord(tokens[lead - 2]?.lower ?? '')
    : undefined;
  const two = before !== undefined && items.length === 2;
  return two && items.every(({ atom }, at) => atom.day !== undefined && (at === 0 || atom.day === (items[at - 1]?.atom.day ?? 0) + 1));
}

/** "Saturdays in September (5th, 12th, 19th)" */
export const bracketedDays = (tokens: Tokens, index: number, items: readonly Item[]): boolean =>
  items.length > 1 && /^[(:]$/.test(tokens[index - 1]?.text ?? '') && items.every(({ atom }) => atom.ordinal);

/** "end of the month, 27 28 29", "later this month, 27 + 28": numbers in a row that are no hours. */
export const ofThisMonth = (tokens: Tokens, index: number, items: readonly Item[]): boolean =>
  items.length > 1 &&
  /^[,(:]$/.test(tokens[index - 1]?.text ?? '') &&
  /^(?:month|monats?|mois|mes|mese|maand)$/.test(tokens[index - 2]?.lower ?? '') &&
  items.every(({ atom }, at) => (atom.day ?? 0) > LATEST_HOUR && (at === 0 || atom.day === (items[at - 1]?.atom.day ?? 0) + 1));
const LATEST_HOUR = 12;

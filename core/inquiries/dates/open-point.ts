/**
 * "Thursday 8.07", "on 16.04", "12.06 - 14.06": a day and a month with one point between them, which may as well be an hour.
 */
import { isDay, monthAt, units, weekdayAt, type Tokens } from './pieces.ts';

/** What stands before a date and not before an hour. */
const ON = /^(?:on|am|den|vom|dem|dnia|du|el|le|il|dal|al|op|dated|date|dates)$/;
const ARTICLE = /^(?:the|den|dem|der|le|el|il|de|,|\.|:)$/;
const JOIN = /^(?:,|to|till|til|until|through|thru|bis|do|au|al|tot|-|and|&|\+|und|et|y|e|en|i)$/;
/** What makes it an amount or an hour. */
const COUNTED = /^(?:am|pm|a|p|h|hrs?|uhr|uur|clock|[€$£%]|eur|euros?|gbp|usd|chf|pln|zł|kč|gb|ghz|mm?|cm|km|kg|million|mio)$/;
/** A month with its nought is no month of those who write it first. */
const NO_HOUR = 24;

type Pair = { day: number; month: number; next: number };

/** Two numbers that might be a day and a month of two figures. */
function pairAt(tokens: Tokens, index: number): Pair | undefined {
  const [a, point, b, after] = [tokens[index], tokens[index + 1], tokens[index + 2], tokens[index + 3]];
  if (!isDay(a?.num) || a.text.length > 2 || point?.text !== '.' || !point.tight || !b?.tight || b.text.length !== 2) return undefined;
  if (b.num === undefined || b.num < 1 || b.num > 12 || monthAt(tokens, index + 3)) return undefined;
  // "8.07.", "8.07.2027", "8.05pm", "8.05 euros"
  if (after && ((after.tight && /^[\p{L}\d./:]/u.test(after.text)) || (after.breaks === 0 && COUNTED.test(after.lower)))) return undefined;
  return after?.breaks === 0 && units.test(after.lower) ? undefined : { day: a.num, month: b.num, next: index + 3 };
}

/** True where a weekday stands right before. */
function weekdayBefore(tokens: Tokens, index: number): boolean {
  const at = ARTICLE.test(tokens[index - 1]?.lower ?? '') ? index - 1 : index;
  return [at - 1, at - 2].some((one) => weekdayAt(tokens, one)?.next === at);
}

/** The pair that another one is joined to, with no more than a weekday between. */
function partner(tokens: Tokens, index: number, next: number): Pair | undefined {
  const from = JOIN.test(tokens[next]?.lower ?? '') ? (weekdayAt(tokens, next + 1)?.next ?? next + 1) : undefined;
  const closed = from !== undefined && tokens[from + 3]?.text === '.';
  const behind = from === undefined ? undefined : (pairAt(tokens, from) ?? (closed ? closedAt(tokens, from) : undefined));
  // "till 6.06, please": a comma that joins nothing.
  if (behind) return behind;
  const at = weekdayBefore(tokens, index) ? index - 1 : index;
  return JOIN.test(tokens[at - 1]?.lower ?? '') ? pairAt(tokens, at - 4) : undefined;
}

/** "10.07." and "10.07.2027" */
function closedAt(tokens: Tokens, index: number): Pair | undefined {
  const [a, point, b] = [tokens[index], tokens[index + 1], tokens[index + 2]];
  return isDay(a?.num) && point?.text === '.' && b?.num !== undefined && b.num >= 1 && b.num <= 12
    ? { day: a.num, month: b.num, next: index + 4 }
    : undefined;
}

/** Day and month, where what stands beside them makes them a date; with a weekday it is held against the calendar later. */
export function openPointAt(tokens: Tokens, index: number): Pair | undefined {
  const pair = pairAt(tokens, index);
  if (!pair) return undefined;
  if (weekdayBefore(tokens, index)) return pair;
  const dayFirst = pair.day > 12 || pair.month < 10;
  if (dayFirst && ON.test(tokens[index - 1]?.lower ?? '')) return pair;
  const other = partner(tokens, index, pair.next);
  if (!other || (other.month !== pair.month && Math.abs(other.month - pair.month) !== 1)) return undefined;
  // "9.10 to 10.10" are hours as well.
  const sure = [pair, other].some(({ day, month }) => day >= NO_HOUR || month % 5 > 0);
  return sure && dayFirst ? pair : undefined;
}

/**
 * Several days by their places in a month: "the first and third Saturday of November", "the first Saturday and the last Sunday in May",
 * "the second weekend of June and the last"; "the first or the third" is a choice.
 */
import { monthSaidAt, placeAt, type MonthSaid } from './month-said.ts';
import { weekdaysAt, type Atom, type Tokens } from './pieces.ts';
import { weekendWordAt } from './weeks.ts';

/** What is at the place: a weekday, a weekend, or what the next one is. */
type Named = { weekday: number | undefined; next: number };
type Place = { nth: number; of: Named | undefined; next: number };

const MOST = 4;

function namedAfter(tokens: Tokens, index: number): Named | undefined {
  if (tokens[index]?.breaks !== 0) return undefined;
  const weekend = weekendWordAt(tokens, index);
  return weekend === undefined ? weekdaysAt(tokens, index) : { weekday: undefined, next: weekend };
}

function placeWith(tokens: Tokens, index: number): Place | undefined {
  const place = placeAt(tokens, tokens[index]?.lower === 'the' ? index + 1 : index);
  if (!place) return undefined;
  const of = namedAfter(tokens, place.next);
  return { nth: place.nth, of, next: of?.next ?? place.next };
}

/** "and", "and again on", ", plus", "or": where the next place begins. */
function joinAt(tokens: Tokens, index: number): { either: boolean; next: number } | undefined {
  const word = (at: number): string => tokens[at]?.lower ?? '';
  if (tokens[index]?.breaks !== 0) return undefined;
  let at = word(index) === ',' ? index + 1 : index;
  const either = word(at) === 'or';
  if (/^(?:and|&|\+|plus|or|\/)$/.test(word(at))) at++;
  else if (word(at) === 'as' && word(at + 1) === 'well' && word(at + 2) === 'as') at += 3;
  if (at === index) return undefined;
  while (/^(?:again|then|also|on)$/.test(word(at))) at++;
  return { either, next: at };
}

/** Two places and more of the days of one month. */
export function placesAt(tokens: Tokens, index: number): Atom | undefined {
  const first = placeWith(tokens, index);
  if (!first) return undefined;
  const places = [first];
  let either = false;
  let next = first.next;
  let month = first.of && monthSaidAt(tokens, first.next);
  const behind = month !== undefined;
  if (month) next = month.next;
  while (places.length < MOST) {
    const join = joinAt(tokens, next);
    const place = join && placeWith(tokens, join.next);
    if (!join || !place) break;
    // "the first Saturday of October, the 2nd", "and the 4th": behind the month a number is that of a day.
    if (behind && (tokens[next]?.text === ',' || isNumbered(tokens, join.next, place))) break;
    if (behind && !closes(tokens, place)) break;
    places.push(place);
    either ||= join.either;
    next = behind ? endOf(tokens, place) : place.next;
  }
  month ??= monthSaidAt(tokens, next);
  if (places.length < 2 || !month) return undefined;
  return atomOf(index, behind ? next : month.next, places, either, month);
}

/** "the last Saturday in November and the first in December": the same weekday of another month; "the first of December" may be that or its first day. */
export function placeInNext(tokens: Tokens, index: number, last: Atom): Atom | undefined {
  if (last.relative?.kind !== 'nth') return undefined;
  const place = tokens[index]?.lower === 'the' && tokens[index + 1]?.num === undefined ? placeAt(tokens, index + 1) : undefined;
  const month = place && monthSaidAt(tokens, place.next);
  if (!place || !month || month.ahead !== undefined) return undefined;
  const { weekday } = last.relative;
  const sure = tokens[place.next]?.lower === 'in' || place.nth < 0;
  const { month: number, year, next } = month;
  return sure
    ? { first: index, next, weekday, relative: { kind: 'nth', nth: place.nth, weekday, month: number, year } }
    : { first: index, next, relative: { kind: 'unknown' } };
}

const isNumbered = (tokens: Tokens, index: number, { of, next }: Place): boolean =>
  of === undefined && tokens.slice(index, next).some(({ num }) => num !== undefined);

/** "and the third", "and the last one", "and the fourth Saturday of the month": the month is told before it, and nothing else behind it. */
function closes(tokens: Tokens, place: Place): boolean {
  const token = tokens[endOf(tokens, place)];
  return (
    token === undefined ||
    token.breaks > 0 ||
    /^[.;:!?)(]$/.test(token.text) ||
    (token.text === ',' && place.of !== undefined) ||
    /^(?:too|both|please)$/.test(token.lower)
  );
}

function endOf(tokens: Tokens, { of, next }: Place): number {
  const one = of === undefined && tokens[next]?.lower === 'one' ? next + 1 : next;
  const month = monthSaidAt(tokens, one);
  return month?.ahead === 0 ? month.next : one;
}

function atomOf(
  first: number,
  next: number,
  places: readonly Place[],
  either: boolean,
  { month, year, ahead }: MonthSaid,
): Atom | undefined {
  const own = places.findLast(({ of }) => of !== undefined)?.of;
  if (!own) return undefined;
  // "the first and third Saturday": what stands at a place is told once behind them, or before.
  const named = places.map(({ nth, of }, at) => ({
    nth,
    weekday: (of ?? places.slice(at).find((one) => one.of)?.of ?? own).weekday,
  }));
  return { first, next, relative: { kind: 'places', places: named, either, month, year, ...(ahead === undefined ? {} : { ahead }) } };
}

/**
 * Days told by their place in a month: "last Friday in March", "every Tuesday in May", "the first weekend of April".
 */
import { monthWord, numberWord } from '../words.ts';
import { monthSaidAt, placeAt, type MonthSaid } from './month-said.ts';
import { monthAt, weekdayAt, weekdaysAt, yearAt, type Atom, type Tokens } from './pieces.ts';
import { weekendWordAt } from './weeks.ts';

/** "every Tuesday in May", "all four Saturdays of June", "the first three Saturdays in September", "the last two Sundays of May" */
export function everyAt(tokens: Tokens, index: number): Atom | undefined {
  const led = tokens[index]?.lower === 'the' ? 1 : 0;
  const said = howManyAt(tokens, index + led, led === 1);
  if (!said) return undefined;
  const day = weekdaysAt(tokens, said.next);
  if (!day || !/^(?:of|in)$/.test(tokens[day.next]?.lower ?? '')) return undefined;
  const month = monthAt(tokens, day.next + 1);
  if (!month) return undefined;
  const year = yearAt(tokens, month.next);
  const { next: _, ...many } = said;
  return {
    first: index,
    next: year?.next ?? month.next,
    relative: { kind: 'every', weekday: day.weekday, month: month.month, year: year?.year, ...many },
  };
}

type HowMany = { most?: number; fromEnd?: boolean; count?: number; next: number };

/** "first two", "last three", "every single", "all the", "all four of the", or with an article "four" */
function howManyAt(tokens: Tokens, index: number, led: boolean): HowMany | undefined {
  const word = (at: number): string => tokens[at]?.lower ?? '';
  const numberAt = (at: number): number | undefined => {
    const count = tokens[at]?.num ?? (/^an?$/.test(word(at)) ? undefined : numberWord(word(at)));
    return count !== undefined && count >= 2 && count <= MOST_OF_MONTH ? count : undefined;
  };
  if (/^(?:first|last|final)$/.test(word(index))) {
    const most = numberAt(index + 1);
    if (most === undefined) return undefined;
    return { most, ...(word(index) === 'first' ? {} : { fromEnd: true }), next: index + 2 };
  }
  const all = /^(?:every|each|all)$/.test(word(index));
  let at = all ? index + 1 : index;
  if (all && /^(?:the|of|single)$/.test(word(at))) at += word(at) === 'of' && word(at + 1) === 'the' ? 2 : 1;
  const count = all || led ? numberAt(at) : undefined;
  if (count !== undefined) at += word(at + 1) === 'of' && word(at + 2) === 'the' ? 3 : 1;
  if (!all && count === undefined) return undefined;
  return { ...(count === undefined ? {} : { count }), next: at };
}
const MOST_OF_MONTH = 5;

/** "the Sunday of the first weekend in March" */
function ofWeekend(tokens: Tokens, index: number): Atom | undefined {
  const day = weekdayAt(tokens, tokens[index]?.lower === 'the' ? index + 1 : index);
  if (!day || tokens[day.next]?.lower !== 'of' || day.weekday < SATURDAY) return undefined;
  const weekend = monthPhrase(tokens, day.next + 1);
  return weekend?.relative?.kind === 'nthWeekend'
    ? { first: index, next: weekend.next, weekday: day.weekday, relative: { ...weekend.relative, on: day.weekday } }
    : undefined;
}
const SATURDAY = 6;

/** "first Saturday of March", "le dernier week-end d'août", "last Friday of next month", "last day of February" */
export function monthPhrase(tokens: Tokens, index: number): Atom | undefined {
  const word = (at: number): string => tokens[at]?.lower ?? '';
  const one = ofWeekend(tokens, index);
  if (one) return one;
  const place = placeAt(tokens, word(index) === 'the' ? index + 1 : index);
  if (!place || tokens[place.next]?.breaks !== 0) return undefined;
  const { nth } = place;
  const ends = weekendWordAt(tokens, place.next);
  const weekend = ends === undefined ? undefined : monthSaidAt(tokens, ends);
  if (weekend) return { first: index, next: weekend.next, relative: { kind: 'nthWeekend', nth, ...saidOf(weekend) } };
  const compound = inOneWord(tokens, place.next);
  if (compound)
    return { first: index, next: compound.next, relative: { kind: 'nthWeekend', nth, month: compound.month, year: compound.year } };
  const edge = nth === 1 || nth === -1 ? edgeOf(tokens, index, place.next, nth) : undefined;
  if (edge) return edge;
  const weekday = weekdayAt(tokens, place.next);
  if (!weekday && !(nth === -1 && word(place.next) === 'day')) return undefined;
  const next = weekday?.next ?? place.next + 1;
  // "the last Tuesday and Wednesday of October"
  const second = weekday && /^(?:and|&|\+|,)$/.test(word(next)) ? weekdayAt(tokens, next + 1) : undefined;
  const third = second && /^(?:and|&|\+)$/.test(word(second.next)) ? weekdayAt(tokens, second.next + 1) : undefined;
  const last = third ?? second;
  const of = last && monthSaidAt(tokens, last.next);
  if (weekday && second && of) {
    const weekdays = [weekday, second, ...(third ? [third] : [])].map((one) => one.weekday);
    return { first: index, next: of.next, relative: { kind: 'nthDays', nth, weekdays, ...saidOf(of) } };
  }
  const month = monthSaidAt(tokens, next);
  if (!month) return undefined;
  if (weekday)
    return {
      first: index,
      next: month.next,
      weekday: weekday.weekday,
      relative: { kind: 'nth', nth, weekday: weekday.weekday, ...saidOf(month) },
    };
  return month.ahead === undefined
    ? { first: index, next: month.next, relative: { kind: 'monthEnd', month: month.month, year: month.year } }
    : { first: index, next: month.next, relative: { kind: 'monthEnd', ahead: month.ahead } };
}

/** "the last two days of February", "the first three days of next month" */
function edgeOf(tokens: Tokens, first: number, index: number, nth: 1 | -1): Atom | undefined {
  const count = tokens[index]?.num ?? numberWord(tokens[index]?.lower ?? '');
  if (count === undefined || count < 2 || count > MOST_EDGE || tokens[index + 1]?.lower !== 'days') return undefined;
  const month = monthSaidAt(tokens, index + 2);
  return month && { first, next: month.next, relative: { kind: 'edgeDays', nth, count, ...saidOf(month) } };
}
const MOST_EDGE = 5;

const saidOf = ({ month, year, ahead }: MonthSaid): Omit<MonthSaid, 'next'> => ({ month, year, ...(ahead === undefined ? {} : { ahead }) });

/** "am ersten Juni-Wochenende", "am letzten Augustwochenende" */
function inOneWord(tokens: Tokens, index: number): MonthSaid | undefined {
  const hyphen = tokens[index + 1]?.text === '-' && tokens[index + 2]?.lower === 'wochenende';
  const name = hyphen ? tokens[index]?.lower : /^(\p{L}{3,9})wochenende$/u.exec(tokens[index]?.lower ?? '')?.[1];
  const month = name === undefined ? undefined : monthWord(name);
  const next = hyphen ? index + 3 : index + 1;
  const year = yearAt(tokens, next);
  return month === undefined ? undefined : { month, year: year?.year, next: year?.next ?? next };
}

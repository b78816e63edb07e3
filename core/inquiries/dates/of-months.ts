/**
 * Days told by their place in a month: "last Friday in March", "every Tuesday in May", "the first weekend of April", "by the end of May".
 */
import { numberWord, ordinalWord } from '../words.ts';
import { dayAt, monthAt, weekdayAt, yearAt, type Atom, type Tokens } from './pieces.ts';

/** "by the end of May", "before the end of this month": with a word for a closing date it is the last day; "at the end of May" is no day. */
export function endOfMonth(tokens: Tokens, index: number): Atom | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  if (!/^(?:by|before|until|till|than)$/.test(word(-1))) return undefined;
  const at = word(0) === 'the' ? 1 : 0;
  if (word(at) === 'month' && word(at + 1) === 'end')
    return { first: index, next: index + at + 2, relative: { kind: 'monthEnd', ahead: 0 } };
  if (word(at) !== 'end' || word(at + 1) !== 'of') return undefined;
  const which = word(at + 2);
  if (/^(?:the|this|next)$/.test(which) && word(at + 3) === 'month')
    return { first: index, next: index + at + 4, relative: { kind: 'monthEnd', ahead: which === 'next' ? 1 : 0 } };
  const month = monthAt(tokens, index + at + 2);
  if (!month) return undefined;
  const year = yearAt(tokens, month.next);
  return { first: index, next: year?.next ?? month.next, relative: { kind: 'monthEnd', month: month.month, year: year?.year } };
}

/** "every Tuesday in May", "all Saturdays of June", "the first three Saturdays in September" */
export function everyAt(tokens: Tokens, index: number): Atom | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  let at = word(0) === 'the' ? 1 : 0;
  let most: number | undefined;
  if (word(at) === 'first') {
    most = tokens[index + at + 1]?.num ?? numberWord(word(at + 1));
    if (most === undefined || most < 2 || most > 4) return undefined;
    at += 2;
  } else if (/^(?:every|each|all)$/.test(word(at))) at += word(at + 1) === 'the' || word(at + 1) === 'single' ? 2 : 1;
  else return undefined;
  const day = weekdayAt(tokens, index + at);
  if (!day || !/^(?:of|in)$/.test(tokens[day.next]?.lower ?? '')) return undefined;
  const month = monthAt(tokens, day.next + 1);
  if (!month) return undefined;
  const year = yearAt(tokens, month.next);
  return {
    first: index,
    next: year?.next ?? month.next,
    relative: { kind: 'every', weekday: day.weekday, month: month.month, year: year?.year, ...(most === undefined ? {} : { most }) },
  };
}

/** "first Saturday of March", "last Friday in May 2027", "last day of February" */
export function monthPhrase(tokens: Tokens, index: number): Atom | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  let at = word(0) === 'the' ? 1 : 0;
  let nth = word(at) === 'last' ? -1 : ordinalWord(word(at));
  if (nth === undefined) {
    const day = dayAt(tokens, index + at);
    if (!day?.ordinal || day.day > 5) return undefined;
    nth = day.day;
    at = day.next - index;
  } else at++;
  if (nth > 5) return undefined;
  const weekend = /^weekend$/.test(word(at)) && /^(?:of|in)$/.test(word(at + 1)) ? monthAt(tokens, index + at + 2) : undefined;
  if (weekend) {
    const year = yearAt(tokens, weekend.next);
    return {
      first: index,
      next: year?.next ?? weekend.next,
      relative: { kind: 'nthWeekend', nth, month: weekend.month, year: year?.year },
    };
  }
  const weekday = weekdayAt(tokens, index + at);
  const lastDay = nth === -1 && word(at) === 'day';
  if (!weekday && !lastDay) return undefined;
  const next = weekday ? weekday.next - index : at + 1;
  // "the last Tuesday and Wednesday of October"
  const second = weekday && /^(?:and|&|\+|,)$/.test(word(next)) ? weekdayAt(tokens, index + next + 1) : undefined;
  const third = second && /^(?:and|&|\+)$/.test(tokens[second.next]?.lower ?? '') ? weekdayAt(tokens, second.next + 1) : undefined;
  const last = third ?? second;
  if (weekday && second && last && /^(?:of|in)$/.test(tokens[last.next]?.lower ?? '')) {
    const month = monthAt(tokens, last.next + 1);
    const year = month && yearAt(tokens, month.next);
    const weekdays = [weekday, second, ...(third ? [third] : [])].map((one) => one.weekday);
    if (month)
      return {
        first: index,
        next: year?.next ?? month.next,
        relative: { kind: 'nthDays', nth, weekdays, month: month.month, year: year?.year },
      };
  }
  if (word(next) !== 'of' && word(next) !== 'in') return undefined;
  const month = monthAt(tokens, index + next + 1);
  if (!month) return undefined;
  const year = yearAt(tokens, month.next);
  if (weekday)
    return {
      first: index,
      next: year?.next ?? month.next,
      weekday: weekday.weekday,
      relative: { kind: 'nth', nth, weekday: weekday.weekday, month: month.month, year: year?.year },
    };
  return { first: index, next: year?.next ?? month.next, relative: { kind: 'monthEnd', month: month.month, year: year?.year } };
}

/**
 * Dates told from today or by a name: "tomorrow", "in two weeks", "next Friday", "Saturday week", "last Friday in March", "New Year's Eve".
 */
import { numberWord, ordinalWord } from '../words.ts';
import { besideAt, feastAt } from './feasts.ts';
import { namedDayAt } from './named-days.ts';
import { dayAt, monthAt, weekdayAt, yearAt, type Atom, type Relative, type Tokens } from './pieces.ts';
import { namedAt, numericAt } from './written.ts';

const which = new Map<string, 'this' | 'next' | 'last' | 'coming'>([
  ['this', 'this'],
  ['next', 'next'],
  ['last', 'last'],
  ['coming', 'coming'],
  ['following', 'next'],
  ['upcoming', 'coming'],
  ['past', 'last'],
]);

/** Today and tomorrow in other languages; with a capital or after these words they are mornings. */
const tomorrowElsewhere = new Map([
  ['heute', 0],
  ['morgen', 1],
  ['übermorgen', 2],
  ["aujourd'hui", 0],
  ['demain', 1],
  ['hoy', 0],
  ['mañana', 1],
  ['oggi', 0],
  ['domani', 1],
  ['vandaag', 0],
]);

/** "tomorrow", "in two weeks", "next Friday", "Friday week", "this weekend", "last Friday in March", "end of March" */
export function relativeAt(tokens: Tokens, index: number): Atom | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  const atom = (length: number, relative: Relative, weekday?: number): Atom => ({
    first: index,
    next: index + length,
    relative,
    ...(weekday === undefined ? {} : { weekday }),
  });
  if (word(0) === 'today' || word(0) === 'tonight' || word(0) === 'tonite') return atom(1, { kind: 'days', days: 0 });
  if (word(0) === 'this' && /^(?:evening|afternoon|morning)$/.test(word(1))) return atom(2, { kind: 'days', days: 0 });
  // "2moro", "2nite": a figure and letters are two tokens.
  if (
    word(0) === '2' &&
    tokens[index + 1]?.tight &&
    word(2) !== 'week' &&
    /^(?:mor+ow|moro|morro|mora|mrw|mro|moz|nite|night|day)$/.test(word(1))
  )
    return atom(2, { kind: 'days', days: word(1).startsWith('m') ? 1 : 0 });
  if (/^(?:tomorrow|tmrw|tmr|tmw|tmrow|tmorrow|tomo|tomorow|tommorow|tommorrow|tmoz|tomoz|tomorrow's)$/.test(word(0))) {
    if (word(1) === 'week') return undefined;
    // "tomorrow's tomorrow"
    if (word(0).endsWith("'s") && word(1).startsWith('tom')) return atom(2, { kind: 'days', days: 2 });
    return atom(1, { kind: 'days', days: 1 });
  }
  if (word(0) === 'the' && word(1) === 'day' && word(2) === 'after' && word(3) === 'tomorrow') return atom(4, { kind: 'days', days: 2 });
  if (word(0) === 'day' && word(1) === 'after' && word(2) === 'tomorrow') return atom(3, { kind: 'days', days: 2 });
  const abroad =
    tokens[index]?.text === word(0) && (word(-2) === 'antes' || !/^(?:guten|la|por|de|goede|am)$/.test(word(-1)))
      ? tomorrowElsewhere.get(word(0))
      : undefined;
  if (abroad !== undefined) return atom(1, { kind: 'days', days: abroad });
  if (word(0) === 'yesterday') return atom(1, { kind: 'days', days: -1 });
  return (
    endOfMonth(tokens, index) ??
    feastAt(tokens, index) ??
    besideAt(tokens, index) ??
    namedDayAt(tokens, index) ??
    inLength(tokens, index) ??
    everyAt(tokens, index) ??
    monthPhrase(tokens, index) ??
    weekdayPhrase(tokens, index)
  );
}

/** "by the end of May", "before the end of this month": with a word for a closing date it is the last day; "at the end of May" is no day. */
function endOfMonth(tokens: Tokens, index: number): Atom | undefined {
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

function inLength(tokens: Tokens, index: number): Atom | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  let at = 0;
  const leads = word(0) === 'in';
  if (leads) at++;
  if (/^(?:exactly|just|about)$/.test(word(at))) at++;
  let count = tokens[index + at]?.num ?? numberWord(word(at));
  if (count === undefined) return undefined;
  at++;
  if (word(at - 1) === 'a' && word(at) === 'couple') {
    count = 2;
    at++;
    if (word(at) === 'of') at++;
  }
  const unit = word(at).replace(/'$/, '');
  const size = /^days?$/.test(unit) ? 1 : /^weeks?$/.test(unit) ? 7 : unit === 'fortnight' ? 14 : undefined;
  at++;
  if (size === undefined || count < 1 || count > 400) return undefined;
  const tail = word(at) === "'" ? 1 : 0;
  if (word(at + tail) === 'time' && leads)
    return { first: index, next: index + at + tail + 1, relative: { kind: 'days', days: count * size } };
  if (size >= 7 && /^(?:today|tomorrow)$/.test(word(at)))
    return { first: index, next: index + at + 1, relative: { kind: 'days', days: count * size + (word(at) === 'tomorrow' ? 1 : 0) } };
  if (word(at) === 'from' && (word(at + 1) === 'today' || word(at + 1) === 'now'))
    return { first: index, next: index + at + 2, relative: { kind: 'days', days: count * size } };
  if (word(at) === 'from' && word(at + 1) === 'tomorrow')
    return { first: index, next: index + at + 2, relative: { kind: 'days', days: count * size + 1 } };
  if ((word(at) === 'from' || word(at) === 'on') && size >= 7) {
    const skip = which.has(word(at + 1)) ? 1 : 0;
    const weekday = weekdayAt(tokens, index + at + 1 + skip);
    if (weekday && skip === 0)
      return {
        first: index,
        next: weekday.next,
        weekday: weekday.weekday,
        relative: { kind: 'weekday', weekday: weekday.weekday, which: 'plain', weeks: (count * size) / 7 },
      };
  }
  // "filmed all in one day" tells how long it takes.
  if (leads && count * size > 1 && word(-1) !== 'all' && !/^(?:a|of|straight|running|total|between)$/.test(word(at)))
    return { first: index, next: index + at, relative: { kind: 'days', days: count * size } };
  return undefined;
}

function weekdayPhrase(tokens: Tokens, index: number): Atom | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  let at = 0;
  if (word(0) === 'the' && which.has(word(1))) at++;
  let said = which.get(word(at));
  if (said) {
    at++;
    if (said === 'this' && (word(at) === 'coming' || word(at) === 'upcoming' || word(at) === 'past'))
      said = word(at++) === 'past' ? 'last' : 'coming';
    if (word(at) === 'weekend' || word(at) === "weekend's") {
      const which = said === 'coming' ? 'this' : said;
      return { first: index, next: index + at + 1, relative: { kind: 'weekend', which, weeks: 0 } };
    }
    if (word(at) === 'week') {
      const weeks = said === 'next' ? 1 : said === 'last' ? -1 : 0;
      const skip = /^(?:on|,)$/.test(word(at + 1)) ? 1 : 0;
      const weekday = weekdayAt(tokens, index + at + 1 + skip);
      if (weekday && tokens[weekday.next - 1]?.breaks === 0)
        return {
          first: index,
          next: weekday.next,
          weekday: weekday.weekday,
          relative: { kind: 'weekday', weekday: weekday.weekday, which: 'this', weeks: weeks },
        };
      return { first: index, next: index + at + 1, relative: { kind: 'week', weeks } };
    }
    const weekday = weekdayAt(tokens, index + at);
    if (weekday) {
      if (namedAt(tokens, weekday.next) || numericAt(tokens, weekday.next)) return undefined;
      return {
        first: index,
        next: weekday.next,
        weekday: weekday.weekday,
        relative: { kind: 'weekday', weekday: weekday.weekday, which: said, weeks: 0 },
      };
    }
    return undefined;
  }
  const weekday = weekdayAt(tokens, index);
  if (!weekday) return undefined;
  const next = weekday.next - index;
  if (word(next) === 'week' && (tokens[index + next]?.breaks ?? 0) === 0)
    return {
      first: index,
      next: index + next + 1,
      weekday: weekday.weekday,
      relative: { kind: 'weekday', weekday: weekday.weekday, which: 'plain', weeks: 1 },
    };
  if (word(next) === 'fortnight')
    return {
      first: index,
      next: index + next + 1,
      weekday: weekday.weekday,
      relative: { kind: 'weekday', weekday: weekday.weekday, which: 'plain', weeks: 2 },
    };
  const of = word(next) === 'of' ? 1 : 0;
  if (which.has(word(next + of)) && word(next + of + 1) === 'week') {
    const weeks = word(next + of) === 'next' ? 1 : word(next + of) === 'last' ? -1 : 0;
    return {
      first: index,
      next: index + next + of + 2,
      weekday: weekday.weekday,
      relative: { kind: 'weekday', weekday: weekday.weekday, which: 'this', weeks },
    };
  }
  if (word(next) === 'after' && word(next + 1) === 'next')
    return {
      first: index,
      next: index + next + 2,
      weekday: weekday.weekday,
      relative: { kind: 'weekday', weekday: weekday.weekday, which: 'next', weeks: 1 },
    };
  return undefined;
}

/** "every Tuesday in May", "all Saturdays of June", "the first three Saturdays in September" */
function everyAt(tokens: Tokens, index: number): Atom | undefined {
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
function monthPhrase(tokens: Tokens, index: number): Atom | undefined {
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

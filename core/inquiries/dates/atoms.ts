/**
 * One date as it is written: "Sat 12 December 2026", "Dec 12th", "12/12/2026", "the 12th", "next Friday", "tomorrow".
 * What is not said stays open; the resolver settles it.
 */
import type { Token } from '../parts/tokens.ts';
import { doubtfulMonths, doubtfulWeekdays, monthWord, numberWord, ordinalWord, weekdayWord } from '../words.ts';

export type Relative =
  | { kind: 'days'; days: number }
  | { kind: 'months'; months: number }
  | { kind: 'weekday'; weekday: number; which: 'this' | 'next' | 'last' | 'plain' | 'coming'; weeks: number }
  | { kind: 'weekend'; which: 'this' | 'next' | 'last' | 'plain'; weeks: number }
  | { kind: 'week'; weeks: number }
  | { kind: 'nth'; nth: number; weekday: number; month: number; year: number | undefined }
  | { kind: 'monthEnd'; month: number; year: number | undefined };

export type Atom = {
  first: number;
  /** Index after the last token. */
  next: number;
  weekday?: number;
  day?: number;
  month?: number;
  year?: number;
  /** Written with two readings of day and month: 3/4. */
  slashed?: boolean;
  /** "3.4." and "3.4.2027" are always day first. */
  dotted?: boolean;
  iso?: boolean;
  /** A number without month or ordinal: a day only beside another date. */
  bare?: boolean;
  /** "the 12th" */
  ordinal?: boolean;
  /** Index after a weekday that stands before its date, and whether a comma parts them: "Sunday, 12 December". */
  afterWeekday?: number;
  comma?: boolean;
  /** The month stands before the day: "December 12". */
  monthFirst?: boolean;
  relative?: Relative;
};

type Tokens = readonly Token[];

const isDay = (value: number | undefined): value is number => value !== undefined && value >= 1 && value <= 31;
const isYear = (value: number | undefined): value is number => value !== undefined && value >= 2000 && value <= 2099;
const suffixes = new Set(['st', 'nd', 'rd', 'th']);
/** What makes a number beside it no day. */
const units =
  /^(?:am|pm|a|p|h|hr|hrs|hours?|mins?|minutes?|sec|secs|seconds?|k|km|kg|mi|miles?|m|mm|people|persons?|pax|guests?|attendees|delegates|speakers?|cams?|cameras?|ops?|operators?|days?|weeks?|weeknights?|months?|years?|nights?|sessions?|talks?|rooms?|floors?|percent|usd|cad|eur|gbp|aud|nzd|chf|o'clock|oclock|uhr|x|of us|teams?|tables?|staff|clips?|videos?|bands?|acts?|crew|kids|students|children|seats|minute)$/;

function isTime(tokens: Tokens, index: number): boolean {
  const after = tokens[index + 1];
  if (!after) return false;
  if (after.text === ':' && after.tight && tokens[index + 2]?.num !== undefined) return true;
  if (after.text === '%' || (after.text === ',' && after.tight && tokens[index + 2]?.tight && tokens[index + 2]?.num !== undefined))
    return true;
  if (after.text === '.' && after.tight && tokens[index + 2]?.tight && tokens[index + 2]?.num !== undefined) return true;
  return units.test(after.lower) && after.breaks === 0 && !(after.lower === 'a' && !after.tight) && !(after.lower === 'p' && !after.tight);
}

/** "5 to 9 pm", "8-10.30pm" */
function beginsHours(tokens: Tokens, index: number): boolean {
  if (!/^(?:to|-|until|till|til)$/.test(tokens[index + 1]?.lower ?? '') || tokens[index + 2]?.num === undefined) return false;
  const minutes = /^[:.]$/.test(tokens[index + 3]?.text ?? '') && tokens[index + 4]?.num !== undefined ? 2 : 0;
  const half = tokens[index + 3 + minutes];
  return (
    half !== undefined &&
    half.breaks === 0 &&
    (/^(?:am|pm|hrs)$/.test(half.lower) ||
      (/^[ap]$/.test(half.lower) && half.tight) ||
      (/^[ap]$/.test(half.lower) && tokens[index + 5 + minutes]?.lower === 'm'))
  );
}

/** A day of the month with its ordinal ending, not a time or a count. */
function dayAt(tokens: Tokens, index: number): { day: number; next: number; ordinal: boolean } | undefined {
  const token = tokens[index];
  if (!token) return undefined;
  const before = tokens[index - 1];
  if (token.num !== undefined) {
    if (!isDay(token.num) || token.text.length > 2) return undefined;
    if (
      before &&
      (/^[$£€¥₹#@]$/.test(before.text) ||
        (token.tight && /^[\p{L}:,]$/u.test(before.text) && before.num === undefined && !/^[,(]$/.test(before.text)))
    )
      return undefined;
    const ending = tokens[index + 1];
    if (ending?.tight && suffixes.has(ending.lower)) {
      if (units.test(tokens[index + 2]?.lower ?? '') && tokens[index + 2]?.breaks === 0) return undefined;
      return { day: token.num, next: index + 2, ordinal: true };
    }
    if (isTime(tokens, index) || beginsHours(tokens, index)) return undefined;
    if (ending?.text === '.' && ending.tight && /^(?:-|\/|bis|und|u|et|y|e)$/.test(tokens[index + 2]?.lower ?? ''))
      return { day: token.num, next: index + 2, ordinal: false };
    if (ending?.tight && /^\p{L}/u.test(ending.text) && monthWord(ending.lower) === undefined) return undefined;
    return { day: token.num, next: index + 1, ordinal: false };
  }
  const two = tokens[index + 1]?.text === '-' ? ordinalWord(`${token.lower}-${tokens[index + 2]?.lower}`) : undefined;
  if (two !== undefined) return { day: two, next: index + 3, ordinal: true };
  const spaced =
    token.lower === 'twenty' || token.lower === 'thirty' ? ordinalWord(`${token.lower}-${tokens[index + 1]?.lower}`) : undefined;
  if (spaced !== undefined) return { day: spaced, next: index + 2, ordinal: true };
  const word = ordinalWord(token.lower);
  return word === undefined ? undefined : { day: word, next: index + 1, ordinal: true };
}

function yearAt(tokens: Tokens, index: number): { year: number; next: number } | undefined {
  let at = index;
  if (tokens[at]?.text === ',') at++;
  const token = tokens[at];
  if (isYear(token?.num) && token?.text.length === 4 && !isTime(tokens, at)) return { year: token.num, next: at + 1 };
  const short = tokens[at + 1];
  if (token?.text === "'" && short?.tight && short.text.length === 2 && short.num !== undefined && at === index)
    return { year: 2000 + short.num, next: at + 2 };
  return undefined;
}

function monthAt(tokens: Tokens, index: number): { month: number; next: number } | undefined {
  const token = tokens[index];
  const month = token && monthWord(token.lower);
  if (!token || month === undefined) return undefined;
  const dot = tokens[index + 1]?.text === '.' && tokens[index + 1]?.tight && token.lower.length <= 4 && token.lower !== 'may';
  return { month, next: dot ? index + 2 : index + 1 };
}

/** Words that end a place where a two-letter or lower-case month or weekday could be meant as another word. */
function plainly(token: Token): boolean {
  return /^\p{Lu}/u.test(token.text);
}

function weekdayAt(tokens: Tokens, index: number): { weekday: number; next: number } | undefined {
  const token = tokens[index];
  const weekday = token && weekdayWord(token.lower);
  if (!token || weekday === undefined) return undefined;
  if (doubtfulWeekdays.has(token.lower) && !plainly(token)) {
    const beside = tokens[index + 1];
    const before = tokens[index - 1]?.lower ?? '';
    const dated =
      beside &&
      (beside.num !== undefined || monthWord(beside.lower) !== undefined || beside.lower === 'the' || /^[-/&]$/.test(beside.text));
    if (!dated && !/^(?:on|this|next|by|until|from|to|-|and|or|&|\+|coming|till|thru|through|call|,|\/|every|last|am|pm|\d+)$/.test(before))
      return undefined;
  }
  const dot =
    tokens[index + 1]?.text === '.' &&
    tokens[index + 1]?.tight &&
    token.lower.length <= 5 &&
    !token.lower.endsWith('day') &&
    (tokens[index + 2]?.breaks ?? 1) === 0;
  return { weekday, next: dot ? index + 2 : index + 1 };
}

/** "12 December 2026", "12th of Dec", "December 12th, 2026", "Dec. 12" */
function namedAt(tokens: Tokens, index: number): Atom | undefined {
  const day = dayAt(tokens, index);
  if (day) {
    let at = day.next;
    if (/^(?:of|in|de|di)$/.test(tokens[at]?.lower ?? '')) at++;
    else if (tokens[at]?.text === '.' || ((tokens[at]?.text === '-' || tokens[at]?.text === '/') && tokens[at]?.tight)) at++;
    const month = monthAt(tokens, at);
    if (month && (tokens[at]?.breaks ?? 0) === 0) {
      let after = month.next;
      if (
        ((tokens[after]?.text === '-' && tokens[after]?.tight) || /^(?:de|del)$/.test(tokens[after]?.lower ?? '')) &&
        isYear(tokens[after + 1]?.num)
      )
        after++;
      const year = yearAt(tokens, after) ?? shortYearAt(tokens, after);
      return { first: index, next: year?.next ?? month.next, day: day.day, month: month.month, ...(year ? { year: year.year } : {}) };
    }
  }
  const month = monthAt(tokens, index);
  const name = tokens[index];
  if (month && name) {
    let at = month.next;
    if (tokens[at]?.lower === 'the') at++;
    else if (tokens[at]?.text === '-' && tokens[at]?.tight && tokens[at + 1]?.tight && tokens[at + 1]?.num !== undefined) at++;
    const after = dayAt(tokens, at);
    if (!after || (tokens[at]?.breaks ?? 0) > 0) return undefined;
    if (doubtfulMonths.has(name.lower) && !plainly(name) && !after.ordinal && name.lower === 'may') return undefined;
    if (isTime(tokens, at) && !after.ordinal) return undefined;
    const year = yearAt(tokens, after.next);
    return {
      first: index,
      next: year?.next ?? after.next,
      day: after.day,
      month: month.month,
      monthFirst: true,
      ...(year ? { year: year.year } : {}),
    };
  }
  return undefined;
}

/** "12-Dec-26" */
function shortYearAt(tokens: Tokens, index: number): { year: number; next: number } | undefined {
  const token = tokens[index + 1];
  if (
    (tokens[index]?.text === '-' || tokens[index]?.text === '/') &&
    tokens[index]?.tight &&
    token?.tight &&
    token.text.length === 2 &&
    token.num !== undefined &&
    token.num >= 24 &&
    token.num <= 50
  )
    return { year: 2000 + token.num, next: index + 2 };
  return undefined;
}

/** "2026-12-12", "12/12/2026", "12.12.", "12-12-2026", "3/4" */
function numericAt(tokens: Tokens, index: number): Atom | undefined {
  const [a, s1, b, s2, c] = [tokens[index], tokens[index + 1], tokens[index + 2], tokens[index + 3], tokens[index + 4]];
  if (a?.num === undefined || b?.num === undefined || !s1?.tight || !b.tight || !/^[/.-]$/.test(s1.text)) return undefined;
  const before = tokens[index - 1];
  if (
    a.tight &&
    before &&
    /^[\p{L}$£€/:.,#@\d-]$/u.test(before.text.slice(-1)) &&
    !(before.text === '-' && s1.text !== '-' && /^[.\d]/.test(tokens[index - 2]?.text ?? ''))
  )
    return undefined;
  const mark = s1.text;
  const third = s2?.tight && s2.text === mark && c?.tight && c.num !== undefined ? c : undefined;
  const trailing = (next: number): boolean => {
    const after = tokens[next];
    return after !== undefined && after.tight && (/^\p{L}/u.test(after.text) || /^[%/:]$/.test(after.text));
  };
  if (third) {
    if (trailing(index + 5)) {
      const stamp = tokens[index + 5]?.lower;
      if (!(a.text.length === 4 && stamp === 't')) return undefined;
    }
    if (a.text.length === 4 && isYear(a.num) && b.num >= 1 && b.num <= 12 && isDay(third.num))
      return { first: index, next: index + 5, year: a.num, month: b.num, day: third.num as number, iso: true };
    const yearNumber = third.text.length === 4 ? third.num : third.text.length === 2 ? 2000 + (third.num as number) : undefined;
    if (!isYear(yearNumber) || a.text.length > 2 || b.text.length > 2) return undefined;
    return pair(index, index + 5, a.num, b.num, mark, yearNumber);
  }
  if (mark === '-' || a.text.length > 2 || b.text.length > 2) return undefined;
  if (mark === '.') {
    // "12.12." needs its closing point, else it is as well a time or a price.
    const point = tokens[index + 3];
    if (!(point?.tight && point.text === '.') || (tokens[index + 4]?.tight && tokens[index + 4]?.num !== undefined)) return undefined;
    return pair(index, index + 4, a.num, b.num, mark, undefined);
  }
  if (trailing(index + 3) || units.test(tokens[index + 3]?.lower ?? '')) return undefined;
  return pair(index, index + 3, a.num, b.num, mark, undefined);
}

function pair(first: number, next: number, a: number, b: number, mark: string, year: number | undefined): Atom | undefined {
  const yearPart = year === undefined ? {} : { year };
  const dayFirst = isDay(a) && b >= 1 && b <= 12;
  const monthFirst = isDay(b) && a >= 1 && a <= 12;
  if (mark === '.') return dayFirst ? { first, next, day: a, month: b, dotted: true, ...yearPart } : undefined;
  if (dayFirst && monthFirst && a !== b) return { first, next, day: a, month: b, slashed: true, ...yearPart };
  if (dayFirst) return { first, next, day: a, month: b, ...yearPart };
  return monthFirst ? { first, next, day: b, month: a, ...yearPart } : undefined;
}

const which = new Map<string, 'this' | 'next' | 'last' | 'coming'>([
  ['this', 'this'],
  ['next', 'next'],
  ['last', 'last'],
  ['coming', 'coming'],
  ['following', 'next'],
  ['upcoming', 'coming'],
  ['past', 'last'],
]);

/** "tomorrow", "in two weeks", "next Friday", "Friday week", "this weekend", "last Friday in March", "end of March" */
function relativeAt(tokens: Tokens, index: number): Atom | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  const atom = (length: number, relative: Relative, weekday?: number): Atom => ({
    first: index,
    next: index + length,
    relative,
    ...(weekday === undefined ? {} : { weekday }),
  });
  if (word(0) === 'today' || word(0) === 'tonight' || word(0) === 'tonite') return atom(1, { kind: 'days', days: 0 });
  if (word(0) === 'this' && /^(?:evening|afternoon|morning)$/.test(word(1))) return atom(2, { kind: 'days', days: 0 });
  if (/^(?:tomorrow|tmrw|tmr|tomorow|tommorow|tommorrow|tomorrow's)$/.test(word(0))) {
    if (word(1) === 'week') return undefined;
    return atom(1, { kind: 'days', days: 1 });
  }
  if (word(0) === 'the' && word(1) === 'day' && word(2) === 'after' && word(3) === 'tomorrow') return atom(4, { kind: 'days', days: 2 });
  if (word(0) === 'day' && word(1) === 'after' && word(2) === 'tomorrow') return atom(3, { kind: 'days', days: 2 });
  if (word(0) === 'yesterday') return atom(1, { kind: 'days', days: -1 });
  return namedDayAt(tokens, index) ?? inLength(tokens, index) ?? monthPhrase(tokens, index) ?? weekdayPhrase(tokens, index);
}

/** Days of the calendar that bear a name: with them a month and a day are said. */
const namedDays: readonly (readonly [string, number, number])[] = [
  ["new year's eve", 12, 31],
  ['new years eve', 12, 31],
  ["new year's day", 1, 1],
  ['new years day', 1, 1],
  ['christmas eve', 12, 24],
  ['christmas day', 12, 25],
  ['boxing day', 12, 26],
  ["valentine's day", 2, 14],
  ['valentines day', 2, 14],
  ["st . patrick's day", 3, 17],
  ["st patrick's day", 3, 17],
  ['halloween', 10, 31],
];
const LONGEST_DAY_NAME = 4;

/** "on New Year's Eve"; not "our Halloween party". */
function namedDayAt(tokens: Tokens, index: number): Atom | undefined {
  if (!/^(?:on|for|is|by|until|till|this|,|:|be|date)$/.test(tokens[index - 1]?.lower ?? '')) return undefined;
  for (let length = LONGEST_DAY_NAME; length >= 1; length--) {
    const words = tokens
      .slice(index, index + length)
      .map((token) => token.lower)
      .join(' ');
    const found = namedDays.find(([name]) => name === words);
    const after = tokens[index + length];
    if (
      found &&
      (after === undefined ||
        after.breaks > 0 ||
        !/^\p{L}/u.test(after.text) ||
        /^(?:in|at|from|for|and|to|with|near|we|this)$/.test(after.lower))
    )
      return { first: index, next: index + length, month: found[1], day: found[2], monthFirst: true };
  }
  return undefined;
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
  if (leads && !/^(?:a|of|straight|running|total|between)$/.test(word(at)))
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
  const weekday = weekdayAt(tokens, index + at);
  const lastDay = nth === -1 && word(at) === 'day';
  if (!weekday && !lastDay) return undefined;
  const next = weekday ? weekday.next - index : at + 1;
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

/** "29th 5pm" */
function hourFollows(tokens: Tokens, index: number): boolean {
  const [hour, half] = [tokens[index], tokens[index + 1]];
  return (
    hour?.num !== undefined && hour.breaks === 0 && (half?.text === ':' || (half !== undefined && /^(?:am|pm|a|p|h|hrs)$/.test(half.lower)))
  );
}

/** The date written at a token, if there is one. */
export function atomAt(tokens: Tokens, index: number): Atom | undefined {
  const relative = relativeAt(tokens, index);
  if (relative) return relative;
  const weekday = weekdayAt(tokens, index);
  let at = weekday?.next ?? index;
  if (weekday) {
    if (/^[,.]$/.test(tokens[at]?.text ?? '') || tokens[at]?.text === '(') at++;
    if (tokens[at]?.lower === 'the') at++;
  } else if (tokens[at]?.lower === 'the') at++;
  const sameLine = weekday === undefined || (tokens[at]?.breaks ?? 1) === 0;
  const dated = sameLine ? (numericAt(tokens, at) ?? namedAt(tokens, at)) : undefined;
  const after = dated && !weekday ? trailingWeekday(tokens, dated.next) : undefined;
  const weekdayPart = weekday ? { weekday: weekday.weekday } : after ? { weekday: after.weekday } : {};
  const comma = weekday ? { afterWeekday: weekday.next, comma: tokens[weekday.next]?.text === ',' } : {};
  if (dated) return { ...dated, ...weekdayPart, ...comma, first: index, next: after?.next ?? dated.next };
  const day = sameLine ? dayAt(tokens, at) : undefined;
  if (weekday) {
    const close = day && at <= weekday.next + 1 && tokens[at - 1]?.text !== ',';
    if (day && (day.ordinal || close)) return { first: index, next: day.next, weekday: weekday.weekday, day: day.day };
    return { first: index, next: weekday.next, weekday: weekday.weekday };
  }
  if (!day) return undefined;
  const numeric = tokens[at]?.num !== undefined;
  if (day.ordinal && numeric)
    return {
      first: index,
      next: day.next,
      day: day.day,
      ordinal: true,
      ...(at === index && tokens[index - 1]?.lower !== 'on' && !hourFollows(tokens, day.next) ? { bare: true } : {}),
    };
  if (at !== index && !numeric) return undefined;
  const year = numeric ? yearAt(tokens, day.next) : undefined;
  if (year && tokens[day.next]?.text !== ',') return { first: index, next: year.next, day: day.day, year: year.year, bare: true };
  return { first: index, next: day.next, day: day.day, bare: true };
}

/** "12 December (Saturday)", "12/12, a Saturday" */
function trailingWeekday(tokens: Tokens, index: number): { weekday: number; next: number } | undefined {
  const open = tokens[index]?.text;
  if (open === '(') {
    const weekday = weekdayAt(tokens, index + 1);
    return weekday && tokens[weekday.next]?.text === ')' ? { weekday: weekday.weekday, next: weekday.next + 1 } : undefined;
  }
  if (open === ',' && tokens[index + 1]?.lower === 'a') {
    const weekday = weekdayAt(tokens, index + 2);
    return weekday ? { weekday: weekday.weekday, next: weekday.next } : undefined;
  }
  return undefined;
}

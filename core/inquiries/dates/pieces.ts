/**
 * What a date is written with: a day, a month, a year, a weekday; and the shape of a date as far as it is said.
 */
import type { Token } from '../parts/tokens.ts';
import { doubtfulWeekdays, monthWord, numberWord, ordinalWord, weekdayWord } from '../words.ts';
import { shortMonth, shortWeekday } from './short-names.ts';

export const DAYS_IN_WEEK = 7;

export type Relative =
  | { kind: 'days'; days: number; months?: number }
  /** `ahead` is "Saturday in two weeks"; `ofYear` the number of a week in the year, instead of weeks from this one. */
  | { kind: 'weekday'; weekday: number; which: 'this' | 'next' | 'last' | 'plain' | 'coming' | 'ahead'; weeks: number; ofYear?: number }
  | { kind: 'weekend'; which: 'this' | 'next' | 'last' | 'plain'; weeks: number }
  | { kind: 'week'; weeks: number }
  /** Here and below `ahead` tells the month by those from this one: 1 for "of next month". */
  | { kind: 'nth'; nth: number; weekday: number; month: number; year: number | undefined; ahead?: number }
  /** "every Tuesday in May", "the first three Saturdays in September": so many of them from its beginning, or from its end; `count` is how many all of them are. */
  | { kind: 'every'; weekday: number; month: number; year: number | undefined; most?: number; fromEnd?: boolean; count?: number }
  /** "the last Tuesday and Wednesday of October": days in a row. */
  | { kind: 'nthDays'; nth: number; weekdays: number[]; month: number; year: number | undefined; ahead?: number }
  /** "the last two days of February" */
  | { kind: 'edgeDays'; nth: 1 | -1; count: number; month: number; year: number | undefined; ahead?: number }
  /** `on` where one weekday of it is told. */
  | { kind: 'nthWeekend'; nth: number; month: number; year: number | undefined; ahead?: number; on?: number }
  | { kind: 'easter'; days: number }
  /** `feast` where a feast is named, whose own days may not count: then month and day are its own, or Easter's. */
  | { kind: 'beside'; weekday: number; after: boolean; month: number; day: number; year: number | undefined; feast?: 'fixed' | 'easter' }
  /** A day that only its country's custom tells. */
  | { kind: 'unknown' }
  | { kind: 'monthEnd'; month: number; year: number | undefined }
  /** The last day of this month or the next. */
  | { kind: 'monthEnd'; ahead: number; month?: undefined }
  /** "the first and third Saturday of November"; `weekday` is nothing for a weekend, `either` where only one of them is meant. */
  | ({ kind: 'places'; places: { nth: number; weekday: number | undefined }[]; either: boolean } & OfMonth)
  /** "the day before 14 November" */
  | { kind: 'shifted'; of: Atom; shift: Shift };

type OfMonth = { month: number; year: number | undefined; ahead?: number };

/** How far from another day: by a length (`on` a weekday where one is told), or to the next weekday or weekend. */
export type Shift = { days: number; months: number; on?: number } | { to: number | 'weekend'; after: boolean };

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
  /** In numbers that can only have the month first: 11/14. */
  turned?: boolean;
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
  /** "of next month": months after that of the message. */
  monthsAhead?: number;
  /** The month stands before the day: "December 12". */
  monthFirst?: boolean;
  relative?: Relative;
};

export type Tokens = readonly Token[];

export const isDay = (value: number | undefined): value is number => value !== undefined && value >= 1 && value <= 31;
/** "12 October 1930" ends in an hour as well as in a year; 1967 is a year. */
export const isYear = (value: number | undefined): value is number =>
  value !== undefined && ((value >= 2000 && value <= 2099) || (value >= 1900 && value <= 1999 && value % 100 >= 60));
/** "10 June 1944", "3 May 1898": behind a day four figures that nobody says as an hour are a year. */
const isLongPast = (value: number | undefined): value is number =>
  value !== undefined && value >= 1000 && value < 1960 && (value % 100 >= 60 || value % 5 !== 0);
const suffixes = new Set(['st', 'nd', 'rd', 'th', 'er']);
/** What makes a number beside it no day. */
export const units =
  /^(?:am|pm|a|p|h|hr|hrs|hours?|mins?|minutes?|sec|secs|seconds?|k|km|kg|mi|miles?|m|mm|people|persons?|pax|guests?|attendees|delegates|speakers?|cams?|cameras?|ops?|operators?|days?|weeks?|weeknights?|months?|years?|nights?|sessions?|talks?|rooms?|floors?|percent|usd|cad|eur|gbp|aud|nzd|chf|o'clock|oclock|uhr|x|of us|teams?|tables?|staff|clips?|videos?|bands?|acts?|crew|kids|students|children|seats|minute)$/;

/** "7,8 May", "7,8,9 May" */
function daysOfMonth(tokens: Tokens, index: number): boolean {
  let at = index;
  while (tokens[at + 1]?.text === ',' && isDay(tokens[at + 2]?.num) && (tokens[at + 2]?.text.length ?? 9) <= 2) at += 2;
  const month = tokens[at + 1];
  return at > index && month?.breaks === 0 && monthWord(month.lower) !== undefined;
}

export function isTime(tokens: Tokens, index: number): boolean {
  const after = tokens[index + 1];
  if (!after) return false;
  if (after.text === ':' && after.tight && tokens[index + 2]?.tight && tokens[index + 2]?.num !== undefined) return true;
  if (after.text === '%' || (after.text === ',' && after.tight && tokens[index + 2]?.tight && tokens[index + 2]?.num !== undefined))
    return after.text === '%' || !daysOfMonth(tokens, index);
  if (after.text === '.' && after.tight && tokens[index + 2]?.tight && tokens[index + 2]?.num !== undefined) return true;
  // "10 a.m."
  if (/^[ap]$/.test(after.lower) && tokens[index + 2]?.text === '.' && tokens[index + 3]?.lower === 'm') return true;
  // "Thursday 12 noon"
  if (tokens[index]?.num === 12 && after.breaks === 0 && /^(?:noon|midday|midnight)$/.test(after.lower)) return true;
  return units.test(after.lower) && after.breaks === 0 && !(after.lower === 'a' && !after.tight) && !(after.lower === 'p' && !after.tight);
}

const LAST_OF_DIAL = 12;

/** "5 to 9 pm", "8-10.30pm" */
function beginsHours(tokens: Tokens, index: number): boolean {
  if (!/^(?:to|-|until|till|til)$/.test(tokens[index + 1]?.lower ?? '') || tokens[index + 2]?.num === undefined) return false;
  const [from, to, behind] = [tokens[index]?.num ?? 0, tokens[index + 2]?.num ?? 0, tokens[index + 3]?.lower ?? ''];
  // "June 25-27. 7a call" ends a sentence between the days and the hour.
  const minutes = /^[:.]$/.test(tokens[index + 3]?.text ?? '') && tokens[index + 4]?.tight && tokens[index + 4]?.num !== undefined ? 2 : 0;
  const half = tokens[index + 3 + minutes];
  const halved =
    half !== undefined &&
    half.breaks === 0 &&
    (/^(?:am|pm|hrs)$/.test(half.lower) ||
      (/^[ap]$/.test(half.lower) && half.tight) ||
      (/^[ap]$/.test(half.lower) && tokens[index + 5 + minutes]?.lower === 'm'));
  // "Jul 21 - 8:00 AM", "July 9 - 5 pm to 10": a number right behind a month is its day, where a dash with blanks parts it from its hours.
  const ofMonth = monthWord(tokens[index - 1]?.lower ?? '') !== undefined && tokens[index]?.breaks === 0;
  if (halved && ofMonth && (from > LAST_OF_DIAL || (tokens[index + 1]?.text === '-' && !tokens[index + 1]?.tight))) return false;
  // "Saturday 9 to 5": no run of days goes back, if no other month ends it.
  return halved || (from <= LAST_OF_DIAL && to < from && !/^(?:st|nd|rd|th|of|de|[./])$/.test(behind) && monthWord(behind) === undefined);
}

/** "le 10", "el 13", "am 10.": articles that make a number a day; the index after it. */
export function ledAsDay(tokens: Tokens, index: number): number | undefined {
  const [article, after] = [tokens[index - 1]?.lower ?? '', tokens[index + 1]];
  if (isTime(tokens, index) || /^(?:heures?|horas?|uhr)$/.test(after?.lower ?? '')) return undefined;
  // "fine verso le 23" is an hour.
  if (article === 'le' && /^(?:verso|dopo|tra|per|entro|circa)$/.test(tokens[index - 2]?.lower ?? '')) return undefined;
  if (article === 'le' || article === 'el')
    return monthWord(after?.lower ?? '') === undefined && after?.text !== '/' ? index + 1 : undefined;
  const point = after?.text === '.' && after.tight && !tokens[index + 2]?.tight;
  const named = monthWord(tokens[index + 2]?.lower ?? '') !== undefined || /^(?:-|\/|bis|und|u)$/.test(tokens[index + 2]?.lower ?? '');
  return article === 'am' && point && !named && tokens[index - 2]?.num === undefined ? index + 2 : undefined;
}

/** "18." as a day. */
function pointed(tokens: Tokens, index: number): boolean {
  const [number, point] = [tokens[index], tokens[index + 1]];
  return isDay(number?.num) && (number?.text.length ?? 9) <= 2 && point?.text === '.' && point.tight;
}

/** A day of the month with its ordinal ending, not a time or a count. */
export function dayAt(tokens: Tokens, index: number): { day: number; next: number; ordinal: boolean } | undefined {
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
    // "am 18., 19. und 20. August", "am 18., am 19."
    if (
      pointed(tokens, index) &&
      tokens[index + 2]?.text === ',' &&
      pointed(tokens, tokens[index + 3]?.lower === 'am' ? index + 4 : index + 3)
    )
      return { day: token.num, next: index + 2, ordinal: false };
    const led = ledAsDay(tokens, index);
    if (led !== undefined) return { day: token.num, next: led, ordinal: true };
    if (isTime(tokens, index) || beginsHours(tokens, index)) return undefined;
    if (
      ending?.text === '.' &&
      ending.tight &&
      (/^(?:-|\/|\+|&|bis|und|oder|u|et|ou|y|e)$/.test(tokens[index + 2]?.lower ?? '') ||
        /^(?:and|or|to)$/.test(tokens[index + 2]?.text ?? ''))
    )
      return { day: token.num, next: index + 2, ordinal: false };
    if (ending?.tight && /^\p{L}/u.test(ending.text) && monthWord(ending.lower) === undefined) return undefined;
    return { day: token.num, next: index + 1, ordinal: false };
  }
  const two = tokens[index + 1]?.text === '-' ? ordinalWord(`${token.lower}-${tokens[index + 2]?.lower}`) : undefined;
  if (two !== undefined) return { day: two, next: index + 3, ordinal: true };
  const spaced =
    token.lower === 'twenty' || token.lower === 'thirty' ? ordinalWord(`${token.lower}-${tokens[index + 1]?.lower}`) : undefined;
  if (spaced !== undefined) return { day: spaced, next: index + 2, ordinal: true };
  const counted = countedDay(tokens, index);
  if (counted) return { ...counted, ordinal: false };
  const word = ordinalWord(token.lower);
  return word === undefined ? undefined : { day: word, next: index + 1, ordinal: true };
}

/** Smaller numbers before a month count what is in it. */
const FEWEST_SPOKEN = 10;
/** "twenty november", "thirty one october": how many speak a date; months that are verbs as well ("two may come") are none behind such a number. */
function countedDay(tokens: Tokens, index: number): { day: number; next: number } | undefined {
  const told = tokens[index]?.lower ?? '';
  if (/^(?:zero|an?|couple|few|pair|dozen)$/.test(told)) return undefined;
  const whole = numberWord(told);
  if (whole === undefined) return undefined;
  const dash = tokens[index + 1]?.text === '-' ? 1 : 0;
  const more = whole === 20 || whole === 30 ? numberWord(tokens[index + 1 + dash]?.lower ?? '') : undefined;
  const units = more !== undefined && more > 0 && more < 10 ? more : 0;
  const next = units > 0 ? index + 2 + dash : index + 1;
  const month = tokens[next];
  // "one December party" is a party.
  return (whole >= FEWEST_SPOKEN || tokens[index - 1]?.lower === 'on') &&
    isDay(whole + units) &&
    month?.breaks === 0 &&
    !/^(?:may|march|mar)$/.test(month.lower) &&
    monthWord(month.lower) !== undefined
    ? { day: whole + units, next }
    : undefined;
}

export function yearAt(tokens: Tokens, index: number): { year: number; next: number } | undefined {
  let at = index;
  if (tokens[at]?.text === ',') at++;
  const token = tokens[at];
  if ((isYear(token?.num) || isLongPast(token?.num)) && token?.text.length === 4 && !isTime(tokens, at))
    return { year: token.num, next: at + 1 };
  const short = tokens[at + 1];
  if (token?.text === "'" && short?.tight && short.text.length === 2 && short.num !== undefined && at === index)
    return { year: 2000 + short.num, next: at + 2 };
  return undefined;
}

export function monthAt(tokens: Tokens, index: number): { month: number; next: number } | undefined {
  const token = tokens[index];
  const whole = token && monthWord(token.lower);
  const month = whole ?? shortMonth(tokens, index);
  if (!token || month === undefined) return undefined;
  const dot =
    tokens[index + 1]?.text === '.' &&
    tokens[index + 1]?.tight &&
    (whole === undefined || token.lower.length <= 4) &&
    token.lower !== 'may';
  return { month, next: dot ? index + 2 : index + 1 };
}

/** Words that end a place where a two-letter or lower-case month or weekday could be meant as another word. */
function plainly(token: Token): boolean {
  return /^\p{Lu}/u.test(token.text);
}

/** "Sa 12.6.": two letters are a weekday only with a capital and before a day with its point. */
function germanShort(tokens: Tokens, index: number): number | undefined {
  const at = GERMAN_SHORT.indexOf(tokens[index]?.text ?? '');
  const next = /^[.,]$/.test(tokens[index + 1]?.text ?? '') ? index + 2 : index + 1;
  return at >= 0 && isDay(tokens[next]?.num) && tokens[next + 1]?.text === '.' && tokens[next + 1]?.tight ? at + 1 : undefined;
}
const GERMAN_SHORT = ['Mo', 'Di', 'Mi', 'Do', 'Fr', 'Sa', 'So'];

/** "wed night", "sat noon" */
const PART_OF_DAY = /^(?:morning|afternoon|evening|eve|night|nite|arvo|noon|midday|lunchtime|am|pm)$/;

export function weekdayAt(tokens: Tokens, index: number): { weekday: number; next: number } | undefined {
  const token = tokens[index];
  const weekday = token && (weekdayWord(token.lower) ?? germanShort(tokens, index) ?? shortWeekday(tokens, index));
  if (!token || weekday === undefined || tokens[index + 1]?.lower === 'gras') return undefined;
  // "we're getting wed 19th June"
  if (token.lower === 'wed' && /^(?:get|gets|getting|gettin|got)$/.test(tokens[index - 1]?.lower ?? '')) return undefined;
  if (doubtfulWeekdays.has(token.lower) && !plainly(token)) {
    const beside = tokens[index + 1];
    const before = tokens[index - 1]?.lower ?? '';
    const dated =
      beside &&
      ((beside.breaks === 0 && PART_OF_DAY.test(beside.lower) && tokens[index + 2]?.lower !== 'after') ||
        beside.num !== undefined ||
        monthWord(beside.lower) !== undefined ||
        (beside.breaks === 0 && /^(?:the|wk|week|fortnight)$/.test(beside.lower)) ||
        /^[-/&+]$/.test(beside.text) ||
        (beside.lower === 'and' && weekdayWord(tokens[index + 2]?.lower ?? '') !== undefined));
    // "just the sat"
    const named = before === 'the' && /^(?:just|only|on|for)$/.test(tokens[index - 2]?.lower ?? '') && token.lower !== 'sun';
    // "want it on video. sat, Two Harbors"
    const begins = token.lower !== 'sun' && beside?.text === ',' && (before === '' || token.breaks > 0 || /^[.!?;-]$/.test(before));
    // "wrapped by 5p sun"
    const afterHour = /^[ap]$/.test(before) && tokens[index - 2]?.num !== undefined;
    if (
      !dated &&
      !named &&
      !begins &&
      !afterHour &&
      !/^(?:on|open|free|around|available|for|this|next|by|before|b4|lmk|back|until|from|to|-|nxt|and|or|&|\+|coming|till|thru|through|call|out|wrap|done|finish|start|,|\/|every|last|am|pm|\d+)$/.test(
        before,
      )
    )
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

/** "Saturdays", and what `weekdayAt` reads. */
export function weekdaysAt(tokens: Tokens, index: number): { weekday: number; next: number } | undefined {
  const lower = tokens[index]?.lower ?? '';
  const weekday = /^\p{L}{3,8}s$/u.test(lower) ? weekdayWord(lower.slice(0, -1)) : undefined;
  return weekday === undefined ? weekdayAt(tokens, index) : { weekday, next: index + 1 };
}

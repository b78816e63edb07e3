/**
 * Dates in names and numbers: "12 December 2026", "Dec 12th", "12/12/2026", "12.12.", "2026-12-12".
 */
import { openPointAt } from './open-point.ts';
import { spacedAt } from './spaced.ts';
import { dayAt, isDay, isTime, isYear, monthAt, units, weekdayAt, yearAt, type Atom, type Tokens } from './pieces.ts';

/** "12 December 2026", "12th of Dec", "December 12th, 2026", "Dec. 12" */
export function namedAt(tokens: Tokens, index: number): Atom | undefined {
  const day = dayAt(tokens, index);
  if (day) {
    let at = day.next;
    if (/^(?:of|in|de|di)$/.test(tokens[at]?.lower ?? '')) at++;
    else if (tokens[at]?.text === '.' || ((tokens[at]?.text === '-' || tokens[at]?.text === '/') && tokens[at]?.tight)) at++;
    const roman = romanMonthAt(tokens, day.next);
    if (roman) return { first: index, next: roman.next, day: day.day, month: roman.month, ...(roman.year ? { year: roman.year } : {}) };
    // "the 30th (this month!)"
    if (day.ordinal && /^[(,]$/.test(tokens[day.next]?.text ?? '') && tokens[day.next + 2]?.lower === 'month') {
      const told = tokens[day.next + 1]?.lower;
      if (told === 'this' || told === 'next')
        return { first: index, next: day.next + 3, day: day.day, monthsAhead: told === 'next' ? 1 : 0 };
    }
    const ahead = tokens[at]?.lower === 'next' ? 1 : tokens[at]?.lower === 'this' ? 0 : undefined;
    if (ahead !== undefined && tokens[at - 1]?.lower === 'of' && tokens[at + 1]?.lower === 'month')
      return { first: index, next: at + 2, day: day.day, monthsAhead: ahead };
    const month = monthAt(tokens, at);
    if (month && (tokens[at]?.breaks ?? 0) === 0) {
      let after = month.next;
      if (
        ((tokens[after]?.text === '-' && tokens[after]?.tight) || /^(?:de|del)$/.test(tokens[after]?.lower ?? '')) &&
        isYear(tokens[after + 1]?.num)
      )
        after++;
      const year = yearAt(tokens, after) ?? shortYearAt(tokens, after);
      // "its 3. nov 14 15 16": the point ends a sentence, and the month has its own days after it.
      if (!year && tokens[day.next]?.text === '.' && isDay(tokens[month.next]?.num) && !isTime(tokens, month.next)) return undefined;
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
    if (isTime(tokens, at) && !after.ordinal) return undefined;
    if (yearInMonth(tokens, index, month.next) !== undefined) return undefined;
    const year = yearAt(tokens, after.next) ?? yearAfterDay(tokens, after);
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

/** "in June 27": nobody says a day so, it is the year; not "in June 27-29". */
export function yearInMonth(tokens: Tokens, index: number, at: number): number | undefined {
  const [year, behind] = [tokens[at], tokens[at + 1]];
  const short = year?.num !== undefined && year.text.length === 2 && year.num >= FIRST_SHORT_YEAR && year.num <= LAST_SHORT_YEAR;
  if (!short || year.breaks > 0 || !/^(?:in|im|en)$/.test(tokens[index - 1]?.lower ?? '') || isTime(tokens, at)) return undefined;
  const more =
    /^(?:-|\/|&|and|to|until|or|st|nd|rd|th)$/.test(behind?.lower ?? '') || (behind?.text === ',' && tokens[at + 2]?.num !== undefined);
  return more ? undefined : CENTURY + (year.num ?? 0);
}
const CENTURY = 2000;
const FIRST_SHORT_YEAR = 26;
const LAST_SHORT_YEAR = 50;

/** "15.X.2027", "10.IX.", "15 X 2027": months in Roman numbers, as they are written from Poland to Italy. */
function romanMonthAt(tokens: Tokens, index: number): { month: number; year?: number; next: number } | undefined {
  const mark = /^[./-]$/.test(tokens[index]?.text ?? '') && tokens[index]?.tight === true;
  const at = mark ? index + 1 : index;
  const month = ROMAN.indexOf(tokens[at]?.text ?? '') + 1;
  if (month === 0 || tokens[at]?.breaks !== 0) return undefined;
  const ends = /^[./-]$/.test(tokens[at + 1]?.text ?? '') && tokens[at + 1]?.tight === true;
  const year = tokens[at + 1 + (ends ? 1 : 0)];
  if (year?.text.length === 4 && isYear(year.num) && year.breaks === 0) return { month, year: year.num, next: at + 2 + (ends ? 1 : 0) };
  // "3.I." without a year needs both its points.
  return mark && tokens[at]?.tight && ends && tokens[at + 1]?.text === '.' ? { month, next: at + 2 } : undefined;
}
const ROMAN = ['I', 'II', 'III', 'IV', 'V', 'VI', 'VII', 'VIII', 'IX', 'X', 'XI', 'XII'];

/** "Sept. 5/26": of two numbers that far apart the second is no day of the same list. */
function yearAfterDay(tokens: Tokens, { day, next }: { day: number; next: number }): { year: number; next: number } | undefined {
  const year = tokens[next]?.text === '/' ? shortYearAt(tokens, next) : undefined;
  return year && year.year - 2000 - day >= FAR_APART ? year : undefined;
}
const FAR_APART = 10;

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
export function numericAt(tokens: Tokens, index: number): Atom | undefined {
  const [a, s1, b, s2, c] = [tokens[index], tokens[index + 1], tokens[index + 2], tokens[index + 3], tokens[index + 4]];
  if (a?.num === undefined || b?.num === undefined || !s1?.tight || !b.tight || !/^[/.-]$/.test(s1.text)) return spacedAt(tokens, index);
  const before = tokens[index - 1];
  // "(2/3)" at the beginning of a line counts the parts of a message.
  if (
    before?.text === '(' &&
    s1.text === '/' &&
    s2?.text === ')' &&
    a.num <= b.num &&
    b.num <= 9 &&
    (tokens[index - 2] === undefined || before.breaks > 0)
  )
    return undefined;
  if (
    a.tight &&
    before &&
    /^[\p{L}$£€/:.,#@\d-]$/u.test(before.text.slice(-1)) &&
    !(before.text === '-' && s1.text !== '-' && /^[.\d]/.test(tokens[index - 2]?.text ?? '')) &&
    !(a.text.length === 4 && s1.text === '-' && endsInterval(tokens, index - 1))
  )
    return undefined;
  const mark = s1.text;
  const third = s2?.tight && s2.text === mark && c?.tight && c.num !== undefined ? c : undefined;
  const trailing = (next: number): boolean => {
    const after = tokens[next];
    return (
      after !== undefined &&
      after.tight &&
      (/^\p{L}/u.test(after.text) || /^[%/]$/.test(after.text) || (after.text === ':' && tokens[next + 1]?.tight === true))
    );
  };
  if (third) {
    if (trailing(index + 5)) {
      const stamp = tokens[index + 5]?.lower;
      if (!(a.text.length === 4 && (stamp === 't' || dayBehindSlash(tokens, index + 5)))) return undefined;
    }
    if (a.text.length === 4 && isYear(a.num) && b.num >= 1 && b.num <= 12 && isDay(third.num))
      return { first: index, next: index + 5, year: a.num, month: b.num, day: third.num, iso: true };
    const yearNumber = third.text.length === 4 ? third.num : third.text.length === 2 ? 2000 + (third.num as number) : undefined;
    if (!isYear(yearNumber) || a.text.length > 2 || b.text.length > 2) return undefined;
    return pair(index, index + 5, a.num, b.num, mark, yearNumber);
  }
  if (mark === '-' && a.text.length <= 2 && b.text.length <= 2) return hyphened(tokens, index, trailing(index + 3));
  if (mark === '-' || a.text.length > 2 || b.text.length > 2) return undefined;
  if (mark === '.') {
    if (OF_AN_HOUR.test(before?.lower ?? '') && closesAt(tokens, index)) return undefined;
    // "12.12." needs its closing point, else it is as well a time or a price.
    const point = tokens[index + 3];
    const open = openPointAt(tokens, index);
    if (open) return { first: index, next: open.next, day: open.day, month: open.month, dotted: true };
    if (!(point?.tight && point.text === '.') || (tokens[index + 4]?.tight && tokens[index + 4]?.num !== undefined)) return undefined;
    return pair(index, index + 4, a.num, b.num, mark, undefined);
  }
  // "2/3 October" is two days.
  // A unit stands on the same line: "Fri 11/5" above "Crew call" counts nobody.
  const counts = tokens[index + 3]?.breaks === 0 && units.test(tokens[index + 3]?.lower ?? '');
  if (trailing(index + 3) || counts || monthAt(tokens, index + 3)) return undefined;
  return pair(index, index + 3, a.num, b.num, mark, undefined);
}

/** "on stage at 9.10. Doors ...": an hour whose sentence ends, where "at 10.12. and 11.12." names days. */
function closesAt(tokens: Tokens, index: number): boolean {
  const [hour, , minutes, , after] = tokens.slice(index, index + 5);
  const ends = after === undefined || after.breaks > 0 || /^\p{Lu}/u.test(after.text);
  return (hour?.num ?? LAST_HOUR + 1) <= LAST_HOUR && minutes?.text.length === 2 && (minutes.num ?? 1) % 5 === 0 && ends;
}
const LAST_HOUR = 23;
/** "at 9.10.", "high water 13.10."; "dinner 20.10." is a day. */
const OF_AN_HOUR = /^(?:at|water|tide|curtain)$/;

/** "2027-11-12/2027-11-14", "2027-11-12..2027-11-14": what parts the two days of an interval. */
const endsInterval = (tokens: Tokens, index: number): boolean =>
  (tokens[index]?.text === '/' && tokens[index - 1]?.num !== undefined && tokens[index - 2]?.text === '-') ||
  (tokens[index]?.text === '.' && tokens[index - 1]?.text === '.');

/** "2027-11-12/14": the last day of an interval as ISO 8601 writes it, and not one more number with a slash. */
function dayBehindSlash(tokens: Tokens, index: number): boolean {
  const [slash, day, after] = [tokens[index], tokens[index + 1], tokens[index + 2]];
  const ends = !(after?.tight && /^[/:-]$/.test(after.text));
  const year = day?.text.length === 4 && after?.text === '-';
  return slash?.text === '/' && day?.tight === true && (year || (day.text.length === 2 && isDay(day.num) && ends));
}

/** "27-2", as the Dutch write it: a day that is no hour and goes down to a month, behind a weekday or a word that leads to dates. */
function hyphened(tokens: Tokens, index: number, trails: boolean): Atom | undefined {
  const [day, month, after] = [tokens[index]?.num ?? 0, tokens[index + 2]?.num ?? 0, tokens[index + 3]];
  if (trails || !isDay(day) || day <= LATEST_MONTH || month < 1 || month > LATEST_MONTH || tokens[index]?.tight) return undefined;
  if (units.test(after?.lower ?? '') || monthAt(tokens, index + 3) || /^[-/]$/.test(after?.text ?? '')) return undefined;
  const led =
    /^(?:op|dd|datum|d|vanaf)$/.test(tokens[index - 1]?.lower ?? '') ||
    [1, 2].some((back) => weekdayAt(tokens, index - back)?.next === index);
  return led ? { first: index, next: index + 3, day, month } : undefined;
}
const LATEST_MONTH = 12;

function pair(first: number, next: number, a: number, b: number, mark: string, year: number | undefined): Atom | undefined {
  const yearPart = year === undefined ? {} : { year };
  const dayFirst = isDay(a) && b >= 1 && b <= 12;
  const monthFirst = isDay(b) && a >= 1 && a <= 12;
  if (mark === '.' && (dayFirst || year === undefined || !monthFirst))
    return dayFirst ? { first, next, day: a, month: b, dotted: true, ...yearPart } : undefined;
  if (dayFirst && monthFirst && a !== b) return { first, next, day: a, month: b, slashed: true, ...yearPart };
  if (dayFirst) return { first, next, day: a, month: b, ...yearPart };
  return monthFirst ? { first, next, day: b, month: a, turned: true, ...yearPart } : undefined;
}

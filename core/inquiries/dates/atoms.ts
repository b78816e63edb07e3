/**
 * One date as it is written: "Sat 12 December 2026", "Dec 12th", "12/12/2026", "the 12th", "next Friday", "tomorrow".
 * What is not said stays open; the resolver settles it.
 */
import { monthWord } from '../words.ts';
import { dayAt, ledAsDay, weekdayAt, yearAt, type Atom, type Tokens } from './pieces.ts';
import { relativeAt } from './relative.ts';
import { namedAt, numericAt } from './written.ts';

/** "29th 5pm" */
function hourFollows(tokens: Tokens, index: number): boolean {
  const [hour, half] = [tokens[index], tokens[index + 1]];
  return (
    hour?.num !== undefined && hour.breaks === 0 && (half?.text === ':' || (half !== undefined && /^(?:am|pm|a|p|h|hrs)$/.test(half.lower)))
  );
}

/** "Fri evening 8 Oct", "Sunday afternoon, 19 September", "Wednesday lunchtime the 22nd" */
function partOfDay(tokens: Tokens, index: number): number {
  if (tokens[index]?.breaks !== 0 || !/^(?:morning|afternoon|evening|night|lunchtime|midday|noon)$/.test(tokens[index].lower)) return 0;
  const comma = tokens[index + 1]?.text === ',' ? 1 : 0;
  const at = index + 1 + comma;
  const the = tokens[at]?.lower === 'the' ? 1 : 0;
  return namedAt(tokens, at + the) || numericAt(tokens, at + the) || (the === 1 && dayAt(tokens, at + 1)?.ordinal) ? 1 : 0;
}

/** From here on an ordinal in words counts days of a month. */
const CERTAIN_DAY = 13;
/** "on the fifteenth at six", "the nineteenth and the twenty-first": behind a day stands no noun, as in "the fifteenth year". */
const BEHIND_DAY =
  /^(?:[,.;:!?)]|and|or|to|through|thru|until|till|at|from|is|was|will|we|you|i|it|in|for|but|only|please|if|with|as|too|because|so|then|when|plus)$/;

/** The date written at a token, if there is one. */
export function atomAt(tokens: Tokens, index: number): Atom | undefined {
  const relative = relativeAt(tokens, index);
  if (relative) return relative;
  const weekday = weekdayAt(tokens, index);
  let at = weekday?.next ?? index;
  if (weekday) {
    at += partOfDay(tokens, at);
    // "Saturday. 10 to 5" ends a sentence.
    if (tokens[at]?.text === ',' || (tokens[at]?.text === '.' && !/da[yg]$/.test(tokens[at - 1]?.lower ?? '')) || tokens[at]?.text === '(')
      at++;
    if (tokens[at]?.lower === 'the' || (/^(?:der|dem|den|le|el|il|de)$/.test(tokens[at]?.lower ?? '') && tokens[at + 1]?.num !== undefined))
      at++;
  } else if (tokens[at]?.lower === 'the') at++;
  const sameLine = weekday === undefined || (tokens[at]?.breaks ?? 1) === 0;
  const dated = sameLine ? (numericAt(tokens, at) ?? namedAt(tokens, at)) : undefined;
  const after = dated && !weekday ? trailingWeekday(tokens, dated.next) : undefined;
  const weekdayPart = weekday ? { weekday: weekday.weekday } : after ? { weekday: after.weekday } : {};
  const comma = weekday ? { afterWeekday: weekday.next, comma: tokens[weekday.next]?.text === ',' } : {};
  if (dated) return { ...dated, ...weekdayPart, ...comma, first: index, next: after?.next ?? dated.next };
  const day = sameLine ? dayAt(tokens, at) : undefined;
  if (weekday) {
    // "Freitag, den 17."
    const close =
      day && ((at <= weekday.next + 1 && tokens[at - 1]?.text !== ',') || /^(?:den|dem|le|el|il)$/.test(tokens[at - 1]?.lower ?? ''));
    // "Wednesday (6th) till Friday (8th)"
    const closes = day && tokens[at - 1]?.text === '(' && tokens[day.next]?.text === ')' && JOINS.test(tokens[day.next + 1]?.lower ?? '');
    if (day && (day.ordinal || close))
      return { first: index, next: closes ? day.next + 1 : day.next, weekday: weekday.weekday, day: day.day, ...comma };
    return { first: index, next: weekday.next, weekday: weekday.weekday };
  }
  if (!day) return undefined;
  const numeric = tokens[at]?.num !== undefined;
  // "the 11th, sat,"
  const named = day.ordinal && tokens[day.next]?.text === ',' ? weekdayAt(tokens, day.next + 1) : undefined;
  const of = named && /^[,.;)]$/.test(tokens[named.next]?.text ?? '.') ? named : undefined;
  const inWords =
    at !== index &&
    day.ordinal &&
    day.day >= CERTAIN_DAY &&
    (tokens[day.next]?.breaks !== 0 || BEHIND_DAY.test(tokens[day.next]?.lower ?? '.'));
  if (day.ordinal && (numeric || inWords))
    return {
      first: index,
      next: of?.next ?? day.next,
      ...(of ? { weekday: of.weekday } : {}),
      day: day.day,
      ordinal: true,
      ...(at === index &&
      tokens[index - 1]?.lower !== 'on' &&
      !closesAtDay(tokens, index, day.next) &&
      ledAsDay(tokens, index) === undefined &&
      !hourFollows(tokens, day.next) &&
      !aloneAfterWeekday(tokens, index, day.next) &&
      !takesPlace(tokens, index, day.next)
        ? { bare: true }
        : {}),
    };
  // "the third" may be anything, "second shooter" is no day; "the twenty-second" is one.
  if (!numeric && day.day < CERTAIN_DAY && (at !== index || leadsNoun(tokens, day.next))) return undefined;
  const year = numeric ? yearAt(tokens, day.next) : undefined;
  if (year && tokens[day.next]?.text !== ',') return { first: index, next: year.next, day: day.day, year: year.year, bare: true };
  return { first: index, next: day.next, day: day.day, bare: true };
}

/** "NYE - second shooter"; not "fifth sixth and seventh of May". */
function leadsNoun(tokens: Tokens, index: number): boolean {
  const token = tokens[index];
  return (
    token?.breaks === 0 && /^\p{L}/u.test(token.text) && !BEHIND_DAY.test(token.lower) && !dayAt(tokens, index) && !monthWord(token.lower)
  );
}

/** "Confirm by 21st.", "quote before 9th pls": nothing stands behind it that is counted. */
const closesAtDay = (tokens: Tokens, index: number, next: number): boolean =>
  /^(?:by|before|until|till)$/.test(tokens[index - 1]?.lower ?? '') &&
  (tokens[next]?.breaks !== 0 ||
    BEHIND_DAY.test(tokens[next]?.lower ?? '.') ||
    /^(?:latest|max|pls|plz|thanks)$/.test(tokens[next]?.lower ?? ''));

/** "Not this Friday! 25th", "Saturday? Yes, 9th.": a number with its ordinal ending that stands alone behind a weekday is its day. */
function aloneAfterWeekday(tokens: Tokens, index: number, next: number): boolean {
  const lead = tokens[index - 1];
  const begins =
    lead === undefined || (tokens[index]?.breaks ?? 0) > 0 || /^[!?.:(]$/.test(lead.text) || /^(?:yes|yep|no|sorry)$/.test(lead.lower);
  return (
    begins &&
    endsThere(tokens[next]) &&
    tokens.slice(Math.max(0, index - NEAR_WEEKDAY), index).some(({ lower }) => WEEKDAY_NAME.test(lower))
  );
}
const endsThere = (tail: Tokens[number] | undefined): boolean =>
  tail === undefined || tail.breaks > 0 || /^[.!?;)]$/.test(tail.text) || /^(?:not|instead)$/.test(tail.lower);
const NEAR_WEEKDAY = 12;
const WEEKDAY_NAME = /^(?:mon|tues|wednes|thurs|fri|satur|sun)days?$|^(?:mon|tues?|weds?|thurs?|fri|sat)$/;

/** "Nov 18 ... sorry, 19th.", "wait no, 19th", "19th sorry": alone beside a word that takes back what was said. */
function takesPlace(tokens: Tokens, index: number, next: number): boolean {
  const led = /^[,:-]$/.test(tokens[index - 1]?.text ?? '');
  const lead = tokens[index - (led ? 2 : 1)]?.lower ?? '';
  const takesBack = /^(?:sorry|oops|whoops|mean|meant|correction|actually|rather)$/.test(lead) || (led && lead === 'no');
  const begins = /^[!?.]$/.test(tokens[index - 1]?.text ?? '') || (tokens[index]?.breaks ?? 0) > 0;
  return (takesBack && endsThere(tokens[next])) || (begins && tokens[next]?.lower === 'sorry' && endsThere(tokens[next + 1]));
}

const JOINS = /^(?:and|&|\+|to|through|thru|-|\/|until|till|or)$/;

/** "12 December (Saturday)", "12/12, a Saturday" */
function trailingWeekday(tokens: Tokens, index: number): { weekday: number; next: number } | undefined {
  const open = tokens[index]?.text;
  // "19 Mar Fri,"
  const beside = tokens[index]?.breaks === 0 && (tokens[index - 1]?.text.length ?? 9) <= 4 ? weekdayAt(tokens, index) : undefined;
  const ends = beside && tokens[beside.next];
  if (beside && (ends === undefined || ends.breaks > 0 || /^[,.;:)]$/.test(ends.text))) return beside;
  // "4 feb fri 12-3": the hours of that day, as no date follows.
  if (beside && ends?.num !== undefined && ends.breaks === 0 && !namedAt(tokens, beside.next) && !numericAt(tokens, beside.next))
    return beside;
  // "Mar 18 thurs and 19 fri"
  if (beside && JOINS.test(ends?.lower ?? '') && dayAt(tokens, beside.next + (tokens[beside.next + 1]?.lower === 'the' ? 2 : 1)))
    return beside;
  if (open === '(') {
    const weekday = weekdayAt(tokens, index + 1);
    return weekday && tokens[weekday.next]?.text === ')' ? { weekday: weekday.weekday, next: weekday.next + 1 } : undefined;
  }
  const which = /^(?:which|that)$/.test(tokens[index + 1]?.lower ?? '') && tokens[index + 2]?.lower === 'is' ? 2 : 0;
  if (open === ',' && tokens[index + 1 + which]?.lower === 'a') {
    const weekday = weekdayAt(tokens, index + 2 + which);
    // "31 May and 1 June, a Wednesday and a Thursday": the weekdays of both.
    const after = weekday?.next ?? index;
    const more = tokens[after]?.lower === 'and' && weekdayAt(tokens, after + (tokens[after + 1]?.lower === 'a' ? 2 : 1)) !== undefined;
    return weekday && !more ? { weekday: weekday.weekday, next: weekday.next } : undefined;
  }
  return undefined;
}

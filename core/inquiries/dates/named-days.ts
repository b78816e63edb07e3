/**
 * Days that bear a name: "on New Year's Eve", "Boxing Day"; not "our Halloween party".
 */
import type { Atom, Tokens } from './pieces.ts';
import { weekendWordAt } from './weeks.ts';

/** "St. David's Day" and "St David's Day" */
function saints(days: readonly (readonly [string, number, number])[]): (readonly [string, number, number])[] {
  return days.flatMap(([name, month, day]) => ['st . ', 'st ', 'saint '].map((led) => [`${led}${name}`, month, day] as const));
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
  ["valentine's", 2, 14],
  ['valentines', 2, 14],
  ['freedom day', 4, 27],
  ...saints([
    ["david's day", 3, 1],
    ["patrick's day", 3, 17],
    ["george's day", 4, 23],
    ["andrew's day", 11, 30],
    ["nicholas' day", 12, 6],
    ["stephen's day", 12, 26],
  ]),
  ["stephen's day", 12, 26],
  ["paddy's day", 3, 17],
  ['burns night', 1, 25],
  ['leap day', 2, 29],
  ['groundhog day', 2, 2],
  ['may day', 5, 1],
  ['juneteenth', 6, 19],
  ['canada day', 7, 1],
  ['bastille day', 7, 14],
  ["hallowe'en", 10, 31],
  ['halloween', 10, 31],
  ['bonfire night', 11, 5],
  ['guy fawkes night', 11, 5],
  ['remembrance day', 11, 11],
  ['armistice day', 11, 11],
  ['veterans day', 11, 11],
  ["veterans' day", 11, 11],
  ['australia day', 1, 26],
  ['waitangi day', 2, 6],
  ['anzac day', 4, 25],
  ['gandhi jayanti', 10, 2],
  ['ferragosto', 8, 15],
  ['koningsdag', 4, 27],
  ["king's day", 4, 27],
  ['sinterklaasavond', 12, 5],
  ['heiligabend', 12, 24],
  ['neujahr', 1, 1],
  ['hogmanay', 12, 31],
  ['nye', 12, 31],
  ['silvester', 12, 31],
  ['nochevieja', 12, 31],
];
const SUNDAY = 7;
/**
 * Days that fall on a weekday of a month, each with the nth, the month and the weekday where it is no Monday. Holidays of the United States: title 5 of
 * the United States Code, section 6103.
 */
const mondays: readonly (readonly [string, number, number, number?])[] = [
  ['mlk day', 3, 1],
  ["presidents' day", 3, 2],
  ['memorial day', -1, 5],
  ['labor day', 1, 9],
  // The Sunday nearest to 11 November, which is always the second of the month (common practice).
  ['remembrance sunday', 2, 11, SUNDAY],
];
const LONGEST_DAY_NAME = 4;
/** What is named for one of these is held on it; a Halloween party is not. */
const PARTY_ON_IT = /^(?:hogmanay|nye|silvester|nochevieja|boxing day|new year'?s (?:eve|day)|christmas (?:eve|day))$/;
/** What may stand behind the name of a day that is meant, not a thing that is named for it. */
const BEHIND =
  /^(?:itself|evening|night|morning|afternoon|lunchtime|in|at|from|for|and|or|to|with|near|we|this|so|if|that|which|it|its|is|please|because|but|thanks)$/;
/** A greeting or a day that is over, or that only parts one time from another. */
const NOT_THEN = /^(?:your|after|since|before|last|nach|vor|seit|happy|merry)$/;

/** Mondays in May on which banks are closed in the United Kingdom: Banking and Financial Dealings Act 1971, schedule 1, and the first one by proclamation (from memory). */
function bankHolidayAt(tokens: Tokens, index: number): Atom | undefined {
  const from = tokens[index]?.lower === 'the' ? index + 1 : index;
  const word = (offset: number): string => tokens[from + offset]?.lower ?? '';
  const of = word(1) === 'may' ? 2 : 1;
  const first = of === 2 && /^(?:first|early|1st)$/.test(word(0));
  const last = of === 2 ? /^(?:second|late|last|2nd)$/.test(word(0)) : word(0) === 'spring';
  if ((!first && !last) || word(of) !== 'bank' || word(of + 1) !== 'holiday') return undefined;
  const next = from + of + 2;
  if (weekendWordAt(tokens, next) !== undefined || NOT_ON_IT.test(word(of + 2)))
    return { first: index, next, relative: { kind: 'unknown' } };
  const to = word(of + 2) === 'monday' ? next + 1 : next;
  return { first: index, next: to, relative: { kind: 'nth', nth: first ? 1 : -1, weekday: 1, month: MAY, year: undefined } };
}
const MAY = 5;
/** "spring bank holiday Saturday" */
const NOT_ON_IT = /^(?:sunday|saturday|friday|tuesday|week)$/;

/** The named day at a token. */
export function namedDayAt(tokens: Tokens, index: number): Atom | undefined {
  const bank = bankHolidayAt(tokens, index);
  if (bank) return bank;
  if (NOT_THEN.test(tokens[index - 1]?.lower ?? '')) return undefined;
  const led = /^(?:on|for|is|by|until|till|entro|bis|than|this|,|:|be|date|free|available)$/.test(tokens[index - 1]?.lower ?? '');
  for (let length = LONGEST_DAY_NAME; length >= 1; length--) {
    const words = tokens
      .slice(index, index + length)
      .map((token) => token.lower)
      .join(' ');
    const found = namedDays.find(([name]) => name === words);
    const after = tokens[index + length];
    if (
      found &&
      (led || PARTY_ON_IT.test(found[0])) &&
      (after === undefined || PARTY_ON_IT.test(found[0]) || after.breaks > 0 || !/^\p{L}/u.test(after.text) || BEHIND.test(after.lower))
    )
      return { first: index, next: index + length, month: found[1], day: found[2], monthFirst: true };
    const monday = led && mondays.find(([name]) => name === words);
    if (monday && (after === undefined || after.breaks > 0 || !/^\p{L}/u.test(after.text) || BEHIND.test(after.lower)))
      return {
        first: index,
        next: index + length,
        relative: { kind: 'nth', nth: monday[1], weekday: monday[3] ?? 1, month: monday[2], year: undefined },
      };
  }
  return undefined;
}

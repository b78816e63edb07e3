/**
 * Days that bear a name: "on New Year's Eve", "Boxing Day"; not "our Halloween party".
 */
import type { Atom, Tokens } from './pieces.ts';

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
  ['hogmanay', 12, 31],
  ['nye', 12, 31],
  ['silvester', 12, 31],
  ['nochevieja', 12, 31],
];
const LONGEST_DAY_NAME = 4;
/** What is named for one of these is held on it; a Halloween party is not. */
const PARTY_ON_IT = /^(?:hogmanay|nye|silvester|nochevieja|boxing day|new year'?s (?:eve|day)|christmas (?:eve|day))$/;
/** A greeting or a day that is over, or that only parts one time from another. */
const NOT_THEN = /^(?:your|after|since|before|last|nach|vor|seit|happy|merry)$/;

/** The named day at a token. */
export function namedDayAt(tokens: Tokens, index: number): Atom | undefined {
  if (NOT_THEN.test(tokens[index - 1]?.lower ?? '')) return undefined;
  const led = /^(?:on|for|is|by|until|till|this|,|:|be|date)$/.test(tokens[index - 1]?.lower ?? '');
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
      (after === undefined ||
        PARTY_ON_IT.test(found[0]) ||
        after.breaks > 0 ||
        !/^\p{L}/u.test(after.text) ||
        /^(?:in|at|from|for|and|to|with|near|we|this)$/.test(after.lower))
    )
      return { first: index, next: index + length, month: found[1], day: found[2], monthFirst: true };
  }
  return undefined;
}

/**
 * Whether 3/4 is the third of April or the fourth of March, by country and by what else is written in the message.
 */
import { monthWord } from '../words.ts';
import type { Token } from '../parts/tokens.ts';

export type Order = 'day first' | 'month first' | 'either';

/** Countries that write the month first in numbers, and those where both are met: short date patterns of Unicode CLDR. */
const monthFirst = new Set('US PH GU PR VI AS MP FM MH PW JP KR KP CN TW HU LT MN'.split(' '));
const both = new Set(['CA']);

/** The order that the writers of a country use; either where those who pay write otherwise. */
export function orderOf(country: string | undefined, ...paying: readonly string[]): Order {
  if (country === undefined || both.has(country)) return 'either';
  const first = monthFirst.has(country);
  if (paying.length > 0 && paying.every((one) => monthFirst.has(one) !== first)) return 'either';
  return first ? 'month first' : 'day first';
}

/** True where every date with a written month has its day before it, "the 15 february": its writer hardly writes the month first in numbers. */
export function writesDayFirst(tokens: readonly Token[]): boolean {
  let dayFirst = false;
  for (const [index, { lower }] of tokens.entries()) {
    if (monthWord(lower) === undefined || lower === 'may' || lower === 'march') continue;
    const [before, after] = [tokens[index - 1], tokens[index + 1]];
    const ending = before && /^(?:st|nd|rd|th)$/.test(before.lower) && before.tight ? tokens[index - 2] : before;
    if (isDay(ending)) dayFirst = true;
    else if (isDay(after)) return false;
  }
  return dayFirst;
}
const isDay = (token: Token | undefined): boolean =>
  token?.num !== undefined && token.text.length <= 2 && token.num >= 1 && token.num <= 31;

/** A date of the message that can be read in one way only (29/11) tells how its writer writes all of them. */
export function orderSeen(tokens: readonly Token[]): Order | undefined {
  let dayFirst = false;
  let first = false;
  for (const [index, token] of tokens.entries()) {
    const [mark, second] = [tokens[index + 1], tokens[index + 2]];
    if (
      token.num === undefined ||
      token.text.length > 2 ||
      mark?.text !== '/' ||
      !mark.tight ||
      !second?.tight ||
      second.num === undefined ||
      second.text.length > 2
    )
      continue;
    if (tokens[index - 1]?.text === '/') continue;
    if (token.num > 12 && token.num <= 31 && second.num >= 1 && second.num <= 12) dayFirst = true;
    if (second.num > 12 && second.num <= 31 && token.num >= 1 && token.num <= 12) first = true;
  }
  return dayFirst === first ? undefined : dayFirst ? 'day first' : 'month first';
}

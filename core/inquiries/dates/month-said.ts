/**
 * The month that a day is told by its place in, and the place, in several languages: "of March 2027", "im Juni", "d'août", "of next month"; "last", "ersten", "3ème".
 */
import { monthWord, ordinalWord } from '../words.ts';
import { dayAt, monthAt, yearAt, type Tokens } from './pieces.ts';

/** By its number, with the year where that is said, or counted from the month of the message. */
export type MonthSaid = { month: number; year: number | undefined; ahead?: number; next: number };

const OF = /^(?:of|in|im|de|di|van|del|des|du|der|van|nel|à|en)$/;
const MONTH = /^(?:month|monats|monat|mois|mes|mese|maand)$/;
const ARTICLE = /^(?:the|le|la|el|il|de|del|des|du)$/;
const THIS = /^(?:this|dieses|diesen|ce|este|questo|deze)$/;
const NEXT = /^(?:next|nxt|nächsten|kommenden|próximo|proximo|prossimo|volgende|komende)$/;

/** The month behind a weekday or a weekend. */
export function monthSaidAt(tokens: Tokens, index: number): MonthSaid | undefined {
  const word = (at: number): string => tokens[at]?.lower ?? '';
  if (tokens[index]?.breaks !== 0) return undefined;
  // "d'août" is one word.
  const short = /^d'(\p{L}+)$/u.exec(word(index))?.[1];
  const elided = short === undefined ? undefined : monthWord(short);
  if (elided !== undefined)
    return { month: elided, year: yearAt(tokens, index + 1)?.year, next: yearAt(tokens, index + 1)?.next ?? index + 1 };
  if (!OF.test(word(index))) return undefined;
  const month = monthAt(tokens, index + 1);
  if (month) {
    const of = /^(?:de|del)$/.test(word(month.next)) ? 1 : 0;
    const year = yearAt(tokens, month.next + of);
    return { month: month.month, year: year?.year, next: year?.next ?? month.next };
  }
  const at = ARTICLE.test(word(index + 1)) ? index + 2 : index + 1;
  const said = NEXT.test(word(at)) ? 1 : THIS.test(word(at)) ? 0 : undefined;
  const name = said === undefined ? at : at + 1;
  if (!MONTH.test(word(name))) return undefined;
  const behind = /^(?:prochain|próximo|prossimo)$/.test(word(name + 1)) || (word(name + 1) === 'que' && word(name + 2) === 'viene');
  return {
    month: 0,
    year: undefined,
    ahead: behind ? 1 : (said ?? 0),
    next: behind ? name + (word(name + 1) === 'que' ? 3 : 2) : name + 1,
  };
}

const LAST = /^(?:last|final|letzte[rnms]?|dernier|dernière|últim[oa]|ultim[oa]|l'ultim[oa]|laatste)$/;
const places: readonly RegExp[] = [
  /^(?:erste[rnms]?|premier|première|primer[oa]?|prim[oa]|eerste)$/,
  /^(?:zweite[rnms]?|deuxième|second[oa]?|segund[oa]|tweede)$/,
  /^(?:dritte[rnms]?|troisième|tercer[oa]?|terz[oa]|derde)$/,
  /^(?:vierte[rnms]?|quatrième|cuart[oa]|quart[oa]|vierde)$/,
];
const ENDING = /^(?:e|de|ste|ème|eme|º|°|ª|\.)$/;
const MOST = 5;

const LAST_BUT_ONE = /^(?:penultimate|vorletzte[rnms]?|avant-dernier|avant-dernière|penúltim[oa]|penultim[oa]|voorlaatste)$/;

/** "penultimate", "last but one", "second to last", "second-last", "next-to-last": the index behind it. */
function lastButOneAt(tokens: Tokens, index: number): number | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  if (LAST_BUT_ONE.test(word(0))) return index + 1;
  if (word(0) === 'last' && word(1) === 'but' && word(2) === 'one') return index + 3;
  if (word(0) !== 'second' && word(0) !== 'next') return undefined;
  const mark = word(1) === '-' ? 1 : 0;
  if (word(0) === 'second' && word(1 + mark) === 'last') return index + 2 + mark;
  if (word(1 + mark) !== 'to') return undefined;
  const other = word(2 + mark) === '-' ? 1 : 0;
  return word(2 + mark + other) === 'last' ? index + 3 + mark + other : undefined;
}

/** The place of a day in its month: -1 for the last, -2 for the last but one. */
export function placeAt(tokens: Tokens, index: number): { nth: number; next: number } | undefined {
  const word = tokens[index]?.lower ?? '';
  const before = lastButOneAt(tokens, index);
  if (before !== undefined) return { nth: -2, next: before };
  if (LAST.test(word)) return { nth: -1, next: index + 1 };
  const abroad = places.findIndex((place) => place.test(word));
  const spoken = ordinalWord(word) ?? (abroad < 0 ? undefined : abroad + 1);
  if (spoken !== undefined) return spoken <= MOST ? { nth: spoken, next: index + 1 } : undefined;
  const number = tokens[index]?.num;
  if (number === undefined || number < 1 || number > MOST) return undefined;
  if (tokens[index + 1]?.tight && ENDING.test(tokens[index + 1]?.lower ?? '')) return { nth: number, next: index + 2 };
  const day = dayAt(tokens, index);
  return day?.ordinal ? { nth: day.day, next: day.next } : undefined;
}

/**
 * The end of a month or a year, in several languages: "by the end of May", "bis Ende Juli", "d'ici la fin du mois", "entro fine gennaio", "antes de fin de mes", "vóór eind mei".
 */
import { monthAt, yearAt, type Atom, type Tokens } from './pieces.ts';

/** With one of these before it the last day of the month is meant. */
const CLOSING = /^(?:bis|spätestens|entro|avant|ici|d'ici|jusqu'à|antes|hasta|voor|vóór|tegen|uiterlijk|før|innan)$/;
const SMALL = /^(?:zum|spätestens|la|le|de|a|el|het|il)$/;
const END = /^(?:ende|fin|fine|final|finales|eind|einde)$/;
const OF = /^(?:des|du|de|d'|del|van|von|vom|di)$/;
const THIS = /^(?:diesem|dieses|de|het|este|questo|deze|ce)$/;
const MONTH = /^(?:monats?|mois|mes|mese|maand)$/;
/** So many small words stand between the word for a closing date and the end. */
const MOST_SMALL = 2;

const ENGLISH = /^(?:by|before|until|till|til|than|to|through)$/;
const DECEMBER = 12;

/** "by the end of May", "before the end of this month": with a word for a closing date it is the last day; "at the end of May" is no day. */
function endOfMonth(tokens: Tokens, index: number): Atom | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  if (!ENGLISH.test(word(-1))) return undefined;
  const at = word(0) === 'the' ? 1 : 0;
  if (word(at) !== 'end' || word(at + 1) !== 'of') return undefined;
  const which = word(at + 2);
  if (/^(?:the|this|next)$/.test(which) && word(at + 3) === 'month')
    return { first: index, next: index + at + 4, relative: { kind: 'monthEnd', ahead: which === 'next' ? 1 : 0 } };
  const month = monthAt(tokens, index + at + 2);
  if (!month) return undefined;
  const year = yearAt(tokens, month.next);
  return { first: index, next: year?.next ?? month.next, relative: { kind: 'monthEnd', month: month.month, year: year?.year } };
}

/** "by the close of September", "by month-end", "before the year is out", "by the end of the year" */
function endInEnglish(tokens: Tokens, index: number): Atom | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  if (!ENGLISH.test(word(-1))) return undefined;
  const at = word(0) === 'the' ? 1 : 0;
  const dash = word(at + 1) === '-' ? 1 : 0;
  const ends = { first: index, next: index + at + 2 + dash };
  if (word(at) === 'month' && word(at + 1 + dash) === 'end') return { ...ends, relative: { kind: 'monthEnd', ahead: 0 } };
  const yearEnd = { kind: 'monthEnd', month: DECEMBER, year: undefined } as const;
  if (/^year(?:'s)?$/.test(word(at)) && word(at + 1 + dash) === 'end') return { ...ends, relative: yearEnd };
  if (word(at) === 'year' && word(at + 1) === 'is' && /^(?:out|over)$/.test(word(at + 2)))
    return { first: index, next: index + at + 3, relative: yearEnd };
  if (/^(?:end|close)$/.test(word(at)) && word(at + 1) === 'of' && /^(?:the|this)$/.test(word(at + 2)) && word(at + 3) === 'year')
    return { first: index, next: index + at + 4, relative: yearEnd };
  const month = word(at) === 'close' && word(at + 1) === 'of' ? monthAt(tokens, index + at + 2) : undefined;
  return month && { first: index, next: month.next, relative: { kind: 'monthEnd', month: month.month, year: undefined } };
}

/** The last day of a month; `undefined` where no word for a closing date leads to it. */
export function monthEndAt(tokens: Tokens, index: number): Atom | undefined {
  const word = (at: number): string => tokens[at]?.lower ?? '';
  const english = endOfMonth(tokens, index) ?? endInEnglish(tokens, index);
  if (english || !END.test(word(index))) return english;
  let lead = index - 1;
  while (index - lead <= MOST_SMALL && SMALL.test(word(lead)) && !CLOSING.test(word(lead))) lead--;
  if (!CLOSING.test(word(lead))) return undefined;
  let at = index + 1;
  if (OF.test(word(at))) at++;
  if (THIS.test(word(at))) at++;
  if (MONTH.test(word(at))) return { first: index, next: at + 1, relative: { kind: 'monthEnd', ahead: 0 } };
  const month = monthAt(tokens, at);
  if (!month) return undefined;
  const year = yearAt(tokens, month.next);
  return { first: index, next: year?.next ?? month.next, relative: { kind: 'monthEnd', month: month.month, year: year?.year } };
}

/**
 * What joins the first and the last day of a run, in several words too: "up to and including", "tot en met", "fino a", "jusqu'au".
 */
import { monthWord } from '../words.ts';
import { weekdayAt, type Tokens } from './pieces.ts';

/** What joins the two ends of a run in one word. */
export const RANGE_WORDS: ReadonlySet<string> = new Set(
  "to through thru until till til - > bis au al tot hasta até jusqu'au jusqu'à".split(' '),
);

/** Index behind the words between the first and the last day of a run. */
export function rangeAt(tokens: Tokens, index: number): number | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  // "the night of Friday 11 into Saturday 12"
  if (word(0) === 'into') return index + 1;
  if (word(0) === 'going' && word(1) === 'into') return index + 2;
  if (word(0) === 'up' && word(1) === 'to') return word(2) === 'and' && word(3) === 'including' ? index + 4 : index + 2;
  if (word(0) === 't' && word(1) === '/' && word(2) === 'm') return index + 3;
  if (word(0) === 'tot' && word(1) === 'en' && word(2) === 'met') return index + 3;
  if (word(0) === 'fino' && /^(?:a|al)$/.test(word(1))) return index + 2;
  if (word(0) === 'bis' && /^(?:einschließlich|inklusive|inkl|incl|zum|hin)$/.test(word(1))) return index + (word(2) === '.' ? 3 : 2);
  // "da lunedì 19 a venerdì 23 giugno", "de lundi 19 à vendredi 23"
  const named = /^(?:a|à)$/.test(word(0)) ? weekdayAt(tokens, index + 1) : undefined;
  if (named && tokens[named.next]?.num !== undefined) return index + 1;
  // "de 8 a 10 de julho", "dall'8 a 10 luglio"
  const until = /^(?:a|à)$/.test(word(0)) && tokens[index - 1]?.num !== undefined ? tokens[index + 1] : undefined;
  if (until?.num !== undefined && monthWord(/^(?:de|di)$/.test(word(2)) ? word(3) : word(2)) !== undefined) return index + 1;
  const marks = dotsAt(tokens, index) ?? slashOfIso(tokens, index);
  if (marks !== undefined) return marks;
  if (!RANGE_WORDS.has(word(0))) return undefined;
  const two = (word(0) === '-' && word(1) === '>') || (/^(?:through|thru)$/.test(word(0)) && word(1) === 'to');
  const including = /^(?:until|till|til|to)$/.test(word(0)) && word(1) === 'and' && word(2) === 'including';
  return index + (including ? 3 : two ? 2 : 1);
}

/** "2027-11-12..14", "12..14 November": two or three points without a gap, as programs write a run. */
function dotsAt(tokens: Tokens, index: number): number | undefined {
  let at = index;
  while (tokens[at]?.text === '.' && tokens[at]?.tight && at - index < 3) at++;
  return at - index > 1 && tokens[at]?.tight && tokens[at]?.num !== undefined ? at : undefined;
}

/** "2027-11-12/14": an interval as ISO 8601 writes it. */
function slashOfIso(tokens: Tokens, index: number): number | undefined {
  const date = tokens.slice(index - 5, index);
  const iso = index >= 5 && date[0]?.text.length === 4 && date[1]?.text === '-' && date[3]?.text === '-' && date[4]?.tight;
  return iso && tokens[index]?.text === '/' && tokens[index]?.tight && tokens[index + 1]?.tight ? index + 1 : undefined;
}

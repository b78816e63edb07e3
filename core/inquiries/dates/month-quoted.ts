/**
 * The month of a day that is told by its number alone in an answer to a quoted mail: "> the 8th or the 9th of February? - The 9th please."
 */
import { only } from '../parts/split.ts';
import type { Part } from '../parts/lines.ts';
import { tokensOf } from '../parts/tokens.ts';
import { sequencesOf, type Sequence } from './sequences.ts';

/** A line that names who wrote a mail and when. */
const HEADS = /\b(?:wrote|schrieb|schreef|escribió|a écrit|ha scritto)\b|^[>\s]*(?:date|sent|gesendet|envoyé|from|von)\s?:/i;
/** Nobody answers further down than this, in characters. */
const LONGEST_QUOTE = 4000;

/** The one month of the days that quoted mails name, where the message itself names none. */
export function monthQuoted(text: string, parts: readonly Part[], own: readonly Sequence[], today: Temporal.PlainDate): number | undefined {
  if (own.some(({ month, items }) => month !== undefined || items.some(({ atom }) => atom.month !== undefined))) return undefined;
  // An old mail below is answered no more; what is answered stands above the answer.
  const last = parts.findLastIndex(({ kind, start, end }) => kind === 'own' && text.slice(start, end).trim() !== '');
  const lines = only(text, parts.slice(0, last + 1), 'quoted')
    .trim()
    .slice(0, LONGEST_QUOTE)
    .split('\n');
  const quoted = lines
    .filter((line) => !HEADS.test(line.slice(0, 200)))
    .map((line) => line.replace(/^[>\s]+/, ''))
    .join('\n');
  const months = new Set(
    sequencesOf(tokensOf(quoted)).flatMap(({ items }) =>
      items.flatMap(({ atom }) =>
        atom.day !== undefined && atom.month !== undefined && !atom.slashed && (atom.year ?? today.year) >= today.year ? [atom.month] : [],
      ),
    ),
  );
  return months.size === 1 ? [...months][0] : undefined;
}

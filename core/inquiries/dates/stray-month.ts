/**
 * The month of a day that is written without one: "the Saturday of the May long weekend (the 22nd)".
 */
import { monthWord } from '../words.ts';
import type { Tokens } from './pieces.ts';
import type { Sequence } from './sequences.ts';

/** The one month that is named outside of every date: "the May long weekend". */
export function strayMonth(tokens: Tokens, found: readonly Sequence[]): number | undefined {
  const months = new Set<number>();
  for (const [index, token] of tokens.entries()) {
    const month = /^\p{Lu}\p{Ll}{2,}$/u.test(token.text) ? monthWord(token.lower) : undefined;
    const begins = index === 0 || token.breaks > 0 || /^[.!?,]$/.test(tokens[index - 1]?.text ?? '');
    if (month === undefined || begins || found.some(({ first, next }) => index >= first && index < next)) continue;
    months.add(month);
  }
  return months.size === 1 ? [...months][0] : undefined;
}

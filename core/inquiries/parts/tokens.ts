/**
 * Words, numbers and marks with where they stand: what the finders of dates, times and amounts read instead of letters.
 */

export type Token = {
  text: string;
  lower: string;
  /** The value of a run of digits. */
  num: number | undefined;
  start: number;
  end: number;
  /** True when nothing stands between this token and the one before. */
  tight: boolean;
  /** Line breaks between this token and the one before. */
  breaks: number;
};

const TOKEN = /\d+|[\p{L}\p{M}]+(?:'[\p{L}\p{M}]+)*|[^\s]/gu;
/** More digits than this are no date, time or price. */
const LONGEST_NUMBER = 9;

export function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  let before = 0;
  for (const match of text.matchAll(TOKEN)) {
    const word = match[0];
    const start = match.index;
    const gap = text.slice(before, start);
    const digits = /^\d/.test(word);
    tokens.push({
      text: word,
      lower: word.toLowerCase(),
      num: digits && word.length <= LONGEST_NUMBER ? Number(word) : undefined,
      start,
      end: start + word.length,
      tight: gap === '' && start > 0,
      breaks: gap.includes('\n') ? gap.split('\n').length - 1 : 0,
    });
    before = start + word.length;
  }
  return tokens;
}

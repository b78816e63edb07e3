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
  return withoutFillers(tokens);
}

/** What a voice says while it thinks. */
const FILLER = /^(?:u+h*m+|u+h+|er+m*|ehm|hm+|ähm?|öhm|euh)$/;
/** Words elsewhere: "um 9", "er". */
const A_WORD = /^(?:um|er)$/;
/** Words that lead on: no comma belongs behind them. */
const LEADS_ON = /^(?:the|an?|on|of|at|in|for|it's|is|from|to|by|about)$/;

/** "the, um, twentieth... of June" is the twentieth of June. */
function withoutFillers(tokens: readonly Token[]): Token[] {
  const said: Token[] = [];
  let [at, breaks] = [0, 0];
  while (at < tokens.length) {
    const token = tokens[at] as Token;
    const [last, next] = [said.at(-1), tokens[at + 1]];
    if (FILLER.test(token.lower) && (!A_WORD.test(token.lower) || (last?.text === ',' && next?.text === ','))) {
      const comma = next?.text === ',' || next?.text === '.';
      if (last?.text === ',' && comma && LEADS_ON.test(said.at(-2)?.lower ?? '')) said.pop();
      breaks += token.breaks;
      at += comma ? 2 : 1;
      if (comma) while (tokens[at]?.text === '.') at++;
      continue;
    }
    const dots = dotsAt(tokens, at);
    if (dots > 0 && tokens[at + dots]?.lower === 'of' && tokens[at + dots]?.breaks === 0) {
      at += dots;
      continue;
    }
    said.push(breaks > 0 ? { ...token, breaks: token.breaks + breaks } : token);
    breaks = 0;
    at++;
  }
  return said;
}

/** A longer row of dots is no pause. */
const MOST_DOTS = 5;

/** How many marks of a pause begin at a token. */
function dotsAt(tokens: readonly Token[], index: number): number {
  if (tokens[index]?.text === '\u2026') return 1;
  let at = index;
  while (at - index < MOST_DOTS && tokens[at]?.text === '.') at++;
  return at - index > 1 ? at - index : 0;
}

/**
 * How a message is typed, as far as it matters to names of towns: without capitals, or in a language in which "a" leads to a town.
 */
import type { Token } from '../parts/tokens.ts';

/** Messages typed without capitals name towns without them, too. */
export const isCasual = (text: string): boolean => {
  const head = text.slice(0, CASUAL_REACH);
  if ((head.match(/(?<![\p{L}])\p{Lu}\p{Ll}/gu)?.length ?? 0) <= 2 + head.length / 200) return true;
  const starts = [...head.matchAll(/[.!?]\s+(?<first>\p{L})/gu)].map(({ groups }) => groups?.['first'] ?? '');
  return starts.filter((first) => /\p{Ll}/u.test(first)).length > Math.max(2, starts.length * MOSTLY);
};
/** The share of sentences that begin small. */
const MOSTLY = 0.66;
/** How a message is typed shows in its beginning. */
const CASUAL_REACH = 4000;

/** Italian, Spanish and Portuguese say "a Lugano"; English says "a Leeds firm". */
export const isRomance = (text: string): boolean =>
  (text.match(
    /(?<![\p{L}'])(?:il|lo|di|del|della|che|una|con|per|para|el|los|las|por|sei|nostro|nostra|nuestra|nuestro|um|uma|não|são|está|estás|cerchiamo|buscamos)(?![\p{L}'])/giu,
  )?.length ?? 0) >= 3;
/** True where "a" leads to a name. */
export const leadsInRomance = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === 'a' && /^\p{Lu}/u.test(tokens[at + 1]?.text ?? '');

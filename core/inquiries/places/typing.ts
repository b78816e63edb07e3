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

/** Danish, Norwegian and Swedish say "i Malmö", "på Lillehammer". */
export const isNordic = (text: string): boolean =>
  (text.match(/(?<![\p{L}'])(?:og|och|jeg|jag|vi|til|till|som|ikke|inte|det|er|är|på|av|med|har|vår|vårt|kl)(?![\p{L}'])/giu)?.length ??
    0) >= NORDIC_WORDS && /(?<!\p{L})(?:og|och|jeg|jag|ikke|inte|på|är|vår)(?!\p{L})/iu.test(text);
const NORDIC_WORDS = 5;
export const leadsInNordic = (tokens: readonly Token[], at: number): boolean =>
  /^(?:i|på|ved|vid)$/.test(tokens[at]?.text ?? '') && /^\p{Lu}/u.test(tokens[at + 1]?.text ?? '');

/** Little words of a language that no other of these has, and the countries where it is spoken. */
const SPOKEN: readonly (readonly [words: string, countries: string])[] = [
  ['il|di|un|la|della|che|per|sono|siamo|è|una|nel|alle|dalle|cerchiamo|vorremmo', 'IT CH SM'],
  ['der|und|das|wir|für|mit|ist|eine|einen|sie|nicht|zum|suchen|den|bei', 'DE AT CH LI LU'],
  ['le|la|un|les|des|nous|pour|avec|est|une|vous|du|au|notre|cherchons', 'FR BE CH LU MC'],
  ['wij|het|een|voor|zijn|niet|onze|graag|zoeken|jullie|aan', 'NL BE'],
  ['el|la|un|los|las|para|una|con|somos|nuestra|nuestro|por|buscamos|que|del', 'ES MX AR CL CO PE'],
  ['og|jeg|vi|til|ikke|på|det|er|som|av|vår|har|med', 'NO DK'],
  ['och|jag|vi|till|inte|på|det|är|som|för|vår|ett|med', 'SE'],
  ['um|uma|não|para|nossa|nosso|são|procuramos|dos|você|em', 'PT BR'],
];
const LEAST_WORDS = 4;
const LEAST_SHARE = 0.1;
/** The countries whose language a message is written in; none for English. */
export function countriesSpeaking(text: string): ReadonlySet<string> {
  const words =
    text
      .slice(0, CASUAL_REACH)
      .toLowerCase()
      .match(/[\p{L}']+/gu) ?? [];
  const counted = SPOKEN.map(([own, countries]) => {
    const little = new Set(own.split('|'));
    return { countries, count: words.filter((word) => little.has(word)).length };
  });
  const most = counted.reduce((best, one) => (one.count > best.count ? one : best));
  return new Set(most.count >= LEAST_WORDS && most.count >= words.length * LEAST_SHARE ? most.countries.split(' ') : []);
}

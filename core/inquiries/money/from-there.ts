/**
 * Whether who asks sits in the country of the job, where money of the same name is paid at home too: "$1,100" of somebody in Seattle who hires for Seattle is
 * in American dollars, wherever I live. Shown by a number to ring with that country's code, or by a town that they greet or write from.
 */

import { currencyOf } from './currency.ts';

/** Codes for calls (ITU-T E.164, from memory), of countries whose money shares its name with others'; one code for two countries shows nothing. */
const dialled: Readonly<Record<string, string>> = {
  '61': 'AU',
  '64': 'NZ',
  '65': 'SG',
  '852': 'HK',
  '886': 'TW',
  '679': 'FJ',
  '264': 'NA',
  '52': 'MX',
  '54': 'AR',
  '56': 'CL',
  '57': 'CO',
  '598': 'UY',
  '63': 'PH',
  '45': 'DK',
  '46': 'SE',
  '47': 'NO',
  '354': 'IS',
  '91': 'IN',
  '92': 'PK',
  '94': 'LK',
  '977': 'NP',
  '254': 'KE',
  '255': 'TZ',
  '256': 'UG',
  '971': 'AE',
  '212': 'MA',
};
/** "Hi from Seattle", "I'm writing from Calgary", "we're based in Dunedin" */
const FROM_TOWN =
  /(?:^|[\s,.!(])(?:[Hh]i|[Hh]ello|[Hh]ey|[Hh]iya|[Gg]reetings|[Gg]'day|[Kk]ia [Oo]ra|[Hh]owdy|(?:[Ww]riting|[Cc]alling|[Tt]exting|[Mm]essaging|[Ee]mailing)(?: (?:to you|you))?)(?: (?:there|all|again|Kit))?,? from (?:(?:down|up|over) (?:in|here in) |here in |sunny |rainy |snowy )?(\p{Lu}[\p{L}'-]+(?: \p{Lu}[\p{L}'-]+){0,2})|\b[Ww]e(?:'re| are) (?:based|located|over) in (\p{Lu}[\p{L}'-]+(?: \p{Lu}[\p{L}'-]+){0,2})/gu;
/** A greeting and whence it comes stand at the top. */
const TOP = 1500;

/** "+64 21 555 0140", "0064 ..." */
const CODE = /(?<![\d+])(?:\+|00)\s?([1-9](?:\s?\d){1,4})/g;

/**
 * True where the sender shows to be in a country whose money they name.
 * @param text what the sender wrote, with the signature
 * @param townIn the country of the largest known town of a name
 */
export function isFromThere(text: string, country: string, townIn: (town: string) => string | undefined): boolean {
  if (currencyOf(country) === undefined) return false;
  const codes = [...text.matchAll(CODE)].map(([, digits = '']) => digits.replaceAll(/\s/g, ''));
  const called = codes.flatMap((digits) => Object.keys(dialled).find((one) => digits.startsWith(one)) ?? []);
  if (called.length > 0) return called.every((one) => dialled[one] === country);
  return [...text.slice(0, TOP).matchAll(FROM_TOWN)].some(([, greeted, based]) => townIn(greeted ?? based ?? '') === country);
}

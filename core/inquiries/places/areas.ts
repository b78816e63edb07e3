/**
 * Countries and regions that are named without a town, and names that mean them rather than a town.
 */
import { foldName } from '../../places/fold.ts';
import type { GazetteerPlace } from '../../places/gazetteer.ts';
import type { Token } from '../parts/tokens.ts';
import { countryNamed } from './countries.ts';
import type { AreaHit } from './hits.ts';
import { areaNamed } from './names.ts';
import type { Hints } from './rank.ts';

/** "in Ontario", "in Belgium": the region at home or the country, not the town somewhere that is named after it. */
export function isRatherArea(folded: string, written: string, best: GazetteerPlace, { homeCountry }: Hints): boolean {
  const state = countryNamed(folded);
  const area = written.length > 3 || written !== written.toUpperCase() ? areaNamed(folded, written) : undefined;
  const people = best.people ?? 0;
  if (people >= GREAT_CITY) return false;
  if (state !== undefined) return state !== best.country;
  if (area === undefined || (area.country === best.country && foldName(best.region) === folded)) return false;
  return area.country === homeCountry || (best.country !== homeCountry && people < SMALL_TOWN);
}
export const SMALL_TOWN = 100_000;
const GREAT_CITY = 500_000;

/** "in Canada", "Wisconsin": a country or region named without a town. */
export function areaAt(text: string, tokens: readonly Token[], index: number, led: boolean): { hit: AreaHit; next: number } | undefined {
  const first = tokens[index];
  if (!first || !led) return undefined;
  const the = first.lower === 'the' ? 1 : 0;
  const start = tokens[index + the];
  if (!start || !/^\p{Lu}/u.test(start.text)) return undefined;
  for (let length = 4; length >= 1; length--) {
    const last = tokens[index + the + length - 1];
    if (!last || !/^\p{L}/u.test(last.text)) continue;
    const written = text.slice(start.start, last.end);
    if (written.length < 4 && !/^(?:USA|US|UK|UAE|BC|Goa)$/.test(written)) continue;
    const folded = foldName(written);
    const country = countryNamed(folded) ?? areaNamed(folded, written)?.country;
    if (country) return { hit: { start: start.start, end: last.end, country }, next: index + the + length };
  }
  return undefined;
}

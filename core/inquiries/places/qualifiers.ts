/**
 * What tells where a town is: ", ND", ", Ontario", "(Germany)", ", North Dakota, USA".
 */
import { foldName } from '../../places/fold.ts';
import type { GazetteerPlace } from '../../places/gazetteer.ts';
import { regionCode } from '../../places/regions.ts';
import type { Token } from '../parts/tokens.ts';
import { countryNamed } from './countries.ts';
import { areaNamed } from './names.ts';

type Tokens = readonly Token[];

/** Codes of states that are no words when typed small. */
const SAFE_CODE =
  /^(?:mn|wi|nd|sd|ia|il|mi|ny|nj|nc|sc|ca|tx|fl|az|nv|wa|ga|va|md|tn|ky|ks|ct|ut|nm|wv|vt|nh|ri|bc|ab|sk|mb|qc|ns|nb|nsw|qld|uk|usa|ont|minn|wis|wisc|mich|que|calif|colo)$/;

export type Qualifier = {
  country?: string;
  regionCountry?: string;
  region?: string;
  code?: string;
  next: number;
  comma: boolean;
  coded: boolean;
  /** A region that no list has stands between: ", Ogun State, Nigeria". */
  beyond?: true;
};

/** ", ND", ", Ontario", "(Germany)", ", North Dakota, USA" after a name. */
export function qualifierAt(text: string, tokens: Tokens, index: number): Qualifier | undefined {
  let at = index;
  const mark = tokens[at]?.text;
  const comma = mark === ',' || mark === '(' || mark === '-' || mark === '/';
  if (comma) at++;
  if (tokens[at]?.lower === 'in' && comma) at++;
  if (tokens[at]?.lower === 'the') at++;
  const first = tokens[at];
  if (!first || first.breaks > 1 || !/^\p{L}/u.test(first.text)) return undefined;
  for (let length = 4; length >= 1; length--) {
    const last = tokens[at + length - 1];
    if (!last || !/^\p{L}/u.test(last.text) || tokens.slice(at + 1, at + length).some((token) => token.breaks > 0 || token.text === ','))
      continue;
    const typed = text.slice(first.start, last.end);
    const written = length === 1 && SAFE_CODE.test(typed) && /^\p{Ll}/u.test(tokens[index - 1]?.text ?? '') ? typed.toUpperCase() : typed;
    if (length === 1 && written.length <= 3 && written !== written.toUpperCase() && !/^(?:Ont|Que|Cal|Wis|Ind|Pa|Va)$/.test(written))
      continue;
    // "Ipswich, I'll pick you up", "Postcode TN26"
    if (/^I['’]ll$/.test(written) || /^\d/.test(text.slice(last.end, last.end + 1))) continue;
    const folded = foldName(written);
    const area = areaNamed(folded, written);
    const country = countryNamed(folded);
    if (!area && !country) continue;
    const more = area && tokens[at + length]?.text === ',' ? qualifierAt(text, tokens, at + length) : undefined;
    const stated = more?.country ?? country;
    return {
      ...(stated ? { country: stated } : {}),
      ...(area ? { regionCountry: area.country, region: area.region } : {}),
      next: more?.next ?? at + length,
      comma: mark === ',' || mark === '(',
      coded: written === written.toUpperCase(),
      ...(/^[A-Z]{2}$/.test(written) ? { code: written } : {}),
    };
  }
  return mark === ',' || mark === '(' ? beyondRegion(text, tokens, at) : undefined;
}

/** What a region consists of, whose own name no list has. */
const REGION_WORDS = /^(?:of|the|de|del|della|di|da|du|des|région|province|provincia|departamento|estado|bezirk|landkreis|kreis)$/;
/** Words that make the name before them a region's. */
export const REGION =
  /^(?:state|province|region|county|prefecture|district|department|governorate|canton|coast|valley|islands|oblast|voivodeship)$/i;

/** ", Ogun State, Nigeria", ", Kanagawa, Japan" */
function beyondRegion(text: string, tokens: Tokens, at: number): Qualifier | undefined {
  let next = at;
  while (
    next - at < MOST_OF_REGION &&
    (next === at || tokens[next]?.breaks === 0) &&
    (/^\p{Lu}\p{Ll}/u.test(tokens[next]?.text ?? '') || REGION_WORDS.test(tokens[next]?.text ?? ''))
  )
    next++;
  if (next === at || tokens[next]?.text !== ',') return undefined;
  const state = qualifierAt(text, tokens, next);
  return state?.comma && (state.country ?? state.region) !== undefined ? { ...state, beyond: true } : undefined;
}
const MOST_OF_REGION = 4;

/** States whose codes are also those of a state or province elsewhere. */
export const australian: Record<string, string> = { WA: 'western australia', SA: 'south australia', NT: 'northern territory' };

/** Countries of whose regions only those are known that people travel to, by names of their own. */
const HOLIDAY_LANDS: ReadonlySet<string> = new Set(['IT', 'FR', 'ES', 'PT', 'GR', 'ID']);

export function fits(place: GazetteerPlace, qualifier: Qualifier): boolean {
  // "Perth (WA)", "Bratislava (SK)"
  if (qualifier.code !== undefined && place.country === 'AU' && australian[qualifier.code] === foldName(place.region)) return true;
  if (qualifier.code !== undefined && place.country === qualifier.code) return true;
  // "Batumi, Georgia" is in no state of America.
  if (place.country === 'GE' && qualifier.regionCountry === 'US' && /^(?:GA|Georgia)$/.test(qualifier.region ?? '')) return true;
  // "Évora (Alentejo)": the list has another name for what lies there.
  if (qualifier.regionCountry !== undefined && HOLIDAY_LANDS.has(qualifier.regionCountry) && qualifier.regionCountry === place.country)
    return true;
  const inRegion =
    qualifier.region !== undefined &&
    place.country === qualifier.regionCountry &&
    (foldName(place.region) === foldName(qualifier.region) || regionCode(place.country, place.region) === qualifier.region);
  if (qualifier.region !== undefined && inRegion) return true;
  return (
    qualifier.country !== undefined &&
    place.country === qualifier.country &&
    (qualifier.region === undefined || inRegion || qualifier.regionCountry !== qualifier.country)
  );
}

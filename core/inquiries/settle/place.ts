/**
 * Where the job is: the best-led town of the message, and its country when that is stated or beyond doubt.
 */
import type { Place } from '../../contract/parts.ts';
import { regionCode } from '../../places/regions.ts';
import type { GazetteerPlace } from '../../places/gazetteer.ts';
import { countryInWords } from '../places/countries.ts';
import { placeOf } from '../places/find.ts';
import type { AreaHit, PlaceHit } from '../places/hits.ts';
import type { Where } from './scene.ts';

export type PlaceRead = {
  name?: string;
  country?: string;
  found?: GazetteerPlace;
  where: Where[];
  countryWhere: Where[];
  ask?: { field: 'place' | 'country'; choices: { label: string; value: string; place?: Place }[] };
};

/** Hits this close in score are rivals. */
const RIVAL = 0.9;
const MOST_CHOICES = 4;

/** The countries that the place can be in: one where it is sure, else those of all that bear its name. */
export const countriesOf = ({ name, country, ask }: PlaceRead): string[] =>
  country === undefined ? (ask?.choices ?? []).flatMap(({ value, place }) => (value === name ? (place?.country ?? []) : [])) : [country];

function placeLabel(place: GazetteerPlace, called: string): string {
  const region = regionCode(place.country, place.region) ?? place.region;
  return [placeOf(place, called).name, region, countryInWords(place.country)].filter((part) => part !== '').join(', ');
}

/**
 * Decide on the town; two towns that are led equally well are a question.
 * @param home the country at home, where the message shows that it was written there: a town in no list is there, unless another country is named
 */
export function placeOfJob(towns: readonly PlaceHit[], areas: readonly AreaHit[], home?: string): PlaceRead {
  const ranked = towns.toSorted((a, b) => b.score - a.score || a.start - b.start);
  const first = ranked[0];
  // "Southend" in the subject, "Southend-on-Sea" in the message
  const best =
    first && (ranked.find((hit) => hit.candidates[0]?.key === first.candidates[0]?.key && hit.name.startsWith(`${first.name}-`)) ?? first);
  if (!best) {
    const countries = [...new Set(areas.map(({ country }) => country))];
    const area = areas[0];
    return countries.length === 1 && area ? { country: area.country, where: [], countryWhere: [area] } : { where: [], countryWhere: [] };
  }
  const same = (hit: PlaceHit): boolean =>
    (hit.candidates[0] !== undefined && hit.candidates[0].key === best.candidates[0]?.key) ||
    hit.name.toLowerCase() === best.name.toLowerCase();
  const rivals = ranked.filter((hit) => !same(hit) && best.score - hit.score < RIVAL);
  const where = [{ start: best.start, end: best.end }];
  if (rivals.length > 0 || best.open) {
    const choices = [best, ...rivals].slice(0, MOST_CHOICES).map((hit) => ({
      label: hit.candidates[0] ? placeLabel(hit.candidates[0], hit.name) : hit.name,
      value: hit.name,
      ...(hit.candidates[0] ? { place: placeOf(hit.candidates[0], hit.name) } : {}),
    }));
    const unique = [...new Map(choices.map((choice) => [choice.value, choice])).values()];
    const countries = new Set([best, ...rivals].map((hit) => (hit.sure ? hit.candidates[0]?.country : undefined)));
    // Of one whose other is in no list nobody knows the country.
    const only = countries.size === 1 && rivals.length > 0 ? [...countries][0] : undefined;
    return { where, countryWhere: where, ...(only ? { country: only } : {}), ask: { field: 'place', choices: unique } };
  }
  if (best.candidates.length === 0 && best.country === undefined) {
    const only = areas.length === 1 ? areas[0] : undefined;
    const abroad = areas.length > 0 || towns.some((hit) => (hit.country ?? hit.candidates[0]?.country ?? home) !== home);
    const country = only?.country ?? (abroad ? undefined : home);
    return { name: best.name, where, countryWhere: only ? [only] : country ? where : [], ...(country ? { country } : {}) };
  }
  if (best.country !== undefined) return { name: best.name, country: best.country, where, countryWhere: where };
  const surest = ranked.find((hit) => same(hit) && hit.sure);
  if (surest) {
    const found = surest.candidates[0] as GazetteerPlace;
    return { name: best.name, country: found.country, found, where, countryWhere: where };
  }
  const area = areas.find(({ country }) => best.candidates.some((place) => place.country === country));
  const sureCountry = best.countrySure ? best.candidates[0]?.country : area?.country;
  const pool = sureCountry === undefined ? best.candidates : best.candidates.filter((place) => place.country === sureCountry);
  const countryWhere = area && !best.countrySure ? [area] : where;
  if (pool.length === 1 && pool[0] && sureCountry !== undefined)
    return { name: best.name, country: pool[0].country, found: pool[0], where, countryWhere };
  const choices = pool
    .slice(0, MOST_CHOICES)
    .map((place) => ({ label: placeLabel(place, best.name), value: best.name, place: placeOf(place, best.name) }));
  return {
    name: best.name,
    where,
    countryWhere,
    ...(sureCountry === undefined ? {} : { country: sureCountry }),
    ask: { field: 'place', choices },
  };
}

/**
 * Which town a message means: by the words around its name, by region and country, by nearness to home, never by size alone.
 */
import type { Place } from '../../contract/parts.ts';
import { distanceKm, type Position } from '../../places/distance.ts';
import { foldName } from '../../places/fold.ts';
import type { Gazetteer, GazetteerPlace } from '../../places/gazetteer.ts';
import { regionCode } from '../../places/regions.ts';
import { placesNamed } from '../../places/search.ts';
import type { Token } from '../parts/tokens.ts';
import { monthWord, weekdayWord } from '../words.ts';
import { countryNamed } from './countries.ts';
import { aliasOf, areaNamed, commonWords } from './names.ts';

export type PlaceHit = {
  start: number;
  end: number;
  name: string;
  /** Every place that it can be, the likeliest first. */
  candidates: GazetteerPlace[];
  /** True when the first candidate is the one beyond doubt. */
  sure: boolean;
  score: number;
};
export type AreaHit = { start: number; end: number; country: string };
export type Hints = { home: Position | undefined; homeCountry: string | undefined; countries: ReadonlySet<string> };

type Tokens = readonly Token[];

/** More names than this are a list of towns, not an inquiry. */
const MOST_NAMES = 3000;
const LONGEST_NAME = 5;

const near = /^(?:in|near|outside|around|to|at|into|for|from|over|across|downtown|central|greater|north|south|east|west|just)$/;
const label = /^(?:location|venue|where|city|place|town|ort|lieu|lugar|luogo|plaats)$/;
/** Towns after these words are where people live or work, or where another job is. */
const NOT_THE_JOB =
  /\b(?:based (?:in|near|out of)|(?:live|living|located|headquartered|offices?|hq|studio) (?:is |are )?(?:in|near)|(?:i'm|we're|i am|we are|team|crew|people|guests|delegates|speakers|attendees|clients?|colleagues?|flying|fly|coming|driving|travel(?:l?ing)?|usually|normally|originally|us|friend|hails?|down|up) (?:(?:in|over|up|down|out|all the way) )?from|last (?:year|time|month)(?:'s)? (?:\w+ )?(?:in|at)|university of|(?:bank|city|port|state|college|museum|friends|chamber) of|used to|greetings from|hello from|writing from|not (?:in|to)|rather than|instead of|(?:our|their|the) (?:\w+ )?(?:office|branch|team|hq|headquarters) (?:is )?in|moved from|fresh from|back from|straight from|en route to|before (?:going|heading) to|your .{0,20} (?:film|video|work) (?:in|for)|heard .{0,30} from|you (?:did|shot|filmed) (?:\w+ ){0,4}(?:in|at))\s?$/i;

/** The name that begins at a token, longest first. */
function namedAt(
  gazetteer: Gazetteer,
  text: string,
  tokens: Tokens,
  index: number,
  home: Position | undefined,
): { places: GazetteerPlace[]; next: number; name: string } | undefined {
  const first = tokens[index];
  if (!first || first.num !== undefined || !/^\p{L}/u.test(first.text)) return undefined;
  for (let length = LONGEST_NAME; length >= 1; length--) {
    const last = tokens[index + length - 1];
    if (!last || !/^[\p{L}]/u.test(last.text)) continue;
    if (tokens.slice(index + 1, index + length).some((token) => token.breaks > 1 || /^[,;:!?()]$/.test(token.text))) continue;
    const name = text.slice(first.start, last.end).replace(/\s+/g, ' ');
    if (name.length > 60) continue;
    const places = placesNamed(gazetteer, aliasOf(foldName(name)) ?? name, home);
    if (places.length > 0) return { places, next: index + length, name };
  }
  return undefined;
}

type Qualifier = { country?: string; regionCountry?: string; region?: string; next: number };

/** ", ND", ", Ontario", "(Germany)", ", North Dakota, USA" after a name. */
function qualifierAt(text: string, tokens: Tokens, index: number): Qualifier | undefined {
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
    if (!last || tokens.slice(at + 1, at + length).some((token) => token.breaks > 0 || token.text === ',')) continue;
    const written = text.slice(first.start, last.end);
    if (length === 1 && written.length <= 3 && written !== written.toUpperCase() && !/^(?:Ont|Que|Cal|Wis|Ind|Pa|Va)$/.test(written))
      continue;
    const folded = foldName(written);
    const area = areaNamed(folded, written);
    const country = countryNamed(folded);
    if (!area && !country) continue;
    // Without a comma a two-letter word in capitals may be anything but the region ("Duluth MN" is fine, "Paris IT team" is not).
    const dotted = tokens[at + length]?.text === '.' ? 0 : 0;
    const more = area && tokens[at + length]?.text === ',' ? qualifierAt(text, tokens, at + length) : undefined;
    return {
      ...(country ? { country } : {}),
      ...(area ? { regionCountry: area.country, region: area.region } : {}),
      ...(more?.country ? { country: more.country } : {}),
      next: more?.next ?? at + length + dotted,
    };
  }
  return undefined;
}

function fits(place: GazetteerPlace, qualifier: Qualifier): boolean {
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

/** Size weighed with nearness: what a person at this home most likely means. */
function weightOf(place: GazetteerPlace, hints: Hints): number {
  const size = Math.log10((place.people ?? 1000) + 1000);
  const far = hints.home ? 1.2 * Math.log10(1 + distanceKm(hints.home, place) / 100) : 0;
  const country = hints.countries.size > 0 ? (hints.countries.has(place.country) ? 1.5 : 0) : place.country === hints.homeCountry ? 0.6 : 0;
  return size - far + country;
}

/** How much the likeliest must outweigh the next to be taken without asking. */
const CLEAR_LEAD = 1.3;
/** Namesakes within this distance are one place in two lists. */
const SAME_PLACE_KM = 30;

function ranked(places: readonly GazetteerPlace[], hints: Hints): { candidates: GazetteerPlace[]; sure: boolean } {
  const cities = places.filter((place) => place.kind !== 'airport');
  const weighed = (cities.length > 0 ? cities : [...places])
    .map((place) => ({ place, weight: weightOf(place, hints) }))
    .sort((a, b) => b.weight - a.weight);
  const first = weighed[0];
  if (!first) return { candidates: [], sure: false };
  const apart = weighed.slice(1).filter(({ place }) => distanceKm(first.place, place) > SAME_PLACE_KM);
  const second = apart[0];
  return {
    candidates: [first, ...apart].map(({ place }) => place),
    sure: second === undefined || first.weight - second.weight >= CLEAR_LEAD,
  };
}

/** Towns that a text names, and regions or countries that it names alone. */
export function placesIn(
  text: string,
  tokens: Tokens,
  gazetteer: Gazetteer,
  hints: Hints,
  taken: (index: number) => boolean,
): { towns: PlaceHit[]; areas: AreaHit[] } {
  const towns: PlaceHit[] = [];
  const areas: AreaHit[] = [];
  let tried = 0;
  for (let index = 0; index < tokens.length && tried < MOST_NAMES; index++) {
    const token = tokens[index];
    if (!token || token.num !== undefined || taken(index) || !/^\p{L}/u.test(token.text)) continue;
    const capital = /^\p{Lu}/u.test(token.text);
    const before = tokens[index - 1];
    const led = before !== undefined && near.test(before.lower) && before.breaks <= 1;
    const labelled = before?.text === ':' && label.test(tokens[index - 2]?.lower ?? '');
    if (!capital && !led && !labelled) continue;
    if (monthWord(token.lower) !== undefined && tokens[index + 1]?.num !== undefined) continue;
    if (weekdayWord(token.lower) !== undefined) continue;
    tried++;
    const found = namedAt(gazetteer, text, tokens, index, hints.home);
    if (!found) {
      const area = areaAt(text, tokens, index, led);
      if (area) {
        areas.push(area.hit);
        index = area.next - 1;
      }
      continue;
    }
    const last = tokens[found.next - 1] as Token;
    const single = found.next - index === 1;
    const folded = foldName(found.name);
    const common = commonWords.has(folded) || (single && folded.length <= 2);
    const qualifier = qualifierAt(text, tokens, found.next);
    const qualified = qualifier ? found.places.filter((place) => fits(place, qualifier)) : [];
    const pool = qualified.length > 0 ? qualified : found.places;
    const { candidates, sure } = ranked(pool, hints);
    const best = candidates[0];
    if (!best) continue;
    const lead = text.slice(Math.max(0, token.start - 60), token.start);
    const away = NOT_THE_JOB.test(lead);
    const sentenceStart = before === undefined || /^[.!?:]$/.test(before.text) || before.breaks > 0;
    const afterCapital =
      before !== undefined &&
      before.breaks === 0 &&
      /^\p{Lu}\p{Ll}/u.test(before.text) &&
      !near.test(before.lower) &&
      weekdayWord(before.lower) === undefined &&
      monthWord(before.lower) === undefined;
    const beforeCapital =
      /^\p{Lu}/u.test(tokens[found.next]?.text ?? '') &&
      (tokens[found.next]?.breaks ?? 1) === 0 &&
      qualified.length === 0 &&
      monthWord(tokens[found.next]?.lower ?? '') === undefined &&
      weekdayWord(tokens[found.next]?.lower ?? '') === undefined;
    const people = best.people ?? 0;
    let score = 0;
    if (led)
      score +=
        before.lower === 'for' || before.lower === 'from' || before.lower === 'over' || before.lower === 'to' || before.lower === 'across'
          ? 1
          : 3;
    if (labelled) score += 4;
    if (qualified.length > 0) score += common && !led ? 3 : 4;
    if (before?.text === ',' && /^\p{Lu}/u.test(tokens[index - 2]?.text ?? '')) score += 1;
    if (!capital) score -= people >= 50_000 && !common ? 0.5 : 2;
    if (common) score -= qualified.length > 0 ? 0 : 2.5;
    if (!led && !labelled && qualified.length === 0) score += people >= 100_000 ? 0.5 : people >= 20_000 ? 0 : -1;
    if (sentenceStart && single && qualified.length === 0 && !labelled) score -= 0.5;
    if (afterCapital && qualified.length === 0) score -= 2;
    if (beforeCapital) score -= led ? 1 : 2;
    if (away) score -= 6;
    if (score < 0.4) {
      if (single || capital) {
        const area = areaAt(text, tokens, index, led);
        if (area && !away) areas.push(area.hit);
      }
      continue;
    }
    const written = found.name;
    const same = written.toLowerCase() === best.name.toLowerCase();
    towns.push({
      start: token.start,
      end: last.end,
      name: same ? best.name : titled(written),
      candidates,
      sure: sure || (qualified.length > 0 && candidates.length === 1),
      score,
    });
    index = (qualified.length > 0 ? (qualifier as Qualifier).next : found.next) - 1;
  }
  return { towns, areas };
}

const titled = (name: string): string =>
  /\p{Lu}/u.test(name) ? name : name.replace(/(?<![\p{L}'])\p{Ll}/gu, (letter) => letter.toUpperCase());

/** "in Canada", "Wisconsin": a country or region named without a town. */
function areaAt(text: string, tokens: Tokens, index: number, led: boolean): { hit: AreaHit; next: number } | undefined {
  const first = tokens[index];
  if (!first || !led) return undefined;
  const the = first.lower === 'the' ? 1 : 0;
  const start = tokens[index + the];
  if (!start || !/^\p{Lu}/u.test(start.text)) return undefined;
  for (let length = 4; length >= 1; length--) {
    const last = tokens[index + the + length - 1];
    if (!last || !/^\p{L}/u.test(last.text)) continue;
    const written = text.slice(start.start, last.end);
    if (written.length < 4 && !/^(?:USA|US|UK|UAE|BC)$/.test(written)) continue;
    const folded = foldName(written);
    const country = countryNamed(folded) ?? areaNamed(folded, written)?.country;
    if (country) return { hit: { start: start.start, end: last.end, country }, next: index + the + length };
  }
  return undefined;
}

/** A place as the contract has it. */
export function placeOf(place: GazetteerPlace): Place {
  const { key, name, region, country, lat, lon, zone } = place;
  return { key, name, region, country, lat, lon, zone };
}

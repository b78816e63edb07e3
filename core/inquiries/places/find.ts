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
  /** True when at least its country is. */
  countrySure: boolean;
  /** Known only by the region or country written after it. */
  country?: string;
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
  /\b(?:(?:planner|producer|coordinator|agency|company) (?:out of|here in|over in|in|from)|based (?:in|near|out of)|(?:live|living|headquartered) (?:in|near)|(?:i'm|we're|i am|we are|team|crew|people|guests|delegates|speakers|attendees|clients?|colleagues?|flying|fly|coming|driving|travel(?:l?ing)?|usually|normally|originally|us|friend|hails?|down|up) (?:(?:in|over|up|down|out|all the way) )?from|last (?:year|time|month)(?:'s)? (?:\w+ )?(?:in|at)|university of|(?:bank|city|port|state|college|museum|friends|chamber) of|used to|greetings from|hello from|writing from|not (?:in|to)|rather than|instead of|not|(?:our|their|the) (?:\w+ )?(?:office|branch|team|hq|headquarters) (?:is )?in|moved from|fresh from|back from|straight from|en route to|before (?:going|heading) to|your .{0,20} (?:film|video|work) (?:in|for)|heard .{0,30} from|you (?:did|shot|filmed) (?:\w+ ){0,4}(?:in|at))\s?$/i;

const airportTowns = new WeakMap<Gazetteer, Map<string, GazetteerPlace[]>>();
const AIRPORT = /\s(?:(?:city|international|municipal|regional|county|domestic|intl|memorial)\s)*(?:airport|aerodrome|airfield).*$/i;

/** Towns that the list has only by their airport. */
function airportTown(gazetteer: Gazetteer, folded: string): GazetteerPlace[] {
  let towns = airportTowns.get(gazetteer);
  if (!towns) {
    towns = new Map();
    for (const place of gazetteer) {
      if (place.kind !== 'airport') continue;
      const town = foldName(place.name.replace(AIRPORT, ''));
      towns.set(town, [...(towns.get(town) ?? []), place]);
    }
    airportTowns.set(gazetteer, towns);
  }
  return towns.get(folded) ?? [];
}

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
    const alias = aliasOf(foldName(name));
    const places = [
      ...(alias === undefined ? [] : placesNamed(gazetteer, alias, home)),
      ...placesNamed(gazetteer, name, home),
      ...airportTown(gazetteer, foldName(name)),
    ];
    if (places.length > 0) return { places, next: index + length, name };
  }
  return undefined;
}

/** Codes of states that are no words when typed small. */
const SAFE_CODE =
  /^(?:mn|wi|nd|sd|ia|il|mi|ny|nj|nc|sc|ca|tx|fl|az|nv|wa|ga|va|md|tn|ky|ks|ct|ut|nm|wv|vt|nh|ri|bc|ab|sk|mb|qc|ns|nb|nsw|qld|uk|usa)$/;

type Qualifier = { country?: string; regionCountry?: string; region?: string; next: number; comma: boolean; coded: boolean };

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
    if (!last || !/^\p{L}/u.test(last.text) || tokens.slice(at + 1, at + length).some((token) => token.breaks > 0 || token.text === ','))
      continue;
    const typed = text.slice(first.start, last.end);
    const written = length === 1 && SAFE_CODE.test(typed) && /^\p{Ll}/u.test(tokens[index - 1]?.text ?? '') ? typed.toUpperCase() : typed;
    if (length === 1 && written.length <= 3 && written !== written.toUpperCase() && !/^(?:Ont|Que|Cal|Wis|Ind|Pa|Va)$/.test(written))
      continue;
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

/** Size weighed with nearness: what a person at this home most likely means. A city known all over the world is meant from afar, too. */
function weightOf(place: GazetteerPlace, hints: Hints): number {
  const people = place.people ?? AIRPORT_PEOPLE;
  const size = Math.log10(people + 1000) + (people > WORLD_CITY ? 0.5 : 0);
  const far = hints.home ? 1.5 * Math.log10(1 + distanceKm(hints.home, place) / 100) : 0;
  const country = hints.countries.size > 0 ? (hints.countries.has(place.country) ? 1.5 : 0) : place.country === hints.homeCountry ? 0.9 : 0;
  return size - far + country;
}

/** An airport counts like a town of this many people. */
const AIRPORT_PEOPLE = 20_000;
const AIRPORT_KM = 80;
const WORLD_CITY = 3_000_000;
/** How much the likeliest must outweigh the next to be taken without asking: abroad, and in the same country. */
const CLEAR_LEAD = 1.2;
const LEAD_AT_HOME = 0.9;
/** Namesakes within this distance are one place in two lists. */
const SAME_PLACE_KM = 30;

type Ranked = { candidates: GazetteerPlace[]; sure: boolean; countrySure: boolean };

function ranked(places: readonly GazetteerPlace[], hints: Hints): Ranked {
  const cities = places.filter((place) => place.kind !== 'airport');
  // An airport stands for its town only where the list does not have the town.
  const airports = places.filter((place) => place.kind === 'airport' && !cities.some((city) => distanceKm(city, place) <= AIRPORT_KM));
  const weighed = [...cities, ...airports].map((place) => ({ place, weight: weightOf(place, hints) })).sort((a, b) => b.weight - a.weight);
  const first = weighed[0];
  if (!first) return { candidates: [], sure: false, countrySure: false };
  const apart = weighed.slice(1).filter(({ place }) => distanceKm(first.place, place) > SAME_PLACE_KM);
  const inside = apart.find(({ place }) => place.country === first.place.country);
  const abroad = apart.find(({ place }) => place.country !== first.place.country);
  const countrySure = abroad === undefined || first.weight - abroad.weight >= CLEAR_LEAD;
  // A small town abroad is as likely a nearer one that the list does not have, unless its name is borne by no other.
  const people = first.place.people ?? 0;
  const plausible =
    first.place.country === hints.homeCountry ||
    (people >= 200_000 && (people >= 1_000_000 || !hints.home || distanceKm(hints.home, first.place) <= 2500)) ||
    (people >= 50_000 && apart.length === 0) ||
    !hints.home ||
    distanceKm(hints.home, first.place) <= 400;
  const sure = plausible && countrySure && (inside === undefined || first.weight - inside.weight >= LEAD_AT_HOME);
  return { candidates: [first, ...apart].map(({ place }) => place), sure, countrySure: plausible && countrySure };
}

/** "in Bristol last year" */
const AFTERWARDS = /^,?\s(?:last (?:year|month|week|time|spring|summer|autumn|fall|winter)|years? ago|back in|in 20\d\d\b(?=.{0,3}$))/i;

/** What stands around a name, as far as it tells whether a town is meant. */
type Setting = {
  led: boolean;
  strongly: boolean;
  labelled: boolean;
  slot: boolean;
  away: boolean;
  afterCapital: boolean;
  beforeCapital: boolean;
  sentenceStart: boolean;
};

const COMES_TO =
  /\b(?:come|coming|drive|driving|travel|travelling|get|fly|head|make it|trip|bring\w*|up|down|out|over) (?:\w+ ){0,4}to\s$/i;
/** "at our Duluth warehouse", "at the Bismarck library" */
const VENUE =
  /^(?:office|offices|warehouse|plant|factory|hall|studio|campus|hotel|headquarters|hq|location|site|store|shop|library|arena|church|museum|school|theatre|theater|rink|stadium|gym|club|clinic|hospital|venue|branch|showroom|centre|center|auditorium|convention)$/;
const isDateWord = (token: Token | undefined): boolean =>
  token !== undefined && (token.num !== undefined || monthWord(token.lower) !== undefined || weekdayWord(token.lower) !== undefined);
const properName = (token: Token | undefined): boolean => token !== undefined && /^\p{Lu}\p{Ll}/u.test(token.text) && !isDateWord(token);

function settingOf(text: string, tokens: Tokens, index: number, next: number, taken: (index: number) => boolean): Setting {
  const [before, first, after] = [tokens[index - 1], tokens[index] as Token, tokens[next]];
  const lead = text.slice(Math.max(0, first.start - 60), first.start);
  const led = before !== undefined && near.test(before.lower) && before.breaks <= 1;
  const housed =
    before !== undefined &&
    /^(?:our|the)$/.test(before.lower) &&
    /^(?:at|in)$/.test(tokens[index - 2]?.lower ?? '') &&
    VENUE.test(after?.lower ?? '');
  const strongly = housed || (led && (!/^(?:for|from|over|to|across|just)$/.test(before.lower) || COMES_TO.test(lead)));
  const openBefore =
    before === undefined || first.breaks > 0 || /^[,.(:;/?!-]$|^still$/.test(before.lower) || taken(index - 1) || before.num !== undefined;
  const openAfter =
    after === undefined || after.breaks > 0 || /^[,.):;?!/-]$|^again$/.test(after.lower) || taken(next) || after.num !== undefined;
  return {
    led,
    strongly,
    labelled: before?.text === ':' && label.test(tokens[index - 2]?.lower ?? ''),
    slot: openBefore && openAfter,
    away: NOT_THE_JOB.test(lead) || AFTERWARDS.test(text.slice(tokens[next - 1]?.end ?? 0, (tokens[next - 1]?.end ?? 0) + 24)),
    afterCapital: before !== undefined && first.breaks === 0 && properName(before) && !near.test(before.lower),
    beforeCapital: after !== undefined && after.breaks === 0 && properName(after),
    sentenceStart: before === undefined || /^[.!?:]$/.test(before.text) || first.breaks > 0,
  };
}

/** How surely a town is meant by a name in its setting; below `ENOUGH` it is not taken. */
function scoreOf(
  setting: Setting,
  name: { single: boolean; common: boolean; capital: boolean; people: number; nearHome: boolean; qualified: boolean },
): number {
  const { led, strongly, labelled, slot } = setting;
  let score = strongly ? 3 : led ? 1 : 0;
  if (labelled) score += 4;
  if (name.qualified) score += 4;
  if (!led && !labelled && !name.qualified) {
    score += name.people >= 100_000 ? 0.5 : name.people >= 20_000 ? 0 : -0.5;
    if (slot) score += name.nearHome ? 1.5 : name.people >= 50_000 ? 1 : 0;
    if (setting.sentenceStart && name.single && !slot) score -= 0.5;
  }
  if (!name.capital) score -= name.common || (name.people < 20_000 && !name.nearHome) ? 2 : 0.5;
  if (name.common && !name.qualified) score -= 2.5;
  if (!name.qualified) score -= (setting.afterCapital ? 2 : 0) + (setting.beforeCapital ? (led ? 1 : 2) : 0);
  return setting.away ? score - 6 : score;
}

const ENOUGH = 0.4;
const NEAR_HOME_KM = 600;
/** Messages typed without capitals name towns without them, too. */
const isCasual = (text: string): boolean => (text.match(/(?<![\p{L}])\p{Lu}\p{Ll}/gu)?.length ?? 0) <= 1 + text.length / 200;

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
  const casual = isCasual(text);
  let tried = 0;
  for (let index = 0; index < tokens.length && tried < MOST_NAMES; index++) {
    const token = tokens[index];
    if (!token || token.num !== undefined || taken(index) || !/^\p{L}/u.test(token.text) || isDateWord(token)) continue;
    const capital = /^\p{Lu}/u.test(token.text);
    const led = near.test(tokens[index - 1]?.lower ?? '');
    if (!capital && !led && !(casual && token.text.length > 3)) continue;
    tried++;
    const found = namedAt(gazetteer, text, tokens, index, hints.home);
    const hit = found
      ? townAt(text, tokens, index, found, hints, taken, capital)
      : capital
        ? unlistedAt(text, tokens, index, taken)
        : undefined;
    if (hit) {
      const previous = towns.at(-1);
      // "Moorhead or Fargo": the second is led by what leads the first.
      if (previous && /^\s?(?:or|and|\/|&)\s?$/i.test(text.slice(previous.end, hit.hit.start)))
        hit.hit.score = Math.max(hit.hit.score, previous.score);
      towns.push(hit.hit);
      index = hit.next - 1;
      continue;
    }
    const area = areaAt(text, tokens, index, led);
    if (!area || NOT_THE_JOB.test(text.slice(Math.max(0, token.start - 60), token.start))) continue;
    areas.push(area.hit);
    index = area.next - 1;
  }
  return { towns, areas };
}

type Taken = (index: number) => boolean;
type Named = { places: GazetteerPlace[]; next: number; name: string };

function townAt(
  text: string,
  tokens: Tokens,
  index: number,
  found: Named,
  hints: Hints,
  taken: Taken,
  capital: boolean,
): { hit: PlaceHit; next: number } | undefined {
  const folded = foldName(found.name);
  const single = found.next - index === 1;
  const qualifier = qualifierAt(text, tokens, found.next);
  const qualified = qualifier ? found.places.filter((place) => fits(place, qualifier)) : [];
  // "Goa, India" is no Goa elsewhere; "Bayfield, WI" is none of those that the list has.
  if (qualifier && qualified.length === 0 && (qualifier.comma || qualifier.coded)) return unlistedAt(text, tokens, index, taken);
  const { candidates, sure, countrySure } = ranked(qualified.length > 0 ? qualified : found.places, hints);
  const best = candidates[0];
  if (!best) return undefined;
  const setting = settingOf(text, tokens, index, found.next, taken);
  const nearHome = hints.home !== undefined && distanceKm(hints.home, best) <= NEAR_HOME_KM;
  const common = commonWords.has(folded) || (single && folded.length <= 2);
  const score = scoreOf(setting, { single, common, capital, people: best.people ?? 0, nearHome, qualified: qualified.length > 0 });
  if (score < ENOUGH) return undefined;
  const last = tokens[found.next - 1] as Token;
  const name = found.name.toLowerCase() === best.name.toLowerCase() ? best.name : titled(found.name);
  return {
    hit: {
      start: (tokens[index] as Token).start,
      end: last.end,
      name,
      candidates,
      sure: sure || (qualified.length > 0 && candidates.length === 1),
      countrySure: countrySure || qualified.length > 0,
      score,
    },
    next: qualified.length > 0 ? (qualifier as Qualifier).next : found.next,
  };
}

/** A town that the list does not have, known by its region: "Bayfield, WI", "Lutsen MN". */
function unlistedAt(text: string, tokens: Tokens, index: number, taken: Taken): { hit: PlaceHit; next: number } | undefined {
  const first = tokens[index] as Token;
  for (let length = 3; length >= 1; length--) {
    const words = tokens.slice(index, index + length);
    const last = words.at(-1);
    if (
      !last ||
      words.length < length ||
      words.some((token, at) => !/^\p{Lu}\p{Ll}/u.test(token.text) || isDateWord(token) || (at > 0 && token.breaks > 0))
    )
      continue;
    const qualifier = qualifierAt(text, tokens, index + length);
    const country = qualifier?.regionCountry ?? qualifier?.country;
    if (!qualifier || country === undefined || !(qualifier.comma || qualifier.coded)) continue;
    const setting = settingOf(text, tokens, index, qualifier.next, taken);
    if (setting.away || commonWords.has(foldName(first.text)) || !(setting.led || setting.labelled || setting.slot)) return undefined;
    return {
      hit: {
        start: first.start,
        end: last.end,
        name: text.slice(first.start, last.end),
        candidates: [],
        sure: true,
        countrySure: true,
        country,
        score: setting.strongly ? 5 : 4,
      },
      next: qualifier.next,
    };
  }
  return besideDate(text, tokens, index, taken);
}

const NO_TOWN =
  /^(?:english|spanish|french|german|italian|person|studio|room|hall|hd|uhd|the|total|advance|addition|case|general|particular|private|public|quarter|week|spring|summer|autumn|fall|winter|morning|afternoon|evening|town|part|full)$/i;

/** "in Ilkley on 17 July": a name that no list has, led by "in" and next to a date. */
function besideDate(text: string, tokens: Tokens, index: number, taken: Taken): { hit: PlaceHit; next: number } | undefined {
  const [before, first] = [tokens[index - 1], tokens[index] as Token];
  if (before?.lower !== 'in' || NOT_THE_JOB.test(text.slice(Math.max(0, first.start - 60), first.start))) return undefined;
  let next = index;
  while (next - index < 3 && properName(tokens[next]) && (next === index || tokens[next]?.breaks === 0)) next++;
  const last = tokens[next - 1];
  if (next === index || !last || NO_TOWN.test(first.text) || commonWords.has(foldName(first.text)) || VENUE.test(last.lower))
    return undefined;
  const dateAfter = taken(next) || (/^(?:on|from|,|\(|this|next)$/.test(tokens[next]?.lower ?? '') && taken(next + 1));
  const dateBefore = taken(index - 2) || (tokens[index - 2]?.text === ')' && taken(index - 3));
  if (!dateAfter && !dateBefore) return undefined;
  return {
    hit: {
      start: first.start,
      end: last.end,
      name: text.slice(first.start, last.end),
      candidates: [],
      sure: false,
      countrySure: false,
      score: 3,
    },
    next,
  };
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

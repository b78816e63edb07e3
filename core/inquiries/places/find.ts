/**
 * Which town a message means: by the words around its name, by region and country, by nearness to home, never by size alone.
 */
import type { Place } from '../../contract/parts.ts';
import { distanceKm } from '../../places/distance.ts';
import { foldName } from '../../places/fold.ts';
import type { Gazetteer, GazetteerPlace } from '../../places/gazetteer.ts';
import type { Token } from '../parts/tokens.ts';
import { addressed, PHONE_NEXT, standsAlone } from './alone.ts';
import { countryNamed } from './countries.ts';
import { areaNamed, commonWords } from './names.ts';
import { fits, qualifierAt, type Qualifier } from './qualifiers.ts';
import { ranked, type Hints } from './rank.ts';
import { isDateWord, near, NOT_THE_JOB, properName, scoreOf, settingOf, VENUE } from './setting.ts';
import { namedAt, type Named } from './towns.ts';

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
  /** Nothing beside it says that it is a town: it counts only where no other name does. */
  faint?: true;
};
export type AreaHit = { start: number; end: number; country: string };

type Tokens = readonly Token[];

/** More names than this are a list of towns, not an inquiry. */
const MOST_NAMES = 3000;

const ENOUGH = 0.4;
const NEAR_HOME_KM = 600;
/** Messages typed without capitals name towns without them, too. */
const isCasual = (text: string): boolean => {
  const head = text.slice(0, CASUAL_REACH);
  return (head.match(/(?<![\p{L}])\p{Lu}\p{Ll}/gu)?.length ?? 0) <= 2 + head.length / 200;
};
/** How a message is typed shows in its beginning. */
const CASUAL_REACH = 4000;

/** Italian, Spanish and Portuguese say "a Lugano"; English says "a Leeds firm". */
const isRomance = (text: string): boolean =>
  (text.match(
    /(?<![\p{L}'])(?:il|lo|di|del|della|che|una|con|per|para|el|los|las|por|sei|nostro|nostra|nuestra|nuestro|um|uma|não|são|está|estás|cerchiamo|buscamos)(?![\p{L}'])/giu,
  )?.length ?? 0) >= 3;
const leadsInRomance = (tokens: Tokens, at: number): boolean => tokens[at]?.text === 'a' && /^\p{Lu}/u.test(tokens[at + 1]?.text ?? '');

/** Towns that a text names, and regions or countries that it names alone. */
export function placesIn(
  text: string,
  written: Tokens,
  gazetteer: Gazetteer,
  hints: Hints,
  taken: (index: number) => boolean,
): { towns: PlaceHit[]; areas: AreaHit[] } {
  const towns: PlaceHit[] = [];
  const areas: AreaHit[] = [];
  const faint: PlaceHit[] = [];
  const casual = isCasual(text);
  const plain = written.map((token) =>
    // "la ville d'Angers"
    /^[dl]'\p{Lu}/u.test(token.text) ? { ...token, text: token.text.slice(2), lower: token.lower.slice(2), start: token.start + 2 } : token,
  );
  const tokens = isRomance(text) ? plain.map((token, at) => (leadsInRomance(plain, at) ? { ...token, lower: 'à' } : token)) : plain;
  let tried = 0;
  for (let index = 0; index < tokens.length && tried < MOST_NAMES; index++) {
    const token = tokens[index];
    if (!token || token.num !== undefined || taken(index) || !/^\p{L}/u.test(token.text) || isDateWord(token)) continue;
    // "Yeo-Santos" is a person, "ada@northfield.example" an address.
    if (
      /[\p{L}\p{N}][-.@/]$/u.test(text.slice(Math.max(0, token.start - 2), token.start)) ||
      /^(?:@|[./]\p{L})/u.test(text.slice(token.end, token.end + 2))
    )
      continue;
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
    if (hit?.hit.faint) {
      faint.push(hit.hit);
      index = hit.next - 1;
      continue;
    }
    if (hit) {
      const previous = towns.at(-1);
      // "Moorhead or Fargo": the second is led by what leads the first, and none is meant rather than the other.
      const between = (one: PlaceHit | undefined): string => (one ? text.slice(one.end, Math.min(hit.hit.start, one.end + 8)) : '');
      if (previous && /^\s?(?:or|and|\/|&)\s?$/i.test(between(previous))) hit.hit.score = Math.max(hit.hit.score, previous.score);
      const [other] = [previous, faint.at(-1)].filter((one) => /^\s?(?:or|\/)\s?$/i.test(between(one)));
      if (other?.faint) towns.push({ ...other, score: hit.hit.score });
      else if (other) other.score = hit.hit.score;
      towns.push(hit.hit);
      index = hit.next - 1;
      continue;
    }
    const area = areaAt(text, tokens, index, led);
    if (!area || NOT_THE_JOB.test(text.slice(Math.max(0, token.start - 60), token.start))) continue;
    areas.push(area.hit);
    index = area.next - 1;
  }
  // One name of a town near home, told as "the Hibbing job" or "Tamworth pony club".
  if (towns.length === 0 && new Set(faint.map(({ name }) => name)).size === 1) towns.push(...faint);
  return { towns, areas };
}

type Taken = (index: number) => boolean;

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
  // "at St Mary's, Beverley" is a church.
  if (!best || (/^st\.? \p{L}+'s$/iu.test(found.name) && qualified.length === 0)) return undefined;
  const setting = settingOf(text, tokens, index, found.next, taken);
  const nearHome = hints.home !== undefined && distanceKm(hints.home, best) <= NEAR_HOME_KM;
  const common = commonWords.has(folded) || (single && folded.length <= 2);
  const score = scoreOf(setting, { single, common, capital, people: best.people ?? 0, nearHome, qualified: qualified.length > 0 });
  const faint = score < ENOUGH;
  if (faint && addressed(text, tokens, index)) return undefined;
  // "Dax 507-555-0183"
  if (
    !setting.led &&
    qualified.length === 0 &&
    PHONE_NEXT.test(text.slice(tokens[found.next - 1]?.end ?? 0, (tokens[found.next - 1]?.end ?? 0) + 12))
  )
    return undefined;
  if (
    faint &&
    !(
      nearHome &&
      sure &&
      !common &&
      !setting.away &&
      !setting.afterCapital &&
      standsAlone(text, tokens, found.next, setting, capital, best)
    )
  )
    return undefined;
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
      ...(faint ? { faint } : {}),
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
    if (
      setting.away ||
      NO_TOWN.test(first.text) ||
      commonWords.has(foldName(first.text)) ||
      !(setting.led || setting.labelled || setting.slot)
    )
      return undefined;
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
  /^(?:st|saint|sankt|san|santa|still|now|again|both|all|english|spanish|french|german|italian|person|studio|room|hall|hd|uhd|the|total|advance|addition|case|general|particular|private|public|quarter|week|spring|summer|autumn|fall|winter|morning|afternoon|evening|town|part|full)$/i;

/** "in Ilkley on 17 July": a name that no list has, led by "in" and next to a date; without one it is faint. */
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
  const dated = dateAfter || dateBefore;
  const name = text.slice(first.start, last.end);
  const folded = foldName(name);
  if (!dated && (countryNamed(folded) ?? areaNamed(folded, name)) !== undefined) return undefined;
  if (
    !dated &&
    (settingOf(text, tokens, index, next, taken).atHome ||
      !/^[.,;:?!)(]|^(?:and|for|at|with|we|is|are|has|have|wants?|needs?|that|which|who|where)$/.test(tokens[next]?.lower ?? '.'))
  )
    return undefined;
  return {
    hit: {
      start: first.start,
      end: last.end,
      name,
      candidates: [],
      sure: false,
      countrySure: false,
      score: 3,
      ...(dated ? {} : { faint: true as const }),
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

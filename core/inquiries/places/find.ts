/**
 * Which town a message means: by the words around its name, by region and country, by nearness to home, never by size alone.
 */
import type { Place } from '../../contract/parts.ts';
import { distanceKm } from '../../places/distance.ts';
import { foldName } from '../../places/fold.ts';
import type { Gazetteer, GazetteerPlace } from '../../places/gazetteer.ts';
import type { Token } from '../parts/tokens.ts';
import { addressed, isHome, isNamedAfter, isPartOf, isSomebody, isTypedSo, PHONE_NEXT, standsAlone } from './alone.ts';
import { amongTowns, eitherOf, withoutDays } from './among.ts';
import { areaAt, isRatherArea, SMALL_TOWN } from './areas.ts';
import type { AreaHit, PlaceHit } from './hits.ts';
import { commonWords, wordsAbroad } from './names.ts';
import { isWhose } from './origin.ts';
import { isWayHome } from './elsewhere.ts';
import { isMentionedAt } from './mentioned.ts';
import { fits, qualifierAt, type Qualifier } from './qualifiers.ts';
import { ranked, type Hints } from './rank.ts';
import { isDateWord, near, NOT_THE_JOB, scoreOf, settingOf, WRITTEN_FROM } from './setting.ts';
import { namedAt, type Named } from './towns.ts';
import { countriesSpeaking, isCasual, isNordic, isRomance, leadsInNordic, leadsInRomance } from './typing.ts';
import { HYPHENED, unlistedAt } from './unlisted.ts';

type Tokens = readonly Token[];

/** More names than this are a list of towns, not an inquiry. */
const MOST_NAMES = 3000;

const ENOUGH = 0.4;
/** "$1,500 in Singapore dollars" */
const OF_MONEY = /^ (?:dollars?|pounds?|francs?|pesos?|rupees?)(?!\p{L})/iu;
const MOVED_AWAY = 4;
/** What a large town scores of which nothing tells that it is meant. */
const BY_SIZE = 0.5;
const NEAR_HOME_KM = 600;
const CITY_NEAR_HOME = 50_000;
/** Towns that a text names, and regions or countries that it names alone. */
export function placesIn(
  text: string,
  written: Tokens,
  gazetteer: Gazetteer,
  known: Hints,
  taken: (index: number) => boolean,
): { towns: PlaceHit[]; areas: AreaHit[] } {
  const towns: PlaceHit[] = [];
  const areas: AreaHit[] = [];
  const faint: PlaceHit[] = [];
  const casual = isCasual(text);
  const hints = { ...known, spoken: countriesSpeaking(text) };
  const plain = written.map((token) =>
    // "la ville d'Angers"
    /^[dl]'\p{Lu}/u.test(token.text) ? { ...token, text: token.text.slice(2), lower: token.lower.slice(2), start: token.start + 2 } : token,
  );
  const leads = isRomance(text) ? leadsInRomance : isNordic(text) ? leadsInNordic : undefined;
  const tokens = leads ? plain.map((token, at) => (leads(plain, at) ? { ...token, lower: 'à' } : token)) : plain;
  let tried = 0;
  for (let index = 0; index < tokens.length && tried < MOST_NAMES; index++) {
    const token = tokens[index];
    if (!token || token.num !== undefined || taken(index) || !/^\p{L}/u.test(token.text) || isDateWord(token)) continue;
    // "Yeo-Santos" is a person, "ada@northfield.example" an address, "2MORO" a day.
    if (
      /\d$|[\p{L}\p{N}][-.@/]$/u.test(text.slice(Math.max(0, token.start - 2), token.start)) ||
      /^(?:@|[./]\p{L})/u.test(text.slice(token.end, token.end + 2))
    )
      continue;
    const capital = /^\p{Lu}/u.test(token.text);
    const led = near.test(tokens[index - 1]?.lower ?? '');
    if (!capital && !led && !(casual && token.text.length > 3)) continue;
    tried++;
    const found = namedAt(gazetteer, text, tokens, index, hints.home);
    const hit = found
      ? townAt(gazetteer, text, tokens, index, found, hints, taken, capital, casual)
      : capital
        ? unlistedAt(text, tokens, index, taken, hints.homeCountry)
        : undefined;
    if (hit && OF_MONEY.test(text.slice(hit.hit.end, hit.hit.end + 12))) continue;
    if (hit?.hit.faint) {
      const last = towns.at(-1);
      if (last && OR.test(text.slice(last.end, Math.min(hit.hit.start, last.end + 16)))) {
        last.open = true;
        towns.push({ ...hit.hit, score: last.score, open: true });
      } else faint.push(hit.hit);
      index = hit.next - 1;
      continue;
    }
    if (hit) {
      const previous = towns.at(-1);
      // "Moorhead or Fargo": the second is led by what leads the first, and none is meant rather than the other.
      const between = (one: PlaceHit | undefined): string => (one ? text.slice(one.end, Math.min(hit.hit.start, one.end + 16)) : '');
      if (previous && isPartOf(previous, hit.hit, between(previous))) previous.score -= MOVED_AWAY;
      if (previous && /^\s?(?:or|and|\/|&)\s?$/i.test(between(previous))) hit.hit.score = Math.max(hit.hit.score, previous.score);
      const [other] = [previous, faint.at(-1)].filter((one) => OR.test(between(one)));
      if (other?.faint) towns.push({ ...other, score: hit.hit.score });
      else if (other) other.score = hit.hit.score;
      // "from Aberdeen to Elgin": it moves.
      if (
        previous &&
        /^\s(?:over |across )?to\s$/i.test(between(previous)) &&
        /\bfrom\s$/i.test(text.slice(Math.max(0, previous.start - 6), previous.start))
      )
        previous.score -= MOVED_AWAY;
      towns.push(hit.hit);
      index = hit.next - 1;
      continue;
    }
    // Victoria is a city where one is near, and else a state.
    const city = found?.places.some(
      (place) =>
        hints.home &&
        (place.people ?? 0) >= CITY_NEAR_HOME &&
        place.country === hints.homeCountry &&
        distanceKm(hints.home, place) <= NEAR_HOME_KM,
    );
    const area = city ? undefined : areaAt(text, tokens, index, led);
    const before = text.slice(Math.max(0, token.start - 60), token.start);
    // "Hello from Rhode Island!" of who comes home for it.
    const sender = WRITTEN_FROM.test(before) && area?.hit.country !== hints.homeCountry;
    if (!area || NOT_THE_JOB.test(before) || isWhose(before) || sender || isMentionedAt(text, area.hit.start, area.hit.end)) continue;
    areas.push(area.hit);
    index = area.next - 1;
  }
  // One name of a town near home, told as "the Hibbing job" or "Tamworth pony club".
  // Where the sender is at home is not where the job is, if another name is led as towns are.
  const others = towns.every(({ atHome }) => atHome) ? faint : [];
  if (new Set(others.map(({ name }) => name)).size === 1) towns.push(...others);
  // Of two names that nothing leads, size alone makes neither the one that is meant.
  const best = Math.max(...towns.map(({ score }) => score));
  if (others.length === 0 && best <= BY_SIZE)
    towns.push(...faint.filter(({ candidates }) => candidates.length > 0).map((town) => ({ ...town, score: best })));
  return { towns: withRivals(text, tokens, amongTowns(text, towns), gazetteer, hints, taken), areas };
}

/** Towns and what stands beside one of them as the other of two that it may be: as likely as that one, whatever is said of it. */
function withRivals(
  text: string,
  tokens: Tokens,
  towns: readonly PlaceHit[],
  gazetteer: Gazetteer,
  hints: Hints,
  taken: Taken,
): PlaceHit[] {
  if (towns.length === 0) return [];
  const eithers = eitherOf(text, withoutDays(text, tokens, taken), towns);
  const either = eithers.flatMap(({ town, name, at }): [PlaceHit, PlaceHit][] => {
    const index = tokens.findIndex(({ start }) => start === at);
    if (index < 0 || isDateWord(tokens[index])) return [];
    const found = namedAt(gazetteer, text, tokens, index, hints.home);
    const led = near.test(tokens[index - 1]?.lower ?? '') || HEDGED.test(text.slice(Math.max(0, at - 12), at));
    if ((!found && !led) || found?.name.toLowerCase() === town.name.toLowerCase()) return [];
    const called = found?.name ?? name;
    const listed = found ? ranked(found.places, hints) : { candidates: [], sure: false, countrySure: false };
    return [
      [
        town,
        {
          start: at,
          end: at + called.length,
          name: called,
          ...listed,
          score: town.score,
          open: true,
        },
      ],
    ];
  });
  const open = new Set([...either.map(([town]) => town), ...eithers.filter((one) => one.open).map(({ town }) => town)]);
  return [...towns.map((town) => (open.has(town) ? { ...town, open: true as const } : town)), ...either.map(([, other]) => other)];
}

/** "or possibly Bromley" */
const HEDGED = /\b(?:possibly|maybe|perhaps|vielleicht|peut-être|misschien)\s$/i;
/** "in Orange? Or Bathurst", "in Andermatt or in Engelberg" */
const OR = /^[\s,?.]{0,3}(?:or|oder|ou|of|o|\/)\s?(?:(?:maybe|possibly|else|perhaps|in|at|à|te) ){0,2}$/i;
type Taken = (index: number) => boolean;

/** A sentence begins with one town and goes to the next. */
const ROUTE = /(?:^|\n|[.!?] )\p{Lu}[\p{L}'’-]+ to $/u;

function townAt(
  gazetteer: Gazetteer,
  text: string,
  tokens: Tokens,
  index: number,
  found: Named,
  hints: Hints,
  taken: Taken,
  capital: boolean,
  casual: boolean,
): { hit: PlaceHit; next: number } | undefined {
  const folded = foldName(found.name);
  const single = found.next - index === 1;
  const told = qualifierAt(text, tokens, found.next);
  const qualified = told ? found.places.filter((place) => fits(place, told)) : [];
  const qualifier = told?.beyond && qualified.length === 0 ? undefined : told;
  // "Goa, India" is no Goa elsewhere; "Bayfield, WI" is none of those that the list has.
  if (qualifier && qualified.length === 0 && (qualifier.comma || qualifier.coded))
    return unlistedAt(text, tokens, index, taken, hints.homeCountry);
  // "Somerset West" is no Somerset, "Bourton-on-the-Water" no Bourton.
  const behind = tokens[found.next];
  const partly =
    behind !== undefined &&
    behind.breaks === 0 &&
    (LONGER_NAME.test(behind.text) ||
      OF_SOMETHING.test(text.slice(behind.start, behind.start + 24)) ||
      HYPHENED.test(text.slice(behind.start, behind.start + 40)));
  if (qualified.length === 0 && capital && partly) return unlistedAt(text, tokens, index, taken, hints.homeCountry);
  const { candidates, sure, countrySure } = ranked(qualified.length > 0 ? qualified : found.places, hints);
  const best = candidates[0];
  // "at St Mary's, Beverley" is a church.
  if (!best || (/^st\.? \p{L}+'s$/iu.test(found.name) && qualified.length === 0)) return undefined;
  const setting = settingOf(text, tokens, index, found.next, taken);
  const lead = text.slice(Math.max(0, (tokens[index] as Token).start - 60), (tokens[index] as Token).start);
  if (qualified.length === 0 && !capital && !isTypedSo(found.name, setting, casual, tokens[found.next]?.lower)) return undefined;
  // "Knysna to Sedgefield": a way, of which either end may be it.
  const from = tokens[index - 1]?.text === 'to' ? index - 2 : -1;
  if (qualified.length === 0 && from > 0 && ROUTE.test(lead) && namedAt(gazetteer, text, tokens, from, hints.home)?.next === index - 1)
    return undefined;
  // "Cidade do Cabo", and the bus home.
  if (qualified.length === 0 && ((!setting.led && isNamedAfter(lead)) || ((isWayHome(lead) || setting.beside) && isHome(best, hints.home))))
    return undefined;
  const nearHome = hints.home !== undefined && distanceKm(hints.home, best) <= NEAR_HOME_KM;
  if (qualified.length === 0 && !nearHome && isRatherArea(folded, found.name, best, hints)) return undefined;
  // "I'll know by Friday. Bo"
  const last = tokens[found.next - 1] as Token;
  if (!nearHome && !setting.led && setting.sentenceStart && qualified.length === 0 && index > 0 && text.slice(last.end).trim().length < 2)
    return undefined;
  if (qualified.length === 0 && isSomebody(text, tokens, index, found.next, setting, nearHome, best)) return undefined;
  // "KL job"
  const common =
    commonWords.has(folded) ||
    (wordsAbroad.has(folded) && best.country !== hints.homeCountry) ||
    (single && folded.length <= 2 && !AS_JOB.test(text.slice(last.end, last.end + 12)));
  // Who types nothing with a capital means the city nearby: "in buffalo, dec 12".
  const onDay = /^(?:on|this|next)$/.test(tokens[found.next]?.lower ?? '') && taken(found.next + 1);
  const meant = casual && setting.strongly && (setting.openAfter || onDay) && nearHome && (best.people ?? 0) >= SMALL_TOWN;
  const score = scoreOf(setting, {
    single,
    common,
    capital: capital || meant,
    people: best.people ?? 0,
    nearHome,
    qualified: qualified.length > 0,
  });
  const faint = score < ENOUGH;
  if (faint && ((setting.origin && qualified.length === 0) || addressed(text, tokens, index))) return undefined;
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
      !(setting.afterCapital && !setting.afterSmall) &&
      standsAlone(text, tokens, found.next, setting, capital, best)
    )
  )
    return undefined;
  const name = found.name.toLowerCase() === best.name.toLowerCase() || isShort(found.name, best) ? best.name : titled(found.name);
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
      ...(setting.atHome ? { atHome: true as const } : {}),
    },
    next: qualified.length > 0 ? (qualifier as Qualifier).next : found.next,
  };
}

/** "Shepherd of the Pines" */
const OF_SOMETHING = /^of (?:the |our )?\p{Lu}\p{Ll}/u;
const LONGER_NAME =
  /^(?:Street|Road|Avenue|Lane|Square|Crescent|Terrace|Close|Drive|Boulevard|West|East|North|South|Beach|Bay|Heights|Falls|Springs|Island|House|Lodge|Arms|Inn|Manor|Court|Cottage|Villa|Tavern)$/;

const AS_JOB = /^ (?:job|gig|shoot|booking|leg)\b/;
/** "KL" for Kuala Lumpur, "Vegas" for Las Vegas: said of a town, but not its name. */
const isShort = (said: string, { name, others = [] }: GazetteerPlace): boolean =>
  others.some((other) => foldName(other) === foldName(said) && (!/\p{Ll}/u.test(other) || `las ${foldName(other)}` === foldName(name)));

const titled = (name: string): string =>
  /\p{Lu}/u.test(name) ? name : name.replace(/(?<![\p{L}'])\p{Ll}/gu, (letter) => letter.toUpperCase());

/** A place as the contract has it, by the name of its own that it was called by: "Galway" for the listed Gaillimh. */
export function placeOf(place: GazetteerPlace, called: string): Place {
  const { key, name, others = [], region, country, lat, lon, zone } = place;
  const said = foldName(called);
  // "NYC" is how it is called for short.
  const other = others.find((one) => /\p{Ll}/u.test(one) && foldName(one) === said);
  return { key, name: other ?? name, region, country, lat, lon, zone };
}

/**
 * Finding a place by what a person types: "duluth", "Thunder Bay, ON", "quebec", "YQT".
 */
import { distanceKm, type Position } from './distance.ts';
import { foldName } from './fold.ts';
import type { Gazetteer, GazetteerPlace } from './gazetteer.ts';
import { regionCode } from './regions.ts';

export type SearchOptions = { near?: Position | null; country?: string | undefined; limit: number };

/** One name of a place; a place that is called otherwise too has several. */
type Folded = { place: GazetteerPlace; name: string; code: string; called?: string };
type Match = Folded & { tier: number; weight: number };

const foldedOf = new WeakMap<Gazetteer, Folded[]>();

function folded(gazetteer: Gazetteer): Folded[] {
  let entries = foldedOf.get(gazetteer);
  if (!entries) {
    entries = gazetteer.flatMap((place) => [
      { place, name: foldName(place.name), code: place.kind === 'airport' ? place.key.slice(-3).toLowerCase() : '' },
      ...(place.others ?? []).map((called) => ({ place, name: foldName(called), code: '', called })),
    ]);
    foldedOf.set(gazetteer, entries);
  }
  return entries;
}

/** 0 the very name or airport code, 1 the name begins with it, 2 a word of the name begins with it; otherwise no match. */
function tierOf(entry: Folded, name: string): number | undefined {
  if (entry.name === name || entry.code === name) return 0;
  if (entry.name.startsWith(name)) return 1;
  return entry.name.includes(` ${name}`) ? 2 : undefined;
}

const countryNames = new Intl.DisplayNames('en', { type: 'region' });

/** True when the words after a town name its region or country: "MN", "minnesota", "US", "united states". */
function isIn(place: GazetteerPlace, qualifier: string): boolean {
  const code = regionCode(place.country, place.region)?.toLowerCase();
  const country = place.country.toLowerCase();
  if (qualifier === code || qualifier === country || (qualifier === 'usa' && country === 'us') || (qualifier === 'uk' && country === 'gb'))
    return true;
  return (
    qualifier.length > 2 &&
    (foldName(place.region).startsWith(qualifier) || foldName(countryNames.of(place.country) ?? '').startsWith(qualifier))
  );
}

/** An airport counts like a town of this many people. */
const AIRPORT_PEOPLE = 20_000;

/** Nearness to home weighed with size: ten times the people outweigh about five times the distance. */
function weightOf(place: GazetteerPlace, near: Position | null | undefined): number {
  const size = Math.log10((place.people ?? AIRPORT_PEOPLE) + 1000);
  return near ? size - 1.5 * Math.log10(1 + distanceKm(near, place) / 100) : size;
}

/** The ways in which the text can be cut into a name and what tells where it is, the likeliest first. */
function readings(text: string): { name: string; qualifiers: string[] }[] {
  const [first = '', ...rest] = text.split(',').map(foldName);
  const qualifiers = rest.filter((part) => part !== '');
  const whole = { name: first, qualifiers };
  const words = first.split(' ');
  if (qualifiers.length > 0 || words.length < 2) return [whole];
  const shorter = words
    .slice(1)
    .map((_, index) => ({ name: words.slice(0, -1 - index).join(' '), qualifiers: [words.slice(-1 - index).join(' ')] }));
  return [whole, ...shorter];
}

/** The best match of each place. */
function onceEach(matches: readonly Match[]): Match[] {
  const seen = new Set<string>();
  return matches.filter(({ place }) => !seen.has(place.key) && seen.add(place.key));
}

/**
 * Places for a typed text: the exact name first, then names that begin with it, then names with a word that begins with it;
 * within these by size weighed with nearness to home. Accents and case do not matter.
 * A place that is called otherwise, too, bears the name by which it was found: "Limerick" for the listed Luimneach.
 * @param options.near home, where it is known
 * @param options.country ISO 3166 alpha-2, to look in one country only
 */
export function searchPlaces(gazetteer: Gazetteer, text: string, options: SearchOptions): GazetteerPlace[] {
  const entries = folded(gazetteer);
  for (const { name, qualifiers } of readings(text)) {
    if (name === '') continue;
    const matches: Match[] = [];
    for (const entry of entries) {
      if (options.country && entry.place.country !== options.country) continue;
      const tier = tierOf(entry, name);
      if (tier === undefined || !qualifiers.every((qualifier) => isIn(entry.place, qualifier))) continue;
      matches.push({ ...entry, tier, weight: weightOf(entry.place, options.near) });
    }
    if (matches.length > 0)
      return onceEach(matches.sort((a, b) => a.tier - b.tier || b.weight - a.weight))
        .slice(0, options.limit)
        .map(({ place: { others: _others, ...place }, called }) => (called === undefined ? place : { ...place, name: called }));
  }
  return [];
}

const namedOf = new WeakMap<Gazetteer, Map<string, GazetteerPlace[]>>();

/** Places whose very name this is, or that are called so otherwise, best first: for names met in running text, where a beginning is not enough. */
export function placesNamed(gazetteer: Gazetteer, name: string, near?: Position | null): GazetteerPlace[] {
  let named = namedOf.get(gazetteer);
  if (!named) {
    named = new Map();
    for (const { place, name: its } of folded(gazetteer)) named.set(its, [...(named.get(its) ?? []), place]);
    namedOf.set(gazetteer, named);
  }
  const places = named.get(foldName(name)) ?? [];
  return places.toSorted((a, b) => weightOf(b, near) - weightOf(a, near));
}

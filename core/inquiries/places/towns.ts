/**
 * Names in a text that the list of places has, the longest first; also by other and short names and by airports.
 */
import type { Position } from '../../places/distance.ts';
import { foldName } from '../../places/fold.ts';
import type { Gazetteer, GazetteerPlace } from '../../places/gazetteer.ts';
import { placesNamed } from '../../places/search.ts';
import type { Token } from '../parts/tokens.ts';

type Tokens = readonly Token[];
const LONGEST_NAME = 5;

export type Named = { places: GazetteerPlace[]; next: number; name: string };

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

const shortNames = new WeakMap<Gazetteer, Map<string, GazetteerPlace[]>>();
/** What may have a short name: the whole list is looked through, so it is folded only where one of the little words stands. */
const MAY_BE_LONG = /[ -](?:an der|am|im|in der|ob der|bei|on|upon|sur|sous|under|by|next)[ -]/i;
const LONG_NAME = /^(\p{L}{4,}) (?:an der|am|im|in der|ob der|bei|on|upon|sur|sous|under|by|next) \p{L}/u;

/** Towns by what they are called for short: Krems for "Krems an der Donau". */
function shortTown(gazetteer: Gazetteer, folded: string): GazetteerPlace[] {
  let towns = shortNames.get(gazetteer);
  if (!towns) {
    towns = new Map();
    for (const place of gazetteer) {
      const short = place.kind === 'airport' || !MAY_BE_LONG.test(place.name) ? undefined : LONG_NAME.exec(foldName(place.name))?.[1];
      if (short !== undefined) towns.set(short, [...(towns.get(short) ?? []), place]);
    }
    shortNames.set(gazetteer, towns);
  }
  return towns.get(folded) ?? [];
}

/** The name that begins at a token, longest first. */
export function namedAt(
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
    // "Frankfurt (Oder)"
    const [open, inside, close] = tokens.slice(index + length, index + length + 3);
    if (open?.text === '(' && close?.text === ')' && inside && inside.breaks === 0) {
      const whole = text.slice(first.start, close.end);
      const named = whole.length > 60 ? [] : placesNamed(gazetteer, whole, home);
      if (named.length > 0) return { places: named, next: index + length + 3, name: whole };
    }
    const places = [...placesNamed(gazetteer, name, home), ...airportTown(gazetteer, foldName(name))];
    if (places.length === 0) places.push(...shortTown(gazetteer, foldName(name)));
    if (places.length > 0) return { places, next: index + length, name };
  }
  return undefined;
}

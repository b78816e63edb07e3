/**
 * Where home is, and which names are towns seen from there.
 */
import type { Place } from '../../contract/parts.ts';
import { distanceKm } from '../../places/distance.ts';
import type { Gazetteer, GazetteerPlace } from '../../places/gazetteer.ts';

/** Where home is when only its zone is known: the town that the zone is named after. */
export function zoneTown(gazetteer: Gazetteer, zone: string): Place | undefined {
  const name = zone.split('/').at(-1)?.replaceAll('_', ' ');
  return gazetteer.find((place) => place.zone === zone && place.name === name);
}

/** A name that is a town's for most readers: a larger one, or one near home. Bex and Leopold are people elsewhere. */
export function knownTown(place: GazetteerPlace, home: Place | undefined): boolean {
  return (place.people ?? 0) >= 15_000 || (home !== undefined && distanceKm(home, place) <= 600);
}

/**
 * The country at home, where a message shows that it was written there: it pays in money of that country alone, or gives a number to ring without
 * the code of a country. American and Canadian numbers look alike, so they show nothing. Money of another country shows the contrary.
 */
export function writtenAtHome(home: string | undefined, paying: ReadonlySet<string>, phones: readonly string[]): string | undefined {
  if (home === undefined || [...paying].some((country) => country !== home)) return undefined;
  const local = home !== 'US' && home !== 'CA' && phones.some((phone) => /^\(?0[1-9]/.test(phone));
  const foreign = phones.some((phone) => /^(?:\+|00)/.test(phone));
  return paying.has(home) || (local && !foreign) ? home : undefined;
}

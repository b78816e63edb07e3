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

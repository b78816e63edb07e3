/**
 * The places that the program knows without being told, as plain data, and how their list is read.
 */
import type { Place } from '../contract/parts.ts';

export type GazetteerPlace = Place & { kind: 'city' | 'airport' | 'own'; people: number | null };
/** Largest city first, airports last. */
export type Gazetteer = readonly GazetteerPlace[];

/**
 * Read the list of places: one line a place with key, name, region, country, latitude, longitude, IANA zone and people, parted by tabs.
 * The list is trusted (it ships with the program), so a broken line is a mistake of ours.
 * @throws RangeError naming the line that does not have eight parts
 */
export function readGazetteer(text: string): Gazetteer {
  const places: GazetteerPlace[] = [];
  for (const line of text.split('\n')) {
    if (line === '') continue;
    const [key, name, region, country, lat, lon, zone, people] = line.split('\t');
    if (
      key === undefined ||
      name === undefined ||
      region === undefined ||
      country === undefined ||
      zone === undefined ||
      people === undefined
    )
      throw new RangeError(`line ${places.length + 1} of the list of places is not whole`);
    const kind = people === '' ? 'airport' : 'city';
    places.push({
      key,
      name,
      region,
      country,
      lat: Number(lat),
      lon: Number(lon),
      zone,
      kind,
      people: people === '' ? null : Number(people),
    });
  }
  return places;
}

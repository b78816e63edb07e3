/**
 * The places that the program knows without being told, as plain data, and how their list is read.
 */
import type { Place } from '../contract/parts.ts';

export type GazetteerPlace = Place & {
  kind: 'city' | 'airport' | 'own';
  people: number | null;
  /** What it is called otherwise: new, older and short names, and names in other languages. */
  others?: readonly string[];
};
/** Largest city first, airports last. */
export type Gazetteer = readonly GazetteerPlace[];

/**
 * Read the list of places: one line a place with key, name, region, country, latitude, longitude, IANA zone, people
 * and, where it has any, other names with semicolons between, parted by tabs.
 * The list is trusted (it ships with the program), so a broken line is a mistake of ours.
 * @throws RangeError naming the line that does not have eight parts
 */
export function readGazetteer(text: string): Gazetteer {
  const places: GazetteerPlace[] = [];
  for (const line of text.split('\n')) {
    if (line === '') continue;
    const [key, name, region, country, lat, lon, zone, people, others] = line.split('\t');
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
      ...(others ? { others: others.split('; ') } : {}),
    });
  }
  return places;
}

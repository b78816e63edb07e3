/**
 * Which of several towns of one name is meant: by nearness to home, country and size, and whether that is beyond doubt.
 */
import { distanceKm, type Position } from '../../places/distance.ts';
import type { GazetteerPlace } from '../../places/gazetteer.ts';

export type Hints = {
  home: Position | undefined;
  homeCountry: string | undefined;
  /** Where the money is paid in that the message names. */
  countries: ReadonlySet<string>;
  /** Where the language of the message is spoken. */
  spoken?: ReadonlySet<string>;
};

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

/** A town of the home country within a day's drive, where its namesake abroad lies much farther off and is no city of the world. */
const isNearer = (place: GazetteerPlace, other: GazetteerPlace, { home, homeCountry }: Hints): boolean =>
  home !== undefined &&
  place.country === homeCountry &&
  distanceKm(home, place) <= A_DRIVE_KM &&
  distanceKm(home, other) >= 2 * distanceKm(home, place) &&
  (other.people ?? 0) < WORLD_CITY;
const A_DRIVE_KM = 400;

type Ranked = { candidates: GazetteerPlace[]; sure: boolean; countrySure: boolean };

export function ranked(places: readonly GazetteerPlace[], hints: Hints): Ranked {
  const cities = places.filter((place) => place.kind !== 'airport');
  // An airport stands for its town only where the list does not have the town.
  const airports = places.filter((place) => place.kind === 'airport' && !cities.some((city) => distanceKm(city, place) <= AIRPORT_KM));
  const weighed = [...cities, ...airports].map((place) => ({ place, weight: weightOf(place, hints) })).sort((a, b) => b.weight - a.weight);
  const first = weighed[0];
  if (!first) return { candidates: [], sure: false, countrySure: false };
  const apart = weighed.slice(1).filter(({ place }) => distanceKm(first.place, place) > SAME_PLACE_KM);
  const inside = apart.find(({ place }) => place.country === first.place.country);
  const abroad = apart.find(({ place }) => place.country !== first.place.country);
  const countrySure = abroad === undefined || first.weight - abroad.weight >= CLEAR_LEAD || isNearer(first.place, abroad.place, hints);
  // A small town abroad is as likely a nearer one that the list does not have, unless its name is borne by no other.
  const people = first.place.people ?? 0;
  const plausible =
    first.place.country === hints.homeCountry ||
    (hints.countries.size === 1 && hints.countries.has(first.place.country)) ||
    (abroad === undefined && hints.spoken?.has(first.place.country) === true) ||
    (people >= 200_000 && (people >= 1_000_000 || !hints.home || distanceKm(hints.home, first.place) <= 2500)) ||
    (people >= 50_000 && apart.length === 0) ||
    !hints.home ||
    distanceKm(hints.home, first.place) <= 400;
  const sure = plausible && countrySure && (inside === undefined || first.weight - inside.weight >= LEAD_AT_HOME);
  return { candidates: [first, ...apart].map(({ place }) => place), sure, countrySure: plausible && countrySure };
}

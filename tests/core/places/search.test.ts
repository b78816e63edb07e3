import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { foldName } from '../../../core/places/fold.ts';
import { readGazetteer } from '../../../core/places/gazetteer.ts';
import { placesNamed, searchPlaces } from '../../../core/places/search.ts';
import { gazetteerFrom } from '../../../electron/api/gazetteer.ts';

const gazetteer = gazetteerFrom()();
const duluth = { lat: 46.78, lon: -92.11 };
const atlanta = { lat: 33.75, lon: -84.39 };
const found = (text: string, near: { lat: number; lon: number } | null = duluth) =>
  searchPlaces(gazetteer, text, { near, limit: 4 }).map((place) => `${place.name}, ${place.region}`);

describe('a place is found by what is typed', () => {
  test('of two towns with one name the nearer to home comes first', () => {
    expect(found('duluth').slice(0, 2)).toEqual(['Duluth, Minnesota', 'Duluth, Georgia']);
    expect(found('duluth', atlanta).slice(0, 2)).toEqual(['Duluth, Georgia', 'Duluth, Minnesota']);
  });

  test('a great city beats a near village of its name', () => {
    expect(found('paris')[0]).toBe('Paris, ');
    expect(found('london', null)[0]).toBe('London, England');
  });

  test.each([
    ['Duluth, GA', 'Duluth, Georgia'],
    ['Duluth GA', 'Duluth, Georgia'],
    ['thunder bay, ontario, canada', 'Thunder Bay, Ontario'],
    ['THUNDER BAY', 'Thunder Bay, Ontario'],
    ['quebec', 'Québec, Quebec'],
    ['st paul mn', 'Saint Paul, Minnesota'],
    ['St. Paul', 'Saint Paul, Minnesota'],
    ['zurich', 'Zürich, Canton of Zurich'],
    ['mil', 'Milwaukee, Wisconsin'],
    ['yqt', 'Thunder Bay Airport (YQT), Ontario'],
  ])('%s', (text, expected) => expect(found(text)[0]).toBe(expected));

  test('what says nothing finds nothing', () => {
    expect(found('')).toEqual([]);
    expect(found(' , ')).toEqual([]);
    expect(found('qqqqq')).toEqual([]);
    expect(found('Duluth, Ontario')).toEqual([]);
  });

  test('one country only', () => {
    const places = searchPlaces(gazetteer, 'london', { country: 'CA', limit: 20 });
    expect(places.length).toBeGreaterThan(0);
    expect(new Set(places.map((place) => place.country))).toEqual(new Set(['CA']));
  });

  test('a whole name is matched without its beginning counting', () => {
    expect(placesNamed(gazetteer, 'duluth', duluth).map((place) => place.region)).toEqual(['Minnesota', 'Georgia']);
    expect(placesNamed(gazetteer, 'dulut', duluth)).toEqual([]);
  });
});

describe('a place is found by what people call it', () => {
  test.each([
    ['Galway', 'IE', 'Galway'],
    ['limerick, ireland', 'IE', 'Limerick'],
    ['Mullingar', 'IE', 'Mullingar'],
    ['Gqeberha', 'ZA', 'Gqeberha'],
    ['makhanda', 'ZA', 'Makhanda'],
    ['Gurugram', 'IN', 'Gurugram'],
    ['bangalore', 'IN', 'Bangalore'],
    ['Penang', 'MY', 'Penang'],
    ['nuremberg', 'DE', 'Nuremberg'],
    ['St. Gallen', 'CH', 'St. Gallen'],
    ['wien', 'AT', 'Wien'],
    ['Ghent', 'BE', 'Ghent'],
    ['Otautahi', 'NZ', 'Ōtautahi'],
    ['Sudbury, ON', 'CA', 'Sudbury'],
    ['Dehradun', 'IN', 'Dehradun'],
    ['Kyiv', 'UA', 'Kyiv'],
  ])('%s', (text, country, name) => {
    expect(searchPlaces(gazetteer, text, { near: null, country, limit: 1 })[0]).toMatchObject({ name, country });
  });

  test('it stands once, under the name that fits best, and keeps its key', () => {
    const [first, ...rest] = searchPlaces(gazetteer, 'new york', { near: null, limit: 20 });
    expect(first).toMatchObject({ name: 'New York', key: 'geonames:5128581', people: 8175133 });
    expect(rest.map((place) => place.key)).not.toContain(first?.key);
    expect(first).not.toHaveProperty('others');
  });

  test('every other name is of a listed place, and differs from its name', async () => {
    const text = await readFile(new URL('../../../assets/places/other-names.tsv', import.meta.url), 'utf8');
    const byKey = new Map(gazetteer.map((place) => [place.key, place]));
    for (const row of text.trim().split('\n')) {
      const [key = '', country, name = '', others = '', source = ''] = row.split('\t');
      expect(byKey.get(key), row).toMatchObject({ country, name });
      expect(['GeoNames', 'common practice']).toContain(source);
      for (const other of others.split('; ')) {
        expect(foldName(other), row).not.toBe(foldName(name));
        expect(byKey.get(key)?.others).toContain(other);
      }
    }
  });
});

describe('the list', () => {
  test.each([
    ['Duluth', 'America/Chicago'],
    ['Fargo', 'America/Chicago'],
    ['Milwaukee', 'America/Chicago'],
    ['Thunder Bay', 'America/Toronto'],
    ['Denver', 'America/Denver'],
    ['Phoenix', 'America/Phoenix'],
    ['Los Angeles', 'America/Los_Angeles'],
    ['Detroit', 'America/Detroit'],
    ['Atlanta', 'America/New_York'],
    ['Anchorage', 'America/Anchorage'],
    ['Honolulu', 'Pacific/Honolulu'],
    ['Winnipeg', 'America/Winnipeg'],
    ['Halifax', 'America/Halifax'],
    ['Vancouver', 'America/Vancouver'],
    ['London', 'Europe/London'],
    ['Berlin', 'Europe/Berlin'],
    ['Tokyo', 'Asia/Tokyo'],
    ['Sydney', 'Australia/Sydney'],
    ['Auckland', 'Pacific/Auckland'],
    ['Mumbai', 'Asia/Kolkata'],
  ])('%s keeps the clock of %s', (name, zone) => {
    const biggest = gazetteer.find((place) => place.name === name);
    expect(biggest?.zone).toBe(zone);
  });

  test('every line is whole: one key each, a position on the Earth, a zone that the engine knows', () => {
    expect(new Set(gazetteer.map((place) => place.key)).size).toBe(gazetteer.length);
    expect(gazetteer.filter((place) => !(Math.abs(place.lat) <= 90 && Math.abs(place.lon) <= 180) || place.name.length > 120)).toEqual([]);
    for (const zone of new Set(gazetteer.map((place) => place.zone)))
      expect(() => new Intl.DateTimeFormat('en', { timeZone: zone })).not.toThrow();
  });

  test('a broken line is named', () => {
    expect(() => readGazetteer('a\tb\n')).toThrow('line 1 of the list of places is not whole');
  });
});

test.each([
  ['Sault Ste. Marie', 'sault sainte marie'],
  ["Coeur d'Alene", 'coeur dalene'],
  ['Łódź', 'lodz'],
  ['Stockholm', 'stockholm'],
  ['Gießen', 'giessen'],
  ['Ft. Worth', 'fort worth'],
])('%s is compared as %s', (name, folded) => expect(foldName(name)).toBe(folded));

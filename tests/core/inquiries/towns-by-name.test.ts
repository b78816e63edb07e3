/**
 * Towns as senders write them: by another name than the listed one, in no list, named like a region, or part of a longer name.
 */
import { describe, expect, test } from 'vitest';
import { facts, readAt } from './reading.ts';

const ASK = 'Hi Kit, are you free? We need a second camera operator. ';
const where = (home: string, text: string) => {
  const { place, country } = facts(ASK + text, undefined, home);
  return [place, country];
};

describe('by another name than the listed one, stated as it is written', () => {
  test.each([
    ['dublin', 'A seminar in Limerick on 12 March.', 'Limerick', 'IE'],
    ['dublin', 'A wedding in Mullingar on 12 March.', 'Mullingar', 'IE'],
    ['duluth', 'A seminar in Galway on 12 March.', 'Galway', 'IE'],
    ['delhi', 'Training in Gurugram on 12 March.', 'Gurugram', 'IN'],
    ['singapore', 'A dinner in Penang on 12 March.', 'Penang', 'MY'],
    ['zurich', 'A talk in St. Gallen on 12 March.', 'St. Gallen', 'CH'],
    ['berlin', 'A talk in Nuremberg on 12 March.', 'Nuremberg', 'DE'],
    ['berlin', 'A talk in Frankfurt (Oder) on 12 March.', 'Frankfurt (Oder)', 'DE'],
    ['vienna', 'A talk in Klagenfurt on 12 March.', 'Klagenfurt', 'AT'],
    ['auckland', 'A race in Wānaka on 12 March.', 'Wānaka', 'NZ'],
    ['toronto', 'A talk in Sudbury on 12 March.', 'Sudbury', 'CA'],
  ])('%s: %s', (home, text, place, country) => expect(where(home, text)).toEqual([place, country]));
});

test.each([
  ['dublin', 'A seminar in Galway on 12 March.', 'Galway', 'Connacht', 'IE'],
  ['dublin', 'A seminar in Limerick on 12 March.', 'Limerick', 'Munster', 'IE'],
  ['berlin', 'A seminar in Potsdam on 12 March.', 'Potsdam', 'Brandenburg', 'DE'],
  // What is said for short stays with the listed name.
  ['nyc', 'A talk in NYC on 12 March.', 'New York City', 'New York', 'US'],
])('%s: %s: what is found bears the name that it is called by', (home, text, name, region, country) =>
  expect(readAt(ASK + text, undefined, home).placeFound).toMatchObject({ name, region, country }),
);

describe('in no list', () => {
  test.each([
    ['leeds', 'A fair in Hawes on 12 March, £300.', 'Hawes', 'GB'],
    ['auckland', 'Rowing at the lake in Twizel, 12 March. Ring me on 021 555 0177.', 'Twizel', 'NZ'],
    ['halifax', 'A dance at the hall in Cheticamp, Nova Scotia, on 12 March.', 'Cheticamp', 'CA'],
    ['london', 'A fete in Bourton-on-the-Water on 12 June, £250.', 'Bourton-on-the-Water', 'GB'],
  ])('%s: %s', (home, text, place, country) => expect(where(home, text)).toEqual([place, country]));

  test.each([
    ['duluth', 'A show in Tofte on 12 March, $900.', 'Tofte'],
    ['leeds', 'A fair in Hawes on 12 March, 300 euros. Ring me on +32 2 555 01 77.', 'Hawes'],
  ])('the country stays open where nothing shows it: %s: %s', (home, text, place) => expect(where(home, text)).toEqual([place, undefined]));
});

test.each([
  ['toronto', 'A show in Ontario on 12 March.', 'CA'],
  ['sydney', 'A talk in Goa on 12 March.', 'IN'],
  ['amsterdam', 'A talk in Belgium on 12 March.', 'BE'],
])('a region or country is no town of its name: %s: %s', (home, text, country) => expect(where(home, text)).toEqual([undefined, country]));

test.each([
  'A show in Zoomland Hall on 12 March.',
  'A talk in Studio on 12 March.',
  'Buyer: Pelican Shoal Academy, 12 March.',
  'Filmed in Portrait on 12 March, £300.',
  'A play in Welsh on 12 March, £300.',
  'We believe in Harriet on 12 March, £300.',
  'It is in Advent, on 12 December, £300.',
])('a venue, firm, format, language, person or season is no town: %s', (text) => expect(where('leeds', text)[0]).toBeUndefined());

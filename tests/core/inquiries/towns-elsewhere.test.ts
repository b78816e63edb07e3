/**
 * Towns beside that of the job: where somebody sleeps, sits or writes from, where letters go, where it was to be; and words that look like a town.
 * Sentences of common practice.
 */
import { expect, test } from 'vitest';
import { facts, readAt } from './reading.ts';

const place = (text: string, home: string) => facts(text, undefined, home).place;

test.each([
  [
    'leeds',
    "We'd like you at our office in Harrogate on 12 December, 9 to 5. Our finance lead sits in Bristol. Filming a panel.",
    'Harrogate',
  ],
  ['leeds', 'Please film our awards in York on 12 December, 3pm. The orchestra sleeps in Selby.', 'York'],
  ['leeds', "I'm with a brewery in Hull. We open a second one in Whitby on 12 December and want a video, 9 to 5.", 'Whitby'],
  ['madrid', 'Te escribimos desde Lima, Perú. El 12 de diciembre exponemos en Valencia y buscamos un camarógrafo.', 'Valencia'],
  ['leeds', 'Video wanted, 12 December. Location: sports hall, Otley. Invoices are handled in Derby.', 'Otley'],
  [
    'leeds',
    '1. Date: 12 December 2026\n2. Venue: lower field, Skipton\n3. Tenders are printed in Leicester.\nWe need a videographer.',
    'Skipton',
  ],
  ['leeds', 'Our gala was in Hull last October. Would you come to our office in York on 12 December and edit with us?', 'York'],
  ['leeds', "It was to be held in Derby on 12 December; it has been moved to Selby. We'd like you to film it.", 'Selby'],
  ['leeds', 'Please film our concert in Ripon on 12 December. (Our archive is in Hexham, for the post.)', 'Ripon'],
  ['leeds', "Our concert is in Ripon on 12 December and needs a camera. My sisters are in Durham and in Derby, they don't help.", 'Ripon'],
  ['leeds', "There's a lecture in Whitby on 12 December that we'd like filmed (our post is opened in Selby).", 'Whitby'],
  ['leeds', 'We sleep in Selby and play in Ripon on 12 December. Could you film the band?', 'Ripon'],
  ['zurich', 'Championship of the choirs, Thun, 12 December, camera wanted. Food and bed: in Spiez, paid.', 'Thun'],
  [
    'leeds',
    "I am Rosa from the pensioners' club in Hull. On 12 December we go with a group of twenty to Whitby and want a film.",
    'Whitby',
  ],
  ['madrid', 'Could you film three days on a boat? From Split, Croatia, 10-12 December.', 'Split'],
  ['madrid', 'We marry on 12 December in our town Évora (Alentejo, Portugal). We want a video.', 'Évora'],
  ['london', 'We want a film of forty of us in silly socks at Brighton on 12 December.', 'Brighton'],
  ['london', 'Video for our summit in Birmingham, 10-12 December. Dagny Holm, Vinterverk AB, Stockholm.', 'Birmingham'],
  ['zurich', 'Could you film the cattle show in Appenzell on 12 December? You only need to be in the village at nine.', 'Appenzell'],
  ['capetown', "Our finals are in Swellendam this year, Saturday 12 December. We'd like them filmed.", 'Swellendam'],
])('%s: %s', (home, text, town) => expect(place(text, home)).toBe(town));

test.each([
  ['leeds', "I am Rosa from the pensioners' club in Hull. On 12 December we have a party and want a film.", 'Hull'],
  ['leeds', 'This is Nell from the choir in Otley, could you film our concert on 12 December?', 'Otley'],
  ['leeds', 'We stay in York and want our party there filmed on 12 December.', 'York'],
  ['leeds', 'Our studio is in Hull. Come and film the opening on 12 December.', 'Hull'],
])('where no other town is told it is the one where they are: %s: %s', (home, text, town) => expect(place(text, home)).toBe(town));

test.each([
  ['vienna', "Could you film the giant slalom on 12 December? You're there at 7:30, afterwards the bus to Vienna is at 15:40."],
  ['leeds', "In Mr. Hurnell's class we need a video on 12 December."],
  ['london', 'Naming ceremony on 12 December, Croydon or maybe Bromley. We want it on video, £400.'],
])('no town is stated: %s: %s', (home, text) => expect(place(text, home)).toBeUndefined());

test('"Croydon or maybe Bromley" is asked about', () =>
  expect(
    readAt('Naming ceremony on 12 December, Croydon or maybe Bromley. We want it on video, £400.', undefined, 'london').questions.find(
      ({ field }) => field === 'place',
    )?.choices?.length,
  ).toBe(2));

test('who greets from abroad says nothing of the country of the job', () =>
  expect(
    facts("Hello from Ohio! We're marrying in Ludlow, £650, on 12 December, and want a videographer.", undefined, 'london').country,
  ).toBe('GB'));

test('a load-in has no town', () => expect(place('Camera in Selby on 12 December. Load-in Th 10/12 1300.', 'leeds')).toBe('Selby'));

test('an edit done from afar is in no town', () =>
  expect(
    facts('Would you do the edit remotely for us? We shot the fair in Fargo ourselves and need an editor, 3 days at $300 a day.'),
  ).not.toHaveProperty('place'));

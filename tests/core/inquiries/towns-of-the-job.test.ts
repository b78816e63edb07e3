/**
 * Towns of which their own clause says that the job is there, beside towns where somebody sits, is picked up or lives; sentences of common practice.
 */
import { expect, test } from 'vitest';
import { facts } from './reading.ts';

const place = (text: string, home: string) => facts(text, undefined, home).place;

test.each([
  [
    'leeds',
    "Our retreat is at a barn near Skipton. You'd film the interviews at our office in Keighley on Monday 14 December, 9 to 4.",
    'Keighley',
  ],
  [
    'zurich',
    'For a company in Solothurn we need a camera on 10 December. You are picked up in Bern at 6:30 and released at 16:30.',
    'Solothurn',
  ],
  ['leeds', 'A client of mine in Whitby needs two people with cameras on 12 December. Call 8am.', 'Whitby'],
  ['zurich', 'A client of ours needs two operators in Chur on 10 December, 06:00 to 19:00.', 'Chur'],
  [
    'delhi',
    "We are producing an offsite for a US client in Jaipur on 10-12 December. You'd be second camera. The client sits in Boston, so answer by 6 pm on Monday.",
    'Jaipur',
  ],
  ['london', "My sister lives in Brighton, mum's in Hove, and the party's in Lewes on 12 December from 6pm. Would you film it?", 'Lewes'],
  ['paris', 'Je suis à Bordeaux, le mariage est à Arcachon le 12 décembre. Vous pouvez filmer de 14h à 23h ?', 'Arcachon'],
  ['vancouver', "are you able for Victoria on 12 December? it's a Saturday. load-in 2, wrap 11. camera", 'Victoria'],
  ['toronto', 'hi can u film roller derby in buffalo, dec 12, call 4pm', 'Buffalo'],
  ['singapore', "I'm writing from Penang, Malaysia. Our festival is on 12 December and we'd like a cameraman, 3pm.", 'Penang'],
  [
    'leeds',
    'Joyce at Thornaby Street Dental Practice here. We want clips, filmed in Huddersfield on 12 December, 9 till 5.',
    'Huddersfield',
  ],
  ['sydney', "Wagga Wagga, 12 December, one camera. We've got them in over two hours, then out by nine.", 'Wagga Wagga'],
])('%s: %s', (home, text, town) => expect(place(text, home)).toBe(town));

test('where a head office is, is no place of the job', () =>
  expect(
    place(
      'Head office is in Singapore so I need an answer by 10am Singapore time. Could you film our field day on Friday 11 December, 6am to 2pm?',
      'sydney',
    ),
  ).toBeUndefined());

test('a state is one where no city of its name is near', () =>
  expect(facts('We need a shooter somewhere in Victoria on 12 December, venue to follow, 8am.', undefined, 'melbourne')).toMatchObject({
    country: 'AU',
  }));

test.each([
  ['halifax', "We'd like the concert in Yarmouth filmed on 12 December, come at 3.", 'CA'],
  ['melbourne', 'Could you film our show in Hamilton on 12 December, 3pm?', 'AU'],
])('a town at home, a day away, is meant rather than a farther one of its name: %s', (home, text, country) =>
  expect(facts(text, undefined, home).country).toBe(country),
);

/**
 * Towns with a region in no list before their country, towns that a house or an island is told from, towns where nobody is needed.
 */
import { expect, test } from 'vitest';
import { readAt } from './reading.ts';

test.each([
  [
    "My brother's wedding is in Ibadan, Oyo State, Nigeria on Saturday 14 August 2027. Can you film from 8am to 6pm?",
    'london',
    'Ibadan',
    'NG',
  ],
  ['We need a cameraman for a conference in Mombasa, Coast Province, Kenya on 5 and 6 May 2027.', 'london', 'Mombasa', 'KE'],
  ['We need a second shooter in Ubud, Bali, Indonesia on 12 June 2027 for a wedding.', 'sydney', 'Ubud', 'ID'],
  ['Film our meeting in Sherbrooke, Estrie, Quebec on April 14, please.', 'toronto', 'Sherbrooke', 'CA'],
  ['Filming a gala in Skipton, North Yorkshire on 14 May 2027. Can you do it?', 'leeds', 'Skipton', 'GB'],
  ['Can you film our works outing in Scarborough on 12 June, 10am till 4pm, minibus back to Bradford after?', 'leeds', 'Scarborough', 'GB'],
  ["Could you film in York on 12 June? There's a tea in Hull the day after but you don't need to film that.", 'leeds', 'York', 'GB'],
  ['KL job: can you film a dinner on 12 June?', 'singapore', 'Kuala Lumpur', 'MY'],
])('%s', (text, home, place, country) => {
  const { fields } = readAt(text, '2027-02-01T09:00:00+00:00[Europe/London]', home);
  expect([fields.place?.split(',')[0], fields.country]).toEqual([place, country]);
});

test('two towns with a day each are asked about', () => {
  const { fields, questions } = readAt(
    'Would you film our show in Dunedin on 18 December or in Nelson on 19 December?',
    undefined,
    'auckland',
  );
  expect([fields.place, fields.start]).toEqual([undefined, undefined]);
  expect(questions.find(({ field }) => field === 'place')?.choices.length).toBe(2);
});

/** What the weights say of offers, names and hours where rules state nothing, or something that hardly is so. */
import { expect, test } from 'vitest';
import { namesIn } from '../../../core/inquiries/learned/party.ts';
import { facts, readAt } from './reading.ts';

test('a body that hardly is that of who asks is asked about, and can be chosen', () => {
  const { fields, questions } = readAt(
    'Filmst du am 14. Mai in Kiel? 420 Euro. Bescheid bis Freitag, Gruß Malte von Förde Events',
    undefined,
    'berlin',
  );
  expect(fields.organisation).toBeUndefined();
  expect(questions.find(({ field }) => field === 'organisation')).toEqual({
    field: 'organisation',
    ask: 'For whom do they ask?',
    choices: [{ label: 'Förde Events', value: 'Förde Events' }],
  });
});

const ASKED = 'Hi Kit, could you film our prize giving in Duluth on Saturday 12 December?';

test.each([
  ['15:00', 'Once the raffle is drawn, 3 p.m., off you go.'],
  ['21:30', 'When the caretaker has the keys back at 9.30pm your day is done.'],
])('the wrap is at %s: %s', (hour, words) => expect(facts(`${ASKED} ${words}\nThanks, Dana`).lastWrap).toBe(`2026-12-12T${hour}`));

test.each(['The committee voted 350 for the camera.', 'My lot can rustle up $350.', 'A cheque of $350 waits for you.'])(
  'offered: %s',
  (words) => expect(facts(`${ASKED} ${words}\nThanks, Dana`).budget).toEqual({ amount: 350, currency: 'USD', per: 'job' }),
);

test('names: runs of words with capitals, their pieces between commas, and without their first word', () =>
  expect(namesIn('Thanks Mia Holt, Tarn Fair').map(({ value }) => value)).toEqual([
    'Thanks Mia Holt, Tarn Fair',
    'Thanks Mia Holt',
    'Tarn Fair',
    'Mia Holt, Tarn Fair',
  ]));

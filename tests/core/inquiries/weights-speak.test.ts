/** What the weights say of offers, names and hours where rules state nothing, or something that hardly is so. */
import { expect, test } from 'vitest';
import { namesIn } from '../../../core/inquiries/learned/party.ts';
import { facts, readAt } from './reading.ts';

test.each([
  ['Förde Events', 'berlin', 'Filmst du am 14. Mai in Kiel? 420 Euro. Bescheid bis Freitag, Gruß Malte von Förde Events'],
  ['Hale, Moss & Finch Solicitors', 'leeds', 'Please film our fair in York on 12 December.\n\nHale, Moss & Finch Solicitors\nJo Moss'],
])('a body that hardly is that of who asks is asked about, and can be chosen: %s', (body, home, text) => {
  const { fields, questions } = readAt(text, undefined, home);
  expect(fields.organisation).toBeUndefined();
  expect(fields.contactName).toBe(text.match(/Malte|Jo Moss/)?.[0]);
  expect(questions.find(({ field }) => field === 'organisation')).toEqual({
    field: 'organisation',
    ask: 'For whom do they ask?',
    choices: [{ label: body, value: body }],
  });
});

test('and so is a name', () => {
  const { fields, questions } = readAt(
    'Pipe-Major MacHale. Could you film our concert in Leeds on Friday 14 May 2027? We can pay £250.',
    undefined,
    'leeds',
  );
  expect(fields.contactName).toBeUndefined();
  expect(questions.find(({ field }) => field === 'contactName')).toMatchObject({ ask: 'Who asks?', choices: [{ value: 'MacHale' }] });
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

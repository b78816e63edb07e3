/**
 * A message that leaves its days open, read again for those that a person chose.
 */
import { expect, test } from 'vitest';
import type { Reading } from '../../../core/contract/inquiries.ts';
import { readInquiry } from '../../../core/inquiries/read.ts';
import { gazetteer, homeOf } from '../../reader/corpus.ts';
import { learned } from '../../reader/shipped.ts';

const homePlace = homeOf('duluth');
const receivedAt = '2026-11-25T09:12:00-06:00[America/Chicago]';
const read = (text: string, chosenDays?: readonly string[]): Reading =>
  readInquiry({ text, receivedAt, homeZone: homePlace.zone, homePlace, gazetteer, learned, chosenDays });
const choices = (reading: Reading) =>
  reading.questions.filter(({ field }) => field === 'start').flatMap((question) => question.choices.map(({ days }) => days));

test('two dates of which one is meant: the hours stand on the one that was chosen', () => {
  const text = 'Can you film our show in Fargo on the 12th or the 19th of March? Call time is 5pm, wrap by 11pm.';
  const open = read(text);
  expect(choices(open)).toEqual([['2027-03-12'], ['2027-03-19']]);
  expect(open.fields.start).toBeUndefined();
  for (const day of ['2027-03-12', '2027-03-19'])
    expect(read(text, [day]).fields).toMatchObject({
      start: day,
      end: day,
      days: 1,
      firstCall: `${day}T17:00`,
      lastWrap: `${day}T23:00`,
    });
});

test('days that are named and that nothing says to be those of the job can be chosen too', () => {
  const text = 'We need a camera in Fargo either on 12 March 2027 (call 9am, wrap 5pm) or on 19 March 2027 (call 2pm, wrap 10pm).';
  expect(choices(read(text))).toEqual([['2027-03-12'], ['2027-03-19']]);
  // By when to answer, when an edit is due and what is over are none of them.
  const others = 'Can you film a dinner in Fargo for us? Let me know by 4 December please; last year it was on 3 March 2026.';
  expect(choices(read(others))).toEqual([]);
});

test('hours of their own for each of two dates: only those of the chosen one count', () => {
  const text = 'We need a camera in Fargo either on 12 March 2027 (call 9am, wrap 5pm) or on 19 March 2027 (call 2pm, wrap 10pm).';
  expect(read(text, ['2027-03-19']).fields).toMatchObject({ firstCall: '2027-03-19T14:00', lastWrap: '2027-03-19T22:00' });
  expect(read(text, ['2027-03-12']).fields).toMatchObject({ firstCall: '2027-03-12T09:00', lastWrap: '2027-03-12T17:00' });
});

test('an hour that says neither morning nor evening is asked for the chosen day', () => {
  const open = read('hey! can you shoot our awards dinner in Fargo on the 12th or the 19th of march? need you from 7. $900', [
    '2027-03-12',
  ]);
  expect(open.questions.find(({ field }) => field === 'firstCall')?.choices.map(({ value }) => value)).toEqual([
    '2027-03-12T07:00',
    '2027-03-12T19:00',
  ]);
});

test('whoever chose days has said that the message asks for work, whatever it reads like now', () => {
  const text = 'Thank you for the lovely film of our concert on 12 March 2027 in Fargo.';
  expect(read(text).isInquiry).toBe(false);
  expect(read(text, ['2027-03-12'])).toMatchObject({ isInquiry: true, fields: { start: '2027-03-12', end: '2027-03-12' } });
});

test('days with others between them are told one by one', () => {
  const text = 'Please film our two concerts in Fargo on 3 March and 5 March 2027, call 9am, wrap 6pm.';
  expect(read(text)).toMatchObject({
    fields: { start: '2027-03-03', end: '2027-03-05', days: 2 },
    datesFound: ['2027-03-03', '2027-03-05'],
  });
  expect(read('Please film our concerts in Fargo from 3 to 5 March 2027.').datesFound).toBeUndefined();
});

/** Hours of a list of what happens when, an hour that is put right, one that is only for if not, and who hands a job on because he is away. */
import { describe, expect, test } from 'vitest';
import { daysOf, facts, readAt } from './reading.ts';

const DAY = 'Can you film our day on Saturday 5 June?';
const callOf = (text: string): string | undefined => facts(text, undefined, 'leeds').firstCall;

describe('hours of a list without a word for who films are no call', () => {
  test.each([
    'Coffee 9.30\nTalks 10.00-12.30\nLunch 12.30-1.30\nWorkshops 1.30-4.00',
    'Rigging .... 06:30\nPresenters . 09:30\nOn air ..... 10:00-11:45\nDerig ...... 12:00-14:00',
    '09:00-09:30 coffee\n09:30-12:00 prize giving\n12:30-13:30 lunch',
  ])('%s', (list) => expect(callOf(`${DAY}\n${list}\nCheers, Jo`)).toBeUndefined());

  test.each([
    ['2027-06-05T09:00', `${DAY}\nCoffee 9.30\nTalks 10.00-12.30\nLunch 12.30-1.30\nBe there at 9am.`],
    ['2027-06-04T10:00', 'Could you film both days?\nFri 4 June 10:00-18:00\nSat 5 June 10:00-16:00\nSun 6 June closed'],
  ])('%s: %s', (call, text) => expect(callOf(text)).toBe(call));
});

test.each([
  'The rehearsal is in the morning. If you can come to that it is perfect, but if not then at 18:30.',
  'If you can make the rehearsal, great, otherwise come at 6pm.',
])('an hour for if not is asked about: %s', (words) => {
  const { fields, questions } = readAt(`${DAY} ${words}`, undefined, 'leeds');
  expect(fields.firstCall).toBeUndefined();
  expect(questions.some(({ field }) => field === 'firstCall')).toBe(true);
});
test('the same words of something else change no call', () =>
  expect(callOf(`${DAY} Please tell me if not. Arrive at 3pm.`)).toBe('2027-06-05T15:00'));

test('an hour that is put right by what was meant is not stated as it was', () =>
  expect(callOf(`${DAY} can u be there 4ish? i mean 4.30`)).not.toBe('2027-06-05T16:00'));

test.each([
  ['2027-06-05T17:30', 'Last time you came at 5pm, you needn’t come at 5pm, half five will do.'],
  ['2027-06-05T17:00', 'You needn’t come at 3pm, 5pm is fine.'],
  ['2027-06-05T17:00', 'Come at 5pm. Soundcheck at 6pm is fine.'],
])('an hour that will do, %s: %s', (call, words) => expect(callOf(`${DAY} ${words}`)).toBe(call));

test('a call without morning or evening some hours before an hour of the evening is asked about', () =>
  expect(
    callOf(
      'Dear Kit, our talks are on 17 February, 3 March and 10 March, all at 7.30 p.m. The bishop gives the last one and that is the one which we would like to record. You could set up from 6.',
    ),
  ).not.toBe('2027-03-10T06:00'));

test('the previous day is not one that is over', () =>
  expect(callOf(`${DAY} You have to report on the previous day at 8 PM.`)).not.toBe('2027-06-05T20:00'));

test.each([
  ['05-13', 'Hi Kit, I can’t do this one as I’m in Malaga 11-15 May. Want it? A wedding video in Ennis, Saturday 13 May, there for 10.30.'],
  ['05-13', 'Hi Kit, we are not free in April because of Easter so the film shoot is on 13 May. There for 10.30.'],
  ['ask', 'Graduation is on the 14th and 15th of April. Can you film? Day one is Commerce, day two is Arts. I’ve a guy for Commerce.'],
])('who is away then hands it on, and one day of two that is taken is asked about, %s: %s', (days, text) =>
  expect(daysOf(text)).toBe(days),
);

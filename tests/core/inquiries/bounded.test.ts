/**
 * A date that only bounds the day, or is the one by which the film is wanted, leaves the days open where no other is told. One that only stands behind such a
 * word does not.
 */
import { expect, test } from 'vitest';
import { aFair, daysOf } from './reading.ts';

test.each([
  'It has to be after 6 November.',
  "It can't be before 6 November.",
  'It will be shortly after 6 November.',
  '6 November or later.',
  'It is from 6 November on, day to be agreed.',
  'Only once 6 November is over.',
  'Close to 6 November.',
  'The film should be ready on 28 November.',
  'The film goes online on 28 November.',
  'We need the video for 28 November.',
  'The video has to be with us on 28 November.',
  'Finished film: 28 November.',
  'It is on Nov 14, 28.',
  'It is on Nov 14, 18 to 22.',
])('asked: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('ask'));

test.each([
  ['It starts right after the service on 6 November.', '11-06'],
  ["It's the Saturday after 3 November.", '11-06'],
  ['Before I forget: 6 November.', '11-06'],
  ['We need a film of our fair on 6 November.', '11-06'],
  ['The video should be made on 6 November.', '11-06'],
  ['It is on Nov 6, 28 people come.', '11-06'],
  ['It is on Nov 6, 18:00.', '11-06'],
])('stated: %s', (sentence, day) => expect(daysOf(aFair(sentence))).toBe(day));

test.each([
  'Dates: 2027-11-12/14.',
  'Dates: 2027-11-12/2027-11-14.',
  'Dates: 2027-11-12..14.',
  'Dates: 2027-11-12..2027-11-14.',
  'It is on 12..14 November.',
  'It is on Nov 12...14.',
])('a run: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe(daysOf(aFair('It is from 12 to 14 November.'))));

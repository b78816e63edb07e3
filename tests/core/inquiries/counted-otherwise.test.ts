/**
 * Days that a count or a length tells otherwise than their dates.
 */
import { expect, test } from 'vitest';
import { aFair, daysOf, facts, lines } from './reading.ts';

test.each(
  lines(`
  It is five working days from Friday 12 November.
  It is on three consecutive Saturdays, the first of which is 6 November.
  It is on two consecutive weekends, starting on 6 November.
  It is once a month, first on 4 November.
  It's a long weekend, from Friday 12 November.
  It is the three days before 14 November.
  It is the two days after 14 November.
`),
)('asked: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('ask'));

test.each(
  lines(`
  It is a 48 hour race from 6 November.
  It is a 24-hour swim, starting at noon on Saturday 6 November.
  It is on 4 November plus one more day that we have not fixed.
  It is on 4 November and another day still to be fixed.
`),
)('its last day is asked about: %s', (sentence) =>
  expect(facts(aFair(sentence), '2027-09-01T09:12:00-05:00[America/Chicago]').end).toBe(undefined),
);

test.each([
  ['11-06', 'It is on the night of 6/7 November.'],
  ['11-06', 'It is a 12 hour run on 6 November.'],
  ['11-06', 'It is on 6 November, and we have done three Saturdays before.'],
  ['11-08..11-12', 'It is five working days from Monday 8 November.'],
  ['11-05..11-06', 'It is two nights starting Friday 5 November.'],
  ['11-04..11-06', 'It is three evenings beginning 4 November.'],
])('%s: %s', (want, sentence) => expect(daysOf(aFair(sentence))).toBe(want));

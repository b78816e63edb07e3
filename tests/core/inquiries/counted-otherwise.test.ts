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
  ['11-05..11-06', 'It is two evenings starting Friday 5 November.'],
  ['11-04..11-06', 'It is three evenings beginning 4 November.'],
])('%s: %s', (want, sentence) => expect(daysOf(aFair(sentence))).toBe(want));

test.each([
  ['11-12..11-13', 'It is a quiz night 11/12/2027 and 11/13/2027, both to be filmed.', 'duluth'],
  ['11-12..11-13', 'It is each night, 11/12/2027 and 11/13/2027.', 'duluth'],
  ['11-12..11-13', 'There is music into the night on 12/11/2027 and 13/11/2027.', 'leeds'],
  ['11-12,11-19', 'It is the opening night 11/12/2027 and 11/19/2027.', 'duluth'],
  ['11-13..11-14', 'It is the night of 13/11/2027 and the morning of 14/11/2027.', 'leeds'],
  ['11-12..11-13', 'It is a quiz night 12/13 November 2027.', 'leeds'],
])('both days of a night: %s: %s', (want, sentence, home) => expect(daysOf(aFair(sentence), home)).toBe(want));

test.each(
  lines(`
  Our church weekend away is two nights from Friday 12 November 2027, home on Sunday.
  It is a residential weekend, two nights from Friday 12 November 2027.
  It is a stag do, two nights from Friday 12 November 2027.
  We have taken a farmhouse for three nights from Friday 12 November 2027.
  You would stay with us two nights from Friday 12 November 2027.
  We're staying two nights from Friday 12 November 2027.
  Our youth camp lasts three nights from Friday 12 November 2027.
  The cruise is four nights from Friday 12 November 2027.
`),
)('nights in a bed are no days of filming: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('11-12'));

test.each(
  lines(`
  On 13 November 2027, one of three Saturdays we put on a market, from 10 to 4.
  It is on 13 November 2027. The choir meets once a week from 7.
  We are the 48 Hour Film Festival team and our gala is on 13 November 2027.
`),
)('no count of the days: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('11-13'));

test('a night that ends on the second day, which is told again', () =>
  expect(daysOf(aFair('The ball is on Friday 12 November 2027 until 2 am on Saturday, then again on Saturday 13.'))).toBe('11-12..11-13'));

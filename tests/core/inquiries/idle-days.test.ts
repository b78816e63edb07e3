/**
 * Days of a run on which nothing is filmed, and a run that is only how long a hall is held: whether all of it is meant is asked about.
 */
import { expect, test } from 'vitest';
import { aFair, daysOf, lines } from './reading.ts';

test.each(
  lines(`
  It runs 8 to 14 November; the first four days are training and nobody films them.
  It runs 8 to 14 November; the first two days are set-up.
  It runs 8 to 14 November, with the last day for clearing up.
  It runs 8 to 14 November, the first of which is a travel day.
  It runs 8 to 14 November, including a day's travel each way.
  It runs 8 to 14 November and includes one rest day.
  It runs 12 to 14 November; Saturday is a rest day.
  It runs 12 to 14 November; nothing happens on the Saturday.
  It runs 12 to 14 November; you'd be free on the Saturday.
  It is on 12 and 13 November, though I doubt the 13th will happen.
  It takes place on Thursday the 11th and Friday the 12th of November and on Saturday it's the clean-up.
  We have the hall from 11 to 15 November and the concert is on the 13th.
`),
)('asked: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('ask'));

test.each(
  lines(`
  It runs 12 to 14 November. You'd set up on the first day.
  It runs 12 to 14 November. The first day is the busiest.
  It runs 12 to 14 November. The last day is the final.
  It runs 12 to 14 November in the hall, with a rest area for the crew.
  We have the hall for it from 12 to 14 November.
  It is from 12 to 14 November; on the Saturday you would be free from four.
  Our congress is from 12 to 14 November 2027, with a day of sightseeing for guests.
  Our tournament is from 12 to 14 November 2027. The first two days are for training and the rest for matches.
  Our race weekend is from 12 to 14 November 2027. Friday is practice, Saturday qualifying, Sunday the race.
  Our congress is from 12 to 14 November 2027, plus a training day in January.
  Our tour is from 12 to 14 November 2027, with one travel day on a steam train.
  We have the hall from 12 to 14 November 2027 and the party on Saturday starts at 7.
`),
)('all of it: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('11-12..11-14'));

test.each([
  ['11-08..11-12', "It runs 8 to 14 November, and you'd be with us for all but the last two days."],
  ['11-10..11-14', "It runs 8 to 14 November, and you'd be with us for all but the first two days."],
  ['11-08..11-12', 'It runs 8 to 14 November, and we want it all filmed except the last two days.'],
  ['11-13..11-14', 'It runs 8 to 14 November, and we want only the last two days.'],
])('%s: %s', (want, sentence) => expect(daysOf(aFair(sentence))).toBe(want));

test('a day that is only less busy', () =>
  expect(daysOf(aFair('Our fair is on 13 and 14 November 2027. I doubt the 14th will be as busy.'))).toBe('11-13..11-14'));

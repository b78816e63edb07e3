/**
 * Dates that are given to choose from, of which one is counted, or among which the days will lie, are asked about; days that are counted together
 * are stated together, and what was done last year narrows nothing.
 */
import { describe, expect, test } from 'vitest';
import { daysOf, lines } from './reading.ts';

/** A message of some length, with a sentence of its days. */
const aMeeting = (sentence: string): string =>
  `Hi Casey,\n\nI am writing on behalf of the Larkfield Meeting in Ripon. We would like somebody to film it for us, one person with a camera, and to give us a short film afterwards. ${sentence} Please let me know what you would charge.\n\nThanks,\nRobin Vane`;

const daysTold = (sentence: string): string => daysOf(aMeeting(sentence));

describe('asked about: dates to choose from', () => {
  const ways = lines(`
    They have given us two dates, 25 November and 4 December, and we'll finalise later.
    The hall offered us two dates, 25 November and 4 December, and we'll choose next week.
    There are two dates on the table, 25 November and 4 December.
    Two dates are possible, 25 November and 4 December.
    It's on 25 November and 4 December, one evening only.
    25 November and 4 December are both free in the hall; it's one evening.
    It's 25 November unless the hall is taken, then 4 December.
  `);
  test.each(ways)('%s', (way) => expect(daysTold(way)).toBe('ask'));
});

describe('asked about: a window', () => {
  const ways = lines(`
    There's a waiting period from 20 to 29 November for the contest, which takes two days.
    It's a two-day contest with a waiting period from 20 to 29 November. Could you hold the window?
    The contest window runs from 20 to 29 November; two days of it will be called on.
    Please hold 20 to 29 November, we'll call two days of it.
    We hesitate still between Thursday 25 and Friday 26 November.
    For the final we're still between Sunday 14 and Sunday 21 November.
    It is between 25 November and 4 December.
  `);
  test.each(ways)('%s', (way) => expect(daysTold(way)).toBe('ask'));
});

test.each([
  ['11-25,12-04', 'We have two dates, 25 November and 4 December, and want both filmed.'],
  ['11-25,12-04', 'It is on 25 November and 4 December, both evenings.'],
  ['11-12..11-14', 'The window is 12 to 14 November, three days guaranteed.'],
  ['11-12..11-14', 'It is held between 12 and 14 November, all three days.'],
])('stated: %s: %s', (days, way) => expect(daysTold(way)).toBe(days));

describe('days that are counted together', () => {
  test.each([
    [
      '11-12..11-13',
      "It's a two-day booking: rehearsal on Friday, 12 November, 1 pm to 5 pm, and the show on Saturday, 13 November, 7 am to 3 pm.",
    ],
    ['ask', 'It is a two-day conference, the first day 12 November, with a dinner on 13 November.'],
  ])('%s: %s', (days, way) => expect(daysTold(way)).toBe(days));
});

describe('what was done last year', () => {
  test.each([
    [
      '11-11..11-14',
      "It runs from Thursday 11 to Sunday 14 November. We'd love you for all four days (last year you only did the Saturday).",
    ],
    ['11-13', 'It runs from Thursday 11 to Sunday 14 November. We only need you on the Saturday.'],
  ])('%s: %s', (days, way) => expect(daysTold(way)).toBe(days));
});

test('one of two days by its number', () =>
  expect(daysTold('It is on Friday 12 and Saturday 13 November. Please can you film day one only?')).toBe('11-12'));

test('"last December 4" is no day to come', () => {
  const text =
    'Dear Casey,\n\nLast December 4 you filmed our tree lighting (thank you!). This year it is Friday, December 3 at 6 pm in Ripon. Would you do it again? We would need you from 5 pm to 7 pm. We have 275. A one-minute clip for the website again, please.\n\nRobin Vane';
  expect(daysOf(text)).toBe('12-03');
});

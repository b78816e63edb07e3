/** Several days by their places in a month, and days in numbers and lists: "the first and third Saturday in November", "11/12-14", "14. and 28. November". */
import { describe, expect, test } from 'vitest';
import { daysOf, lines } from './reading.ts';

/** A message of a fair, long enough for the weights to know what it is about. */
const fair = (sentence: string): string =>
  `Hi Kit,\n\nI am writing on behalf of the Larkfield Community Fair in Fargo. We would like somebody to film it for us, one person with a camera, and to give us a short film afterwards. ${sentence} Please let me know what you would charge and whether you are free.\n\nThanks,\nRobin Vane`;
const shown = (sentence: string, home = 'duluth'): string => daysOf(fair(sentence), home, '2027-08-23T09:12');

describe('several places in a month', () => {
  test.each([
    ['11-06,11-20', "It's the first and third Saturday of November."],
    ['11-06,11-20', "It's on the 1st & 3rd Sat in November."],
    ['11-06,11-20', "It's on the 1st and 3rd Saturdays in November 2027."],
    ['11-06,11-20', "It's the first Saturday and the third Saturday in November."],
    ['11-06,11-20', "It's the first Saturday of November and the third."],
    ['11-06,11-20', "It's the first Saturday in November and again on the 20th."],
    ['11-06,11-27', "It's the first and the last Saturday in November."],
    ['11-14,11-28', "It's the second Sunday of November plus the last one."],
    ['11-06,11-13,11-20', "It's the first, second and third Saturday of November."],
    ['11-06,11-13', "It's the first two Saturdays in November."],
    ['11-20,11-27', "It's the last two Saturdays of November."],
    ['11-06,11-13,11-20,11-27', "It's all four Saturdays in November."],
    ['11-06,11-13,11-20,11-27', "It's on the four Saturdays of November."],
    ['11-13,11-14,11-27,11-28', "It's the second and fourth weekend of November."],
    ['11-13,11-14,11-27,11-28', "It's the weekends of 13 and 27 November."],
    ['11-27,12-04', "It's the last Saturday in November and the first in December."],
  ])('%s: %s', (days, sentence) => expect(shown(sentence)).toBe(days));

  test.each(
    lines(`
      It's the first or third Saturday of November.
      It's the second Sunday in November or the 28th.
      It's all three Saturdays in November.
      It's the first Saturday of November and the first of December.
      It's a Saturday in November.
    `),
  )('asked about: %s', (sentence) => expect(shown(sentence)).toBe('ask'));

  test.each([
    ['11-06', "It's the first Saturday of November, the 6th."],
    ['10-02', "It'll be the first Saturday of October, the 2nd."],
    ['10-02,10-04', "It'll be the first Saturday of October and the 4th."],
  ])('a number behind the month is a day: %s: %s', (days, sentence) => expect(shown(sentence)).toBe(days));

  test.each(
    lines(`
      It's on 13 November, the second Saturday of the month.
      It's our third fair, on 13 November.
      It's the second Saturday in November, the 13th.
      It's the second Saturday of November, 13 November.
    `),
  )('one day: %s', (sentence) => expect(shown(sentence)).toBe('11-13'));
});

describe('numbers in lists', () => {
  test.each(
    lines(`
      It is 11/12-14.
      Dates are 11/12 - 14.
      It is 11/12-14/2027.
      It is 11/12 through 14.
      It is 11/12, 13 and 14.
      It is 11/12-11/14.
      It is 2027-11-12 until 14.
      It is 2027-11-12 to 14.
    `),
  )('11-12..11-14: %s', (sentence) => expect(shown(sentence)).toBe('11-12..11-14'));

  test.each(
    lines(`
      It is 11/14 & 28.
      It is 11/14 and 28.
      It is 14 November and 28.
      It is 14. and 28. November.
      It is 2027-11-14 & 28.
      It is on 14 as well as 28 November.
    `),
  )('11-14,11-28: %s', (sentence) => expect(shown(sentence)).toBe('11-14,11-28'));

  test('where the day stands first nobody knows what is meant', () => expect(shown('It is 11/12-14.', 'leeds')).toBe('ask'));

  test.each(
    lines(`
      It is 11/12, 2 to 4.
      It is 11/12, 3-5pm.
      It is 11/12 - 14 people are expected.
      It is 11/12 until 2.
      It is 2027-11-12 until 14:00.
      It is 2027-11-12, 14-18 h.
    `),
  )('what stands behind it is no day: %s', (sentence) => expect(shown(sentence)).toBe('11-12'));
});

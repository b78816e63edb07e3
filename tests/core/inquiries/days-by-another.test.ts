/** Days that are told from another day: "the day before 14 November", "and again two weeks later", "the Saturday after the first Sunday in November". */
import { describe, expect, test } from 'vitest';
import { daysOf, lines } from './reading.ts';

/** A message of a fair, long enough for the weights to know what it is about. */
const fair = (sentence: string): string =>
  `Hi Kit,\n\nI am writing on behalf of the Larkfield Community Fair in Fargo. We would like somebody to film it for us, one person with a camera, and to give us a short film afterwards. ${sentence} Please let me know what you would charge and whether you are free.\n\nThanks,\nRobin Vane`;
const shown = (sentence: string): string => daysOf(fair(sentence), 'duluth', '2027-08-23T09:12');

describe('a day that another one tells', () => {
  test.each(
    lines(`
      It is the day before 14 November.
      We're doing it the day before Sunday 14 November.
      It's the evening before November 14th.
      It is on the eve of 14 November.
      It's on the day after November 12.
      It happens the day following 12 November.
      It is exactly a week after 6 November.
      It is a week later than 6 November.
      It's a week before 20 November.
      It is two weeks before the 27th of November.
      It's a fortnight after 30 October.
      It is three days before 16 November.
      It's two days prior to 15 November.
      It is a month after 13 October.
      It is a week on from 6 November.
      It is the Saturday before 14 November.
      It is the Saturday immediately before 14 November.
      It's the Saturday after the first Sunday in November.
      It's the Saturday before the second Sunday in November.
    `),
  )('11-13: %s', (sentence) => expect(shown(sentence)).toBe('11-13'));

  test.each([
    ['11-13..11-14', "It's the weekend before 20 November."],
    ['11-13..11-14', "It's the weekend after 7 November."],
    ['11-27', 'It is the day after the last Friday of November.'],
  ])('%s: %s', (days, sentence) => expect(shown(sentence)).toBe(days));

  test.each(
    lines(`
      It is a few days after 10 November.
      It is in the week after 7 November.
      It's about two weeks after 7 November.
      It is a week from 6 November.
    `),
  )('roughly told it is asked about: %s', (sentence) => expect(shown(sentence)).toBe('ask'));

  test.each(
    lines(`
      It is on 14 November; the stage goes up the day before.
      It is on 14 November, the day after my birthday.
      It is on 14 November, the Sunday before Thanksgiving.
      It is on Sunday 14 November, a week later than last year.
      On 14 November, two weeks after 31 October, we hold it.
    `),
  )('what is told beside it is no other day: %s', (sentence) => expect(shown(sentence)).toBe('11-14'));
});

describe('and another day, told from the one before it', () => {
  test.each([
    ['11-14,11-28', 'It is on 14 November and again two weeks later.'],
    ['11-14,11-28', "It's 14 November and two weeks after that."],
    ['11-14,11-28', 'It is on Sunday 14 November and Sunday a fortnight later.'],
    ['11-14,11-28', 'It is on 28 November and a fortnight earlier.'],
    ['11-14,11-28', 'It is on 28 November and also two weeks before that.'],
    ['11-14,11-21', 'It is on 14 November and again the week after.'],
    ['11-14,11-21', 'It is on Sunday 14 November and the following Sunday.'],
    ['11-14,11-21', "It's on Sunday 21 November and the Sunday before that."],
    ['11-13..11-14', 'It is on 13 November and the day after.'],
    ['11-13..11-14', 'It is on Sunday 14 November and the Saturday before.'],
    ['11-13..11-14', 'It is on 14 November and the day before that.'],
  ])('%s: %s', (days, sentence) => expect(shown(sentence)).toBe(days));

  test.each(
    lines(`
      It is on 14 November or a week later.
      It is 14 November or the day before.
      We do it on 14 November and repeat it two weeks later.
      It is on 14 November unless we move it a week later.
      Part one is on Saturday 13 November, part two the day after.
      It's on Sunday 14 November and the one after.
      It's Friday 12 November and the weekend.
      It's Friday 12 November, all weekend.
      It's the weekend of 13 November plus the Friday before.
    `),
  )('asked about: %s', (sentence) => expect(shown(sentence)).toBe('ask'));
});

describe('days of which nobody is sure', () => {
  test.each(
    lines(`
      It's on the 12th and possibly also the 13th of November.
      It's Friday 12 November and maybe the Saturday.
      It's 12 November and perhaps 13 November.
      It's 12/13 November, one of the two.
      There are two possible dates, 14 November and 28 November.
      We have two dates in mind, 14 November and 28 November.
    `),
  )('asked about: %s', (sentence) => expect(shown(sentence)).toBe('ask'));
});

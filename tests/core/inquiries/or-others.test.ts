/**
 * Days beside which others are named by words that are no date are asked about; so are those of a window that is longer than the work.
 */
import { describe, expect, test } from 'vitest';
import { aFair, daysOf, facts } from './reading.ts';

describe('an "or" right behind the days', () => {
  test.each([
    'It is on 6 and 7 November or 13 and 14, the hall tells us on the 1st.',
    'It is on the 5th and 6th of November, or else a week later.',
    'It is on 5 and 6 November or the 12th and 13th.',
    'It is on 6-7 November or the weekend before.',
    'It is on 6-7 November or two weeks later.',
    'It is on Saturday 6 November or the Saturday after.',
    'It is between 10 and 20 November, two days.',
  ])('asked: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('ask'));

  test.each([
    ['11-06', 'It is on 6 November, 200 people or 250 and 14 of us.'],
    ['11-10..12', 'It is between 10 and 12 November, all three days.'],
  ])('stated: %s: %s', (days, sentence) => {
    const { start, end } = facts(aFair(sentence), '2027-09-01T10:00:00+01:00[Europe/London]', 'leeds');
    const [first = '', last = first] = days.split(/,|\.\./).map((day) => (day.length === 2 ? `11-${day}` : day));
    expect([start, end]).toEqual([`2027-${first}`, `2027-${last}`]);
  });
});

test('the evening before has its half of the day, whatever hours are beside it', () => {
  const text = aFair('It is on Friday 29 October, on air 6 am to 6 pm. Set up is the evening before at 5.');
  expect(facts(text, '2027-09-01T10:00:00+01:00[Europe/London]', 'leeds').firstCall).toBe('2027-10-28T17:00');
});

import { fc, test as law } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { distanceInWords } from '../../../core/words/distance.ts';
import { nearness, timeLeft } from '../../../core/words/left.ts';

const now = Temporal.Instant.from('2026-12-03T21:10:00Z').epochMilliseconds;
const minutes = (count: number): number => now + count * 60_000;

describe('time left, in the words beside a clock', () => {
  test.each([
    [0, '0 min late'],
    [1, '1 min'],
    [59, '59 min'],
    [60, '1 h'],
    [170, '2 h 50'],
    [605, '10 h 05'],
    [2879, '47 h 59'],
    [2880, '2 days'],
    [20 * 1440, '20 days'],
    [21 * 1440, '3 weeks'],
    [-45, '45 min late'],
    [-2 * 1440, '2 days late'],
  ])('%d minutes away: %s', (away, words) => {
    expect(timeLeft(minutes(away), now)).toBe(words);
  });

  test('seconds are not counted up: no clock shows more than there is', () => {
    expect(timeLeft(now + 119_999, now)).toBe('1 min');
  });

  law.prop([fc.integer({ min: 1, max: 1_000_000 })], { numRuns: 200, seed: 7 })(
    'the same length before and after, but for "late"',
    (away) => {
      expect(timeLeft(minutes(-away), now)).toBe(`${timeLeft(minutes(away), now)} late`);
    },
  );
});

describe('where on the ruler: Thursday 3 December 2026, 15:10 in Chicago', () => {
  const near = (wall: string): string =>
    nearness(Temporal.PlainDateTime.from(wall).toZonedDateTime('America/Chicago').epochMilliseconds, now, 'America/Chicago');
  test.each([
    ['2026-12-03T15:10', 'late'],
    ['2026-12-03T23:59', 'today'],
    ['2026-12-04T00:00', 'today'],
    ['2026-12-04T00:01', 'tomorrow'],
    ['2026-12-06T23:59', 'this week'],
    ['2026-12-07T00:00', 'this week'],
    ['2026-12-07T00:01', 'next week'],
    ['2026-12-13T23:59', 'next week'],
    ['2026-12-14T00:00', 'next week'],
    ['2026-12-14T00:01', 'later'],
  ])('%s is %s', (wall, words) => {
    expect(near(wall)).toBe(words);
  });
});

test('a distance in whole units: 640 km are 398 miles of 1.609344 km', () => {
  expect(distanceInWords(640, 'km')).toBe('640 km');
  expect(distanceInWords(640, 'mi')).toBe('398 mi');
});

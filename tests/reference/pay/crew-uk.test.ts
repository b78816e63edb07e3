/**
 * A basic day of 11 h holds 10 h of work and an hour of lunch; overtime begins after it; an hour is a tenth of the day.
 * @source UK Advertising Producers Association, Recommended Terms for Engaging Crew, 2.1.1 and 3.1 to 3.6, 1 September 2014
 */
import { expect, test } from 'vitest';
import { hourlyBase } from '../../../core/days/pay.ts';
import { exact, roundHalfAway } from '../../../core/money/exact.ts';
import { payOfHours } from './hours.ts';

const graded = (times: string) => ({ dayRate: '430', dayHours: '10', overtime: [{ fromHours: '0', toHours: null, times }] });
const LUNCH = 60;

test('430 a day is 43 an hour', () => expect(hourlyBase(graded('1')).equals(43)).toBe(true));
test('11 h with an hour of lunch are the basic day', () => expect(payOfHours(11, graded('1'), LUNCH)).toBe(43_000));
test.each([
  ['1', 4_300],
  ['2', 8_600],
  ['3', 12_900],
])('an hour more at %s times is %i pence', (times, minor) => expect(payOfHours(12, graded(times), LUNCH)).toBe(43_000 + minor));
test('at 1.25 times an hour is 53.75, which the terms print as 54', () => {
  expect(payOfHours(12, graded('1.25'), LUNCH)).toBe(43_000 + 5_375);
  expect(roundHalfAway(exact('53.75'))).toBe(54n);
});

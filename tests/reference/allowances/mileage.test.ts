/**
 * Standard mileage rates by date.
 * @source US Internal Revenue Service, Notice 2026-10, Notice 2025-5, Notice 2024-08, Notice 2023-03 and Announcement 2022-13, business rate, 2022 to 2026
 */
import { expect, test } from 'vitest';
import { lineAmount } from '../../../core/money/money.ts';
import { rateOn, usMileage } from '../../../core/rates/mileage.ts';

const cost = (miles: string, date: string) => lineAmount(miles, rateOn(usMileage, date)?.rate ?? '0', 'USD').minor;

test.each([
  ['2022-06-30', '0.585'],
  ['2022-07-01', '0.625'],
  ['2023-12-31', '0.655'],
  ['2024-02-29', '0.67'],
  ['2025-01-01', '0.70'],
  ['2025-12-31', '0.70'],
  ['2026-01-01', '0.725'],
])('on %s a mile is %s', (date, rate) => expect(rateOn(usMileage, date)?.rate).toBe(rate));
test('before the first known year there is none', () => expect(rateOn(usMileage, '2021-12-31')).toBeUndefined());
test('187.4 miles in 2026 are a tie: 135.865 is 135.87', () => expect(cost('187.4', '2026-05-04')).toBe(13_587));
test('214 miles in 2025 are 149.80', () => expect(cost('214', '2025-05-04')).toBe(14_980));
test('100 miles on each side of 1 July 2022 are 121.00', () => expect(cost('100', '2022-06-30') + cost('100', '2022-07-01')).toBe(12_100));

/**
 * How long the passport of the United States must be valid beyond a stay in some countries.
 * @source US Consulate General Hong Kong and Macau, Less Than Six Months Validity Left on a Passport, 25 November 2022
 */
import { expect, test } from 'vitest';
import { passportRule } from '../../../core/documents/rules.ts';
import { lastsBeyond, monthsLater } from '../../../core/documents/validity.ts';

test.each([
  ['CA', 0],
  ['TH', 6],
  ['SG', 6],
  ['AE', 6],
  ['TR', 6],
  ['HK', 1],
  ['MO', 1],
  ['FR', 3],
  ['DE', 3],
])('%s: %d months', (country, months) => expect(passportRule(country, 'US')?.months).toBe(months));

test('a country that the page does not name is not on file', () => expect(passportRule('KE', 'US')).toBeNull());

test.each([
  ['2026-12-10', '2027-06-10'],
  ['2026-08-31', '2027-02-28'],
  ['2027-08-31', '2028-02-29'],
  ['2027-08-29', '2028-02-29'],
  ['2026-12-31', '2027-06-30'],
])('six calendar months after %s are %s, and the day before does not do', (leaving, needed) => {
  expect(monthsLater(leaving, 6)).toBe(needed);
  expect(lastsBeyond(needed, leaving, 6)).toBe(true);
  expect(lastsBeyond(Temporal.PlainDate.from(needed).subtract({ days: 1 }).toString(), leaving, 6)).toBe(false);
});

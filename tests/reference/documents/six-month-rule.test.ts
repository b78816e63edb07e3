/**
 * Whose passports need only cover the stay in the United States, and whose six months beyond it.
 * @source US Customs and Border Protection, Carrier Liaison Program, Exemption of the Six-Month Passport Validity Rule, 31 January 2024
 */
import { expect, test } from 'vitest';
import { passportRule } from '../../../core/documents/rules.ts';

test.each([
  ['AL', 0],
  ['CA', 0],
  ['DE', 0],
  ['GB', 0],
  ['IN', 0],
  ['MX', 0],
  ['XK', 0],
  ['ZW', 0],
  ['CN', 6],
  ['KE', 6],
  ['VN', 6],
])('a passport of %s is asked for %d months beyond the stay', (passport, months) => {
  const rule = passportRule('US', passport);
  expect(rule?.months).toBe(months);
  expect(rule?.source.on).toBe('2024-01-31');
});

test('a passport of a country that is not known is asked for the six months of the rule', () =>
  expect(passportRule('US', null)?.months).toBe(6));

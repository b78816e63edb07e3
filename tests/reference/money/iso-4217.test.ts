/**
 * Places of minor units.
 * @source ISO 4217 Maintenance Agency (SIX Interbank Clearing), List One: currency, fund and precious metal codes, minor unit column, 2024
 */
import { describe, expect, test } from 'vitest';
import { currencyCodes, exponentOf, isCurrency } from '../../../core/money/currencies.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { amountOf } from '../../../core/money/money.ts';

test.each(['JPY', 'KRW', 'ISK', 'CLP', 'VND', 'XOF', 'XPF'])('%s has no minor unit', (code) => expect(exponentOf(code)).toBe(0));
test.each(['BHD', 'JOD', 'KWD', 'IQD', 'LYD', 'OMR', 'TND'])('%s has three places', (code) => expect(exponentOf(code)).toBe(3));
// The locale library shows these without decimals or with others; the standard's table says two.
test.each(['USD', 'EUR', 'CAD', 'GBP', 'HUF', 'IDR', 'COP', 'PKR', 'MGA', 'MRU'])('%s has two places', (code) =>
  expect(exponentOf(code)).toBe(2),
);
// from memory: Uganda dropped its cents in 2013, the Chilean unit of account has four places
test('UGX has none and CLF four', () => expect([exponentOf('UGX'), exponentOf('CLF')]).toEqual([0, 4]));

describe('amounts take their places from the table', () => {
  test.each([
    ['JPY', '1,235'],
    ['USD', '1,234.57'],
    ['KWD', '1,234.568'],
    ['CLF', '1,234.5679'],
  ])('1,234.56789 %s is written %s', (code, text) => expect(formatMoney(amountOf('1234.56789', code))).toBe(text));
});

// XXX is the standard's own code for no currency, so it must be refused by name.
test('codes are three capitals, and precious metals and test codes are no money', () => {
  expect(currencyCodes.every((code) => /^[A-Z]{3}$/.test(code))).toBe(true);
  expect(['XAU', 'XXX', 'XTS', 'usd', 'XDR'].map(isCurrency)).toEqual([false, false, false, false, false]);
});

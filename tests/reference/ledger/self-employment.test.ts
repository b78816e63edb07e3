/**
 * The set-aside estimate against the rates of the statute and the wage bases of two years, worked through as Schedule SE does.
 * @source United States Code, title 26, sections 1401, 1402(a)(12) and 164(f); Social Security Administration, contribution and benefit base, 2025 and 2026
 */
import { describe, expect, test } from 'vitest';
import { selfEmploymentTax } from '../../../core/ledger/self-employment.ts';
import { money } from '../../../core/money/money.ts';

const usd = (minor: number) => money(minor, 'USD');

describe('Schedule SE, worked', () => {
  test.each([
    ['60,000 in 2026: 55,410.00 x 15.3 %', 6_000_000, 2026, 847_773, 423_887],
    ['200,000 in 2026: 184,500 x 12.4 % + 184,700 x 2.9 %', 20_000_000, 2026, 2_823_430, 1_411_715],
    ['200,000 in 2025: 176,100 x 12.4 % + 184,700 x 2.9 %', 20_000_000, 2025, 2_719_270, 1_359_635],
    ['433.13: 399.9956 of net earnings are under 400', 43_313, 2026, 0, 0],
    ['433.14: 400.0048 are not', 43_314, 2026, 6120, 3060],
  ])('%s', (_, profit, year, tax, half) => {
    expect(selfEmploymentTax(usd(profit), year)).toEqual({ tax: usd(tax), half: usd(half) });
  });
  test('a year whose wage base is not known has no figure', () => {
    expect(selfEmploymentTax(usd(6_000_000), 2031)).toBeUndefined();
  });
});

import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decimalText, exact, fixedText, measured, roundHalfAway } from '../../../core/money/exact.ts';
import { formatMoney, formatNumber, formatPrice } from '../../../core/money/format.ts';
import {
  add,
  amountOf,
  compare,
  CurrencyMixError,
  lineAmount,
  money,
  percentOf,
  subtract,
  sum,
  type Money,
} from '../../../core/money/money.ts';
import { shareOut } from '../../../core/money/share.ts';
import { tried } from '../laws.ts';

const minors = (amounts: readonly Money[]) => amounts.map((amount) => amount.minor);

test('a measured number is exact to the places that it is meant to', () => {
  expect(decimalText(measured(0.1 + 0.2, 6))).toBe('0.3');
  expect(decimalText(measured(409.25, 4))).toBe('409.25');
  expect(() => measured(1e300, 4)).toThrow(RangeError);
});

describe('rounding', () => {
  test.each([
    ['2.5', 3n],
    ['-2.5', -3n],
    ['2.4999999', 2n],
    ['-0.5', -1n],
    ['0', 0n],
    ['0.5', 1n],
  ])('%s goes half away from zero to %s', (value, whole) => expect(roundHalfAway(exact(value))).toBe(whole));

  test('only what is exact comes in', () => {
    expect(() => exact(0.1)).toThrow(RangeError);
    expect(() => exact('1e3')).toThrow(RangeError);
    expect(() => exact('0.(3)')).toThrow(RangeError);
    expect(() => exact('1,000')).toThrow(RangeError);
  });

  test('decimals are written without idle zeros, or with so many places', () => {
    expect(['100', '1250.50', '0.000', '-0.0000000001'].map((text) => decimalText(text))).toEqual(['100', '1250.5', '0', '0']);
    expect(decimalText(exact(1).div(3n))).toBe('0.333333333');
    expect(fixedText('-0.005', 2)).toBe('-0.01');
    expect(fixedText('12', 0)).toBe('12');
  });
});

describe('amounts', () => {
  test('950.00 with a 9 h day, 4 h over at 1.5 times, is rounded once', () => {
    expect(lineAmount('4', exact('950').div(9n).mul('1.5'), 'USD').minor).toBe(63_333);
  });
  test('places come from the currency', () => {
    expect(amountOf('1001', 'JPY')).toEqual({ minor: 1001, currency: 'JPY' });
    expect(amountOf('1.5', 'KWD')).toEqual({ minor: 1500, currency: 'KWD' });
    expect(amountOf('1.5', 'CLF')).toEqual({ minor: 15_000, currency: 'CLF' });
  });
  test('two currencies do not mix, and an unknown one is none', () => {
    expect(() => add(money(1, 'USD'), money(1, 'EUR') as Money as Money<'USD'>)).toThrow(CurrencyMixError);
    expect(() => compare(money(1, 'USD') as Money, money(1, 'CAD'))).toThrow('USD and CAD cannot be added up');
    expect(() => money(1, 'ZZZ')).toThrow(RangeError);
  });
  test('an amount past what a job can cost is refused', () =>
    expect(() => lineAmount('999999999999', '999999999999', 'USD')).toThrow(RangeError));
  test('subtracting what was added comes back', () =>
    expect(subtract(add(money(5, 'USD'), money(7, 'USD')), money(7, 'USD')).minor).toBe(5));
  test('a per cent of an amount is rounded', () => expect(percentOf(money(9_999, 'USD'), '7.25').minor).toBe(725));
});

describe('sharing out', () => {
  test('100.00 in three', () => expect(minors(shareOut(money(10_000, 'USD'), [1, 1, 1]))).toEqual([3334, 3333, 3333]));
  test('JPY 1001 halved', () => expect(minors(shareOut(money(1001, 'JPY'), [1, 1]))).toEqual([501, 500]));
  test('a negative sum goes by magnitude', () => expect(minors(shareOut(money(-10_000, 'USD'), [1, 1, 1]))).toEqual([-3334, -3333, -3333]));
  test('nothing is shared as nothing, even over nothing', () => expect(minors(shareOut(money(0, 'USD'), [0, 0]))).toEqual([0, 0]));
  test('something cannot be shared over nothing, or over less', () => {
    expect(() => shareOut(money(1, 'USD'), [0, 0])).toThrow(RangeError);
    expect(() => shareOut(money(1, 'USD'), [2, -1])).toThrow(RangeError);
    expect(() => shareOut(money(1, 'USD'), [])).toThrow(RangeError);
  });

  const weights = fc
    .array(fc.integer({ min: 0, max: 10_000 }), { minLength: 1, maxLength: 12 })
    .filter((list) => list.some((weight) => weight > 0));
  const amount = fc.integer({ min: -1_000_000_000, max: 1_000_000_000 });
  test('shares add up, and none is a whole unit from its ideal', () =>
    fc.assert(
      fc.property(amount, weights, (minor, list) => {
        const shares = shareOut(money(minor, 'USD'), list);
        expect(sum('USD', shares).minor).toBe(minor);
        const all = list.reduce((total, weight) => total + weight, 0);
        shares.forEach((share, order) => expect(exact(minor).mul(list[order]!).div(all).sub(share.minor).abs().lt(1)).toBe(true));
      }),
      tried,
    ));
  test('the sign makes no difference to the shares', () =>
    fc.assert(
      fc.property(amount, weights, (minor, list) => {
        const turned = minors(shareOut(money(-minor, 'USD'), list)).map((share) => 0 - share);
        expect(turned).toEqual(minors(shareOut(money(minor, 'USD'), list)));
      }),
      tried,
    ));
});

describe('writing', () => {
  test.each([
    [money(123_450, 'USD'), '1,234.50'],
    [money(-123_456_789, 'USD'), '-1,234,567.89'],
    [money(1001, 'JPY'), '1,001'],
    [money(1500, 'KWD'), '1.500'],
    [money(5, 'USD'), '0.05'],
    [money(-5, 'USD'), '-0.05'],
    [money(100, 'USD'), '1.00'],
    [money(99_999, 'USD'), '999.99'],
    [money(100_000, 'USD'), '1,000.00'],
  ])('%o as %s', (amount, text) => expect(formatMoney(amount)).toBe(text));
  test('with its currency where it could be mistaken', () =>
    expect(formatMoney(money(123_450, 'CAD'), { code: true })).toBe('CAD 1,234.50'));
  test('prices keep the places they need, up to four', () => {
    expect(['1200', '0.725', '105.555555556', '0.7'].map((price) => formatPrice(price, 'USD'))).toEqual([
      '1,200.00',
      '0.725',
      '105.5556',
      '0.70',
    ]);
    expect(formatPrice('1200', 'JPY')).toBe('1,200');
    expect(formatPrice('1.5', 'KWD')).toBe('1.500');
  });
  test('numbers lose idle zeros', () => expect(['2.50', '1250', '7.25', '0'].map(formatNumber)).toEqual(['2.5', '1,250', '7.25', '0']));
});

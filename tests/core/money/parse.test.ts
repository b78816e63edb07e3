import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatNumber } from '../../../core/money/format.ts';
import { parseAmount, parseLength, parseNumber, parseQuantity } from '../../../core/money/parse.ts';
import { tried } from '../laws.ts';

const value = (read: { ok: boolean; value?: unknown }) => (read.ok ? read.value : 'refused');

test.each([
  ['1.2k', '1200'],
  ['1 k', '1000'],
  ['1,250.50', '1250.5'],
  ['1 250,50', '1250.5'],
  ['1\u00a0250,50', '1250.5'],
  ["1'250.50", '1250.5'],
  ['1.250,50', '1250.5'],
  ['1,250', '1250'],
  ['1.250.000', '1250000'],
  ['1,250,000.5', '1250000.5'],
  ['12,5', '12.5'],
  ['.5', '0.5'],
  ['-25', '-25'],
  ['\u221225', '-25'],
  ['$900', '900'],
  ['900 USD', '900'],
  ['usd 900', '900'],
  ['0900', '900'],
  ['1.250', 'refused'],
  ['1,2345', 'refused'],
  ['1,25,000', 'refused'],
  ['1.2.3', 'refused'],
  ['1e5', 'refused'],
  ['abc', 'refused'],
  ['', 'refused'],
  ['-', 'refused'],
  ['9999999999999', 'refused'],
])('the amount "%s" is %s', (typed, read) => expect(value(parseAmount(typed))).toBe(read));

test('three places are an amount where the currency has them', () => expect(value(parseAmount('1.250', 3))).toBe('1.25'));
test.each([
  ['7.25', '7.25'],
  ['7,25 %', '7.25'],
  ['1.250', '1.25'],
  ['0.725', '0.725'],
])('the rate "%s" is %s', (typed, read) => expect(value(parseNumber(typed))).toBe(read));

test.each([
  ['6h30', 390],
  ['6 h 30 min', 390],
  ['6:30', 390],
  ['6.5h', 390],
  ['6,5 h', 390],
  ['6h', 360],
  ['7', 420],
  ['90 min', 90],
  ['10 h 40', 640],
])('the length "%s" is %i minutes', (typed, minutes) => expect(value(parseLength(typed))).toEqual({ minutes }));
test.each([
  ['2 days', '2'],
  ['1d', '1'],
  ['1.5 days', '1.5'],
  ['half a day', '0.5'],
])('the length "%s" is %s days', (typed, days) => expect(value(parseLength(typed))).toEqual({ days }));
test.each(['', 'xx', '6:75', '0.333', 'two days'])('the length "%s" is refused with how to write it', (typed) => {
  const read = parseLength(typed);
  expect(read.ok ? '' : read.sentence).toMatch(/write it/);
});

describe('laws', () => {
  test('what was written is read as it was', () =>
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99_999_999 }), (minor) => {
        const decimal = (minor / 100).toFixed(2);
        expect(Number(value(parseNumber(formatNumber(decimal))))).toBe(minor / 100);
      }),
      tried,
    ));
  test('whatever is typed, the answer is a decimal or a sentence', () =>
    fc.assert(
      fc.property(fc.string({ maxLength: 20 }), (typed) => {
        const read = parseAmount(typed);
        if (read.ok) expect(read.value).toMatch(/^-?\d+(\.\d+)?$/);
        else expect(read.sentence.length).toBeGreaterThan(10);
      }),
      tried,
    ));
});

describe('a quantity of a unit', () => {
  test.each([
    ['1.2k', 'mi', '1200'],
    ['2 days', 'days', '2'],
    ['2 days', 'day', '2'],
    ['3 nights', 'nights', '3'],
    ['6h30', 'hours', '6.5'],
    ['6:20', 'hours', '6.333333333'],
    ['90 min', 'hour', '1.5'],
    ['6.5 h', 'hours', '6.5'],
    ['4', '', '4'],
  ])('%s of %s is %s', (typed, unit, value) => {
    expect(parseQuantity(typed, unit)).toEqual({ ok: true, value });
  });

  test.each([
    ['6h30', 'days'],
    ['2 days', 'hours'],
    ['days', 'days'],
    ['lots', 'hours'],
    ['', 'hours'],
  ])('%s of %s is refused with a sentence', (typed, unit) => {
    expect(parseQuantity(typed, unit)).toMatchObject({ ok: false, sentence: expect.stringContaining('write it as') });
  });
});

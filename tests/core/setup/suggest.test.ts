import { expect, test } from 'vitest';
import { isCurrency } from '../../../core/money/currencies.ts';
import { suggestFor } from '../../../core/setup/suggest.ts';

test.each([
  ['US', { currency: 'USD', paper: 'Letter', distance: 'mi' }],
  ['CA', { currency: 'CAD', paper: 'Letter', distance: 'km' }],
  ['GB', { currency: 'GBP', paper: 'A4', distance: 'mi' }],
  ['BG', { currency: 'EUR', paper: 'A4', distance: 'km' }],
  ['KW', { currency: 'KWD', paper: 'A4', distance: 'km' }],
  ['ZZ', { currency: 'USD', paper: 'A4', distance: 'km' }],
])('%s', (country, suggestion) => {
  expect(suggestFor(country)).toEqual(suggestion);
});

test('every suggested currency is one of ISO 4217', () => {
  const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'.split('');
  const countries = letters.flatMap((first) => letters.map((second) => first + second));
  expect(countries.filter((country) => !isCurrency(suggestFor(country).currency))).toEqual([]);
});

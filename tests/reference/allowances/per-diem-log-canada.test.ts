/**
 * Meals and incidentals of who lives in Canada, there and in the United States.
 * @source National Joint Council of the Public Service of Canada, Travel Directive, Appendix C, 1 April 2025
 */
import { expect, test } from 'vitest';
import { ratesAt } from '../../../core/allowances/localities.ts';
import { duluth } from '../../core/quotes/facts.ts';

const rates = (name: string, region: string, country: string) => ratesAt({ ...duluth, name, region, country }, 'CA');

test('a day in Thunder Bay is CAD 130.80', () =>
  expect(rates('Thunder Bay', 'Ontario', 'CA')).toMatchObject([{ place: 'Thunder Bay', day: '130.80', currency: 'CAD' }]));
test('in the United States the same figures are paid in US dollars', () =>
  expect(rates('Duluth', 'Minnesota', 'US')).toMatchObject([{ place: 'Duluth', day: '130.80', currency: 'USD' }]));
test('the north and Alaska have rates of their own, which are not known here', () => {
  expect(rates('Whitehorse', 'Yukon', 'CA')).toEqual([]);
  expect(rates('Anchorage', 'Alaska', 'US')).toEqual([]);
});

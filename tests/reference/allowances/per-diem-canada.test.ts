/**
 * Meals and incidentals in Canada.
 * @source National Joint Council of the Public Service of Canada, Travel Directive, Appendix C, 1 April 2025
 */
import { expect, test } from 'vitest';
import { canada } from '../../../core/allowances/rates.ts';
import { exact } from '../../../core/money/exact.ts';
import { lineAmount } from '../../../core/money/money.ts';

const meals = Object.values(canada.meals).reduce((sum, meal) => sum.add(exact(meal)), exact(0));
test('28.40 + 27.40 + 57.70 are 113.50 of meals', () => expect(meals.equals(exact('113.50'))).toBe(true));
test('with 17.30 of incidentals a day is 130.80', () => expect(meals.add(exact(canada.incidental)).equals(exact(canada.day))).toBe(true));
test('two full days are 261.60', () => expect(lineAmount('2', canada.day, 'CAD').minor).toBe(26_160));

/**
 * Miles and kilometres.
 * @source United States National Bureau of Standards and others, Refinement of values for the yard and the pound (international mile of 1,609.344 m), 1959
 */
import { expect, test } from 'vitest';
import { mileageLines } from '../../../core/quotes/travel.ts';
import { decimalText } from '../../../core/money/exact.ts';
import { card, drive } from '../../core/quotes/facts.ts';

const quantity = (oneWayKm: number, mileageUnit: 'mi' | 'km') => {
  const { lines } = mileageLines({ ...drive, oneWayKm }, { ...card, mileageUnit });
  return lines.map((line) => decimalText(line.quantity));
};
test('100 miles are 160.9344 km', () => expect(quantity(160.9344, 'mi')).toEqual(['200']));
test('a kilometre stays one', () => expect(quantity(160.9, 'km')).toEqual(['321.8']));

/**
 * What a carnet of a list costs: fees by list value, and the security of 40 %, of 55 % for India.
 * @source United States Council for International Business, Register and Apply (fees and security deposits), no date, seen 26 November 2026
 */
import { expect, test } from 'vitest';
import { carnetCost } from '../../../core/documents/carnet.ts';
import { customsList } from '../../../core/documents/customs.ts';
import { blankItem } from '../../../core/kit/blank.ts';

const usd = (dollars: number) => ({ minor: Math.round(dollars * 100), currency: 'USD' });

test.each([
  [1, 255],
  [9_999, 255],
  [10_000, 300],
  [49_999, 300],
  [50_000, 365],
  [149_999, 365],
  [150_000, 425],
  [399_999, 425],
  [400_000, 480],
  [999_999, 480],
  [1_000_001, 545],
])('a list of USD %d pays a fee of USD %d', (list, fee) => expect(carnetCost(usd(list), 'US', 'CA')?.fee).toEqual(usd(fee)));

test('the worked example: a list of 42,000 pays 300 and leaves 16,800, for India 23,100', () => {
  // Invented things; their values add up to the list of the example.
  const values = [18_500, 9_250.5, 14_249.5];
  const items = values.map((value, index) => ({ ...blankItem(`Thing ${index}`), id: `${index}`, version: 1, value: usd(value) }));
  const { total } = customsList({ needs: items.map(({ id }) => ({ item: id, count: 1 })), items, packed: [], rates: [], currency: 'USD' });
  expect(total).toEqual(usd(42_000));
  expect(carnetCost(usd(42_000), 'US', 'CA')).toMatchObject({ fee: usd(300), security: usd(16_800) });
  expect(carnetCost(usd(42_000), 'US', 'IN')?.security).toEqual(usd(23_100));
});

test('nothing is on file for another home or another currency', () => {
  expect(carnetCost(usd(42_000), 'DE', 'CA')).toBeNull();
  expect(carnetCost({ minor: 4_200_000, currency: 'EUR' }, 'US', 'CA')).toBeNull();
});

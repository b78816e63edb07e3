/**
 * Sharing out by largest remainder.
 * @source Hamilton's method of apportionment as textbooks work it, seats example (votes from memory); sums worked by the same rule
 */
import { expect, test } from 'vitest';
import { money } from '../../../core/money/money.ts';
import { shareOut } from '../../../core/money/share.ts';

const shares = (minor: number, weights: readonly number[]) => shareOut(money(minor, 'USD'), weights).map((share) => share.minor);

test('ten seats for 47,000, 16,000, 15,900, 12,000, 6,000 and 3,100 votes', () => {
  expect(shares(10, [47_000, 16_000, 15_900, 12_000, 6_000, 3_100])).toEqual([5, 2, 1, 1, 1, 0]);
});
test.each([
  [10_000, [1, 1, 1], [3_334, 3_333, 3_333]],
  [100, [1, 1, 1, 1, 1, 1], [17, 17, 17, 17, 16, 16]],
  [123_457, [50, 30, 20], [61_729, 37_037, 24_691]],
  [10_001, [50, 30, 20], [5_001, 3_000, 2_000]],
])('%i over %j is %j', (minor, weights, parts) => expect(shares(minor, weights)).toEqual(parts));

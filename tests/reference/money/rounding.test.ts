/**
 * Half away from zero.
 * @source IEEE, Standard for Floating-Point Arithmetic 754, section 4.3.1 roundTiesToAway, 2019
 */
import { expect, test } from 'vitest';
import { amountOf } from '../../../core/money/money.ts';

test.each([
  ['2.345', 235],
  ['2.355', 236],
  ['-2.345', -235],
  ['2.344999999', 234],
  ['1.005', 101],
  ['-1.005', -101],
  ['135.865', 13_587],
])('%s is %i cents', (value, minor) => expect(amountOf(value, 'USD').minor).toBe(minor));

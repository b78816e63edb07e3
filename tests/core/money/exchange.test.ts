import { expect, test } from 'vitest';
import { exchanged } from '../../../core/money/exchange.ts';
import { money, type Money } from '../../../core/money/money.ts';

const rate = { from: 'CAD', to: 'USD', rate: '0.7215', date: '2026-12-04' } as const;
test('is rounded once, half away from zero', () =>
  expect(exchanged(money(100_010, 'CAD'), rate)).toEqual({ minor: 72_157, currency: 'USD' }));
test('between currencies of other places', () =>
  expect(exchanged(money(1_000, 'JPY'), { from: 'JPY', to: 'KWD', rate: '0.0020', date: '2026-12-04' })).toEqual({
    minor: 2_000,
    currency: 'KWD',
  }));
test('a rate from another currency is refused', () =>
  expect(() => exchanged(money(1, 'USD') as Money as Money<'CAD'>, rate)).toThrow('USD and CAD'));

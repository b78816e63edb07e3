import { expect, test } from 'vitest';
import { ratesOn } from '../../../core/people/hand-rates.ts';

const rate = (role: 'audio' | 'photo', dayRate: string, from: string) => ({ role, dayRate, currency: 'USD', from });

test('the newest rate of each role that has begun holds', () => {
  const rates = [
    rate('audio', '420', '2026-06-01'),
    rate('audio', '400', '2026-01-01'),
    rate('photo', '500', '2027-01-01'),
    rate('audio', '450', '2027-01-01'),
  ];
  expect(ratesOn(rates, '2026-06-01').map(({ dayRate }) => dayRate)).toEqual(['420']);
  expect(ratesOn(rates, '2026-05-31').map(({ dayRate }) => dayRate)).toEqual(['400']);
  expect(ratesOn(rates, '2025-12-31')).toEqual([]);
  expect(ratesOn(rates, '2027-01-01').map(({ role, dayRate }) => [role, dayRate])).toEqual([
    ['audio', '450'],
    ['photo', '500'],
  ]);
});

import { describe, expect, test } from 'vitest';
import { billedExpenses, charged } from '../../../core/expenses/billed.ts';

const expense = (given: Partial<Parameters<typeof charged>[0]> = {}) => ({
  id: '01890000-0000-7000-8000-0000000000e1',
  on: '2026-12-12',
  category: 'parking' as const,
  what: 'Parking at the dock',
  amount: { minor: 1_200, currency: 'USD' },
  rate: null,
  markUpPercent: '0',
  billed: true,
  untaxed: null,
  ...given,
});
const minor = (given: Partial<Parameters<typeof charged>[0]>) => charged(expense(given), 'USD').amount?.minor ?? null;

describe('what an expense comes to on a bill', () => {
  test('as it was paid', () => expect(minor({})).toBe(1_200));
  test('with a mark-up of 12.5 %: 12.00 become 13.50', () => expect(minor({ markUpPercent: '12.5' })).toBe(1_350));
  // 118.40 x 1.0835 = 128.2864; with 10 % 141.11504. Rounded only once: rounding between would give 141.12.
  test('in another currency by its dated rate, rounded once', () => {
    const euro = { amount: { minor: 11_840, currency: 'EUR' }, rate: { rate: '1.0835', date: '2026-12-11' } };
    expect(minor(euro)).toBe(12_829);
    expect(minor({ ...euro, markUpPercent: '10' })).toBe(14_112);
    expect(charged(expense({ ...euro, markUpPercent: '10' }), 'USD').reason).toBe(
      'Paid EUR 118.40 on Sat 12 December 2026, at 1.0835 USD for one EUR, the rate of Fri 11 December 2026, with 10 % of mark-up.',
    );
  });
  test('yen have no places: 1,001 at 0.0067 are 6.71', () =>
    expect(minor({ amount: { minor: 1_001, currency: 'JPY' }, rate: { rate: '0.0067', date: '2026-12-11' } })).toBe(671));
  test('not charged on is nothing, and no caution', () =>
    expect(charged(expense({ billed: false }), 'USD')).toMatchObject({ amount: null, caution: null }));
  test('without a rate it waits, and says so', () => {
    const found = charged(expense({ amount: { minor: 11_840, currency: 'EUR' } }), 'USD');
    expect(found).toMatchObject({
      amount: null,
      caution: expect.stringContaining('"Parking at the dock" of Sat 12 December 2026 is in EUR and this job in USD'),
    });
  });
});

test('lines for the bill have their own ids; what bears no tax says why', () => {
  const { lines, changes, cautions } = billedExpenses(
    [expense(), expense({ id: '01890000-0000-7000-8000-0000000000e2', untaxed: 'paid in your name' }), expense({ billed: false })],
    'USD',
  );
  expect(lines.map(({ id, section }) => [id, section])).toEqual([
    ['expense/01890000-0000-7000-8000-0000000000e1', 'travel'],
    ['expense/01890000-0000-7000-8000-0000000000e2', 'travel'],
  ]);
  expect(changes).toEqual([
    { op: 'tax', ids: ['expense/01890000-0000-7000-8000-0000000000e2'], state: 'exempt', reason: 'paid in your name' },
  ]);
  expect(cautions).toEqual([]);
});

/**
 * What payments settle: parts, what is over, gain and loss by rates, and where credit is taken from.
 */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exchanged } from '../../../core/money/exchange.ts';
import { money, sum, type Money } from '../../../core/money/money.ts';
import { settledParts, settleTroubles, takenFrom, type Settled } from '../../../core/invoices/settle.ts';
import { tried } from '../laws.ts';

const usd = (minor: number): Money => money(minor, 'USD');
const eur = (minor: number): Money => money(minor, 'EUR');
const supply = { rate: '1.08', date: '2026-10-01' };
const paid = { rate: '1.1', date: '2026-10-20' };
const invoice = (id: string, payable: Money, rate: Settled['rate'] = null): Settled => ({ id, number: id, payable, void: false, rate });

describe('a payment', () => {
  test('in the currency of its invoices: the parts as they are, what is over as credit', () => {
    const parts = [{ invoice: invoice('a', usd(10_000)), amount: usd(10_000) }];
    const of = { amount: usd(12_500), rate: null, home: 'USD' };
    expect(settleTroubles(of, parts, false)).toEqual(['USD 25.00 is over. Keep it as credit of the client, or correct the amount.']);
    expect(settledParts(of, parts)).toEqual([
      { invoiceId: 'a', amount: usd(10_000), gain: null },
      { invoiceId: null, amount: usd(2500), gain: null },
    ]);
  });

  test('in euro for an invoice at home pays what it comes to by its rate', () => {
    const parts = [{ invoice: invoice('a', usd(10_000)), amount: usd(10_000) }];
    // 100.00 at 1.10 are 110.00.
    const of = { amount: eur(10_000), rate: paid, home: 'USD' };
    expect(settleTroubles(of, parts, true)).toEqual([]);
    expect(settledParts(of, parts)[1]).toEqual({ invoiceId: null, amount: usd(1000), gain: null });
  });

  test('in dollars for two invoices in euro: each part is worth its share of the dollars', () => {
    const parts = [
      { invoice: invoice('a', eur(10_000), supply), amount: eur(10_000) },
      { invoice: invoice('b', eur(5000), supply), amount: eur(5000) },
    ];
    // 165.00 dollars for 150.00 euro: 110.00 and 55.00, less 108.00 and 54.00 at supply.
    expect(settledParts({ amount: usd(16_500), rate: null, home: 'USD' }, parts).map(({ gain }) => gain)).toEqual([usd(200), usd(100)]);
  });

  test.each([
    [
      'two currencies at once',
      { amount: usd(100), rate: null, home: 'USD' },
      [
        { invoice: invoice('a', usd(50)), amount: usd(50) },
        { invoice: invoice('b', eur(50), supply), amount: eur(50) },
      ],
      'The invoices are in USD and EUR. Record one payment for each currency.',
    ],
    ['without its rate', { amount: eur(100), rate: null, home: 'USD' }, [], 'EUR needs its rate: USD for one EUR on the date of payment.'],
    [
      'more than is open',
      { amount: usd(100), rate: null, home: 'USD' },
      [{ invoice: invoice('a', usd(50)), amount: usd(100) }],
      'a: 0.50 is open, not 1.00.',
    ],
    [
      'on an invoice that was credited',
      { amount: usd(50), rate: null, home: 'USD' },
      [{ invoice: { ...invoice('a', usd(0)), void: true }, amount: usd(50) }],
      'a was credited; nothing can be paid on it. Pay the one that took its place.',
    ],
    [
      'in another currency than its part',
      { amount: usd(50), rate: null, home: 'USD' },
      [{ invoice: invoice('a', usd(50)), amount: eur(50) }],
      'a is in USD, not in EUR.',
    ],
  ])('%s is refused in words', (_, of, parts, sentence) => {
    expect(settleTroubles(of, parts, true)).toEqual([sentence]);
  });

  test('law: its parts and what is over add up to it; its gains to what it was worth less what its invoices were', () => {
    const amounts = fc.array(fc.integer({ min: 1, max: 900_000 }), { minLength: 1, maxLength: 6 });
    const cases = fc.record({
      amounts,
      over: fc.nat(50_000),
      at: fc.integer({ min: 50, max: 200 }),
      came: fc.integer({ min: 1, max: 9_000_000 }),
    });
    fc.assert(
      fc.property(cases, ({ amounts: minors, over, at, came }) => {
        const parts = minors.map((minor, order) => ({ invoice: invoice(`i${order}`, eur(minor), supply), amount: eur(minor) }));
        const total = minors.reduce((all, minor) => all + minor, 0);
        const inEuro = { amount: eur(total + over), rate: { rate: `${at / 100}`, date: '2026-10-20' }, home: 'USD' };
        expect(settleTroubles(inEuro, parts, true)).toEqual([]);
        expect(
          sum<string>(
            'EUR',
            settledParts(inEuro, parts).map(({ amount }) => amount),
          ),
        ).toEqual(eur(total + over));

        const settled = settledParts({ amount: usd(came), rate: null, home: 'USD' }, parts);
        const atSupply = parts.map(({ amount }) => exchanged<string, string>(amount, { from: 'EUR', to: 'USD', ...supply }).minor);
        const gains = settled.map(({ gain }) => gain?.minor ?? 0);
        expect(gains.reduce((all, gain) => all + gain, 0)).toBe(came - atSupply.reduce((all, minor) => all + minor, 0));
      }),
      tried,
    );
  });
});

describe('credit', () => {
  test('is taken in its order, and only as much as there is', () => {
    const credits = [
      { invoiceId: null, amount: usd(300) },
      { invoiceId: 'a', amount: usd(500) },
    ];
    expect(takenFrom(credits, usd(450))).toEqual([
      { invoiceId: null, amount: usd(-300), gain: null },
      { invoiceId: 'a', amount: usd(-150), gain: null },
    ]);
    expect(takenFrom(credits, usd(801))).toBeNull();
  });
});

import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ageings, clientsOwing, owedOf, type OpenPaper } from '../../../core/ledger/owed.ts';
import { sumOf } from '../../../core/ledger/sums.ts';
import { money, sum } from '../../../core/money/money.ts';
import { tried } from '../laws.ts';

const usd = (minor: number) => money(minor, 'USD');
const eur = (minor: number) => money(minor, 'EUR');
const AS_OF = '2026-12-03';
const paper = (given: Partial<OpenPaper>): OpenPaper => ({
  clientId: 'a',
  billedTo: 'Harbour Dental',
  dueDate: '2026-12-31',
  open: usd(10_000),
  rate: null,
  daysLate: 0,
  state: 'open',
  ...given,
});

describe('sums over currencies', () => {
  test('each stands by itself, and all at home by the stored rates', () => {
    const items = [
      { amount: eur(100_00), rate: '1.10' },
      { amount: usd(50_00), rate: null },
      { amount: eur(33_33), rate: '1.2' },
    ];
    // 100.00 x 1.10 = 110.00; 33.33 x 1.2 = 39.996, rounded 40.00; with 50.00 that is 200.00.
    expect(sumOf(items, 'USD')).toEqual({ by: [usd(50_00), eur(133_33)], home: usd(200_00) });
  });

  test('without a rate nothing is added at home', () => {
    expect(sumOf([{ amount: eur(100), rate: null }], 'USD')).toEqual({ by: [eur(100)], home: null });
    expect(sumOf([], 'USD')).toEqual({ by: [], home: usd(0) });
  });

  test('places of a currency are those of the standard: 1,001 yen at 0.0067 are 6.71 dollars', () => {
    expect(sumOf([{ amount: money(1001, 'JPY'), rate: '0.0067' }], 'USD').home).toEqual(usd(671));
  });
});

describe('who owes', () => {
  const papers = [
    paper({ open: usd(1_840_00), dueDate: '2026-12-01', daysLate: 2, state: 'late' }),
    paper({ open: usd(2_470_00) }),
    paper({
      open: eur(500_00),
      rate: { rate: '1.1' },
      clientId: null,
      billedTo: 'Bakers',
      dueDate: '2026-08-01',
      daysLate: 124,
      state: 'disputed',
    }),
    paper({ open: usd(0), state: 'paid' }),
  ];

  test('open, late, disputed', () => {
    expect(owedOf(papers, 'USD')).toEqual({
      open: { by: [usd(4_310_00), eur(500_00)], home: usd(4_860_00) },
      openCount: 3,
      late: { by: [usd(1_840_00), eur(500_00)], home: usd(2_390_00) },
      lateCount: 2,
      disputed: { by: [eur(500_00)], home: usd(550_00) },
    });
  });

  test('by age in each currency, home first', () => {
    const shown = ageings(papers, AS_OF, 'USD').map(({ currency, total, rows }) => [
      currency,
      total.minor,
      rows.map(({ amount, count }) => [amount.minor, count]),
    ]);
    expect(shown).toEqual([
      [
        'USD',
        4_310_00,
        [
          [2_470_00, 1],
          [1_840_00, 1],
          [0, 0],
          [0, 0],
          [0, 0],
        ],
      ],
      [
        'EUR',
        500_00,
        [
          [0, 0],
          [0, 0],
          [0, 0],
          [0, 0],
          [500_00, 1],
        ],
      ],
    ]);
  });

  test('by client, the most first; without a client by the name billed to', () => {
    expect(clientsOwing(papers, 'USD').map(({ clientId, name, count, daysLate }) => [clientId, name, count, daysLate])).toEqual([
      ['a', 'Harbour Dental', 2, 2],
      [null, 'Bakers', 1, 124],
    ]);
  });
});

const day = fc.integer({ min: 0, max: 400 }).map((days) => Temporal.PlainDate.from('2026-01-01').add({ days }).toString());
const somePaper = fc.record({
  clientId: fc.constantFrom('a', 'b', null),
  billedTo: fc.constantFrom('Harbour Dental', 'Bakers'),
  dueDate: day,
  open: fc.tuple(fc.integer({ min: 0, max: 5_000_00 }), fc.constantFrom('USD', 'EUR')).map(([minor, currency]) => money(minor, currency)),
  rate: fc.constant({ rate: '1.07' }),
  state: fc.constantFrom('open', 'disputed'),
});
const asMet = (given: Omit<OpenPaper, 'daysLate'>): OpenPaper => ({
  ...given,
  daysLate: Math.max(0, Temporal.PlainDate.from(given.dueDate).until(AS_OF, { largestUnit: 'days' }).days),
});

describe('laws', () => {
  test('the buckets of a currency add up to what is open in it, and all of it to the sum of the papers', () => {
    fc.assert(
      fc.property(fc.array(somePaper), (given) => {
        const papers = given.map(asMet);
        const { open, late } = owedOf(papers, 'USD');
        const ages = ageings(papers, AS_OF, 'USD');
        for (const { currency, total, rows } of ages) {
          expect(
            sum(
              currency,
              rows.map(({ amount }) => amount),
            ),
          ).toEqual(total);
          expect(papers.filter((each) => each.open.currency === currency).reduce((all, each) => all + each.open.minor, 0)).toBe(
            total.minor,
          );
        }
        expect(open.by).toEqual(ages.map(({ total }) => total));
        const lateRows = ages.flatMap(({ rows }) => rows.slice(1).map(({ amount }) => amount.minor));
        expect(late.by.reduce((all, { minor }) => all + minor, 0)).toBe(lateRows.reduce((all, minor) => all + minor, 0));
      }),
      tried,
    );
  });

  test('clients add up to the sum, also at home; the order of entry changes nothing', () => {
    fc.assert(
      fc.property(fc.array(somePaper), (given) => {
        const papers = given.map(asMet);
        const clients = clientsOwing(papers, 'USD');
        expect(clients.reduce((all, { open }) => all + (open.home?.minor ?? Number.NaN), 0)).toBe(owedOf(papers, 'USD').open.home?.minor);
        expect(clientsOwing(papers.toReversed(), 'USD')).toEqual(clients);
        expect(owedOf(papers.toReversed(), 'USD')).toEqual(owedOf(papers, 'USD'));
        expect(ageings(papers.toReversed(), AS_OF, 'USD')).toEqual(ageings(papers, AS_OF, 'USD'));
      }),
      tried,
    );
  });
});

import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { incomeOf, type PartPaid } from '../../../core/ledger/income.ts';
import { yearSetAside } from '../../../core/ledger/year-set-aside.ts';
import { yearSums, type Billed, type Received } from '../../../core/ledger/year.ts';
import { money } from '../../../core/money/money.ts';
import { tried } from '../laws.ts';

const usd = (minor: number) => money(minor, 'USD');
const eur = (minor: number) => money(minor, 'EUR');
const part = (given: Partial<PartPaid>): PartPaid => ({
  id: 'p',
  on: '2026-03-01',
  madeAt: 1,
  amount: usd(100_00),
  gain: null,
  payment: { currency: 'USD', rate: null },
  invoice: { id: 'i', asked: usd(107_24), tax: usd(7_25), rate: null },
  ...given,
});

describe('what came in', () => {
  test('a bill of 107.24 with 7.25 of tax, paid in three parts: the shares add up to its tax', () => {
    const parts = [
      part({ id: 'a', on: '2026-03-01', amount: usd(35_75) }),
      part({ id: 'b', on: '2026-03-02', amount: usd(35_75) }),
      part({ id: 'c', on: '2026-03-03', amount: usd(35_74) }),
    ];
    // 7.25 x 35.75 / 107.24 = 2.417 -> 2.42; x 71.50 / 107.24 = 4.834 -> 4.83, so 2.41; the rest is 2.42.
    expect(incomeOf(parts, 'USD').map(({ tax }) => tax.minor)).toEqual([2_42, 2_41, 2_42]);
  });

  test('what is paid past the bill holds no tax; what goes back takes its share with it', () => {
    const over = [part({ id: 'a', amount: usd(107_24) }), part({ id: 'b', on: '2026-03-05', amount: usd(10_00) })];
    expect(incomeOf(over, 'USD').map(({ tax }) => tax.minor)).toEqual([7_25, 0]);
    const turned = [part({ id: 'a', amount: usd(107_24) }), part({ id: 'b', on: '2026-03-05', amount: usd(-107_24) })];
    expect(incomeOf(turned, 'USD').map(({ tax }) => tax.minor)).toEqual([7_25, -7_25]);
  });

  test('a bill in euro is worth what the rate of its payment made of it', () => {
    const invoice = { id: 'i', asked: eur(119_00), tax: eur(19_00), rate: '1.10' };
    const [inEuro] = incomeOf([part({ amount: eur(119_00), payment: { currency: 'EUR', rate: '1.12' }, invoice })], 'USD');
    // 119.00 x 1.12 = 133.28, of which 19/119 = 21.28.
    expect(inEuro?.home).toEqual({ amount: usd(133_28), tax: usd(21_28) });
    const [inDollars] = incomeOf([part({ amount: eur(119_00), gain: usd(2_38), invoice })], 'USD');
    // Worth 130.90 at supply, and 2.38 gained since.
    expect(inDollars?.home?.amount).toEqual(usd(133_28));
    const [unknown] = incomeOf([part({ amount: eur(119_00), payment: { currency: 'EUR', rate: null }, invoice })], 'USD');
    expect(unknown?.home).toBeNull();
  });

  test('credit is money that came in for no bill yet', () => {
    expect(incomeOf([part({ invoice: null })], 'USD')[0]).toMatchObject({ tax: usd(0), home: { amount: usd(100_00), tax: usd(0) } });
  });

  test('law: however a bill is paid in parts, its tax comes out whole, and the order of entry changes nothing', () => {
    const asked = fc.integer({ min: 1, max: 10_000_00 });
    const cuts = fc.array(fc.integer({ min: 1, max: 99 }), { maxLength: 5 });
    fc.assert(
      fc.property(asked, fc.integer({ min: 0, max: 30 }), cuts, (gross, percent, shares) => {
        const tax = Math.round((gross * percent) / (100 + percent));
        const invoice = { id: 'i', asked: usd(gross), tax: usd(tax), rate: null };
        let left = gross;
        const amounts = shares.map((share) => {
          const amount = Math.floor((left * share) / 100);
          left -= amount;
          return amount;
        });
        const parts = [...amounts, left].map((minor, index) => part({ id: `p${index}`, madeAt: index, amount: usd(minor), invoice }));
        const income = incomeOf(parts, 'USD');
        expect(income.reduce((all, each) => all + each.tax.minor, 0)).toBe(tax);
        expect(incomeOf(parts.toReversed(), 'USD')).toEqual(income);
      }),
      tried,
    );
  });
});

const about = { clientId: 'a', clientName: 'Bakers', jobId: 'j', jobTitle: 'Congress' };
const billed = (on: string, minor: number, given: Partial<Billed> = {}): Billed => ({
  ...about,
  on,
  asked: usd(minor),
  rate: null,
  ...given,
});
const received = (on: string, minor: number, given: Partial<Received> = {}): Received => ({
  ...about,
  id: on,
  on,
  amount: usd(minor),
  tax: usd(0),
  home: { amount: usd(minor), tax: usd(0) },
  ...given,
});

describe('a year', () => {
  const sums = yearSums(
    [
      billed('2026-01-31', 3_100_00),
      billed('2026-02-01', 3_140_00),
      billed('2026-02-03', -140_00),
      billed('2025-12-31', 999_00),
      billed('2026-02-10', 0, { asked: eur(500_00), rate: '1.1', clientId: null, clientName: 'Robotics', jobId: 'k', jobTitle: 'Final' }),
    ],
    [
      received('2026-02-28', 3_100_00),
      received('2027-01-01', 3_000_00),
      received('2026-03-01', 0, {
        amount: eur(500_00),
        home: { amount: usd(555_00), tax: usd(0) },
        clientId: null,
        clientName: 'Robotics',
        jobId: 'k',
        jobTitle: 'Final',
      }),
    ],
    2026,
    'USD',
  );

  test('billed and received by month, each by its own date, the other years left out', () => {
    expect(sums.months.slice(0, 3).map(({ month, billed: b, received: r }) => [month, b.home?.minor, r.home?.minor])).toEqual([
      ['2026-01', 3_100_00, 0],
      ['2026-02', 3_550_00, 3_100_00],
      ['2026-03', 0, 555_00],
    ]);
    expect(sums.months).toHaveLength(12);
  });

  test('by client and by job, each in its own currency', () => {
    expect(sums.clients.map(({ name, billed: b, received: r }) => [name, b.by, r.by])).toEqual([
      ['Bakers', [usd(6_100_00)], [usd(3_100_00)]],
      ['Robotics', [eur(500_00)], [eur(500_00)]],
    ]);
    expect(sums.jobs.map(({ title }) => title)).toEqual(['Congress', 'Final']);
    expect(sums.received.home).toEqual(usd(3_655_00));
  });

  test('law: months, clients and jobs add up to the year', () => {
    const date = fc.integer({ min: 0, max: 364 }).map((days) => Temporal.PlainDate.from('2026-01-01').add({ days }).toString());
    const entry = fc.tuple(date, fc.integer({ min: -1_000_00, max: 9_000_00 }), fc.constantFrom('a', 'b', null));
    fc.assert(
      fc.property(fc.array(entry), fc.array(entry), (papers, parts) => {
        const all = yearSums(
          papers.map(([on, minor, clientId]) => billed(on, minor, { clientId, jobId: clientId })),
          parts.map(([on, minor, clientId], index) => received(on, minor, { id: String(index), clientId, jobId: clientId })),
          2026,
          'USD',
        );
        for (const rows of [all.months, all.clients, all.jobs]) {
          expect(rows.reduce((sum, row) => sum + (row.billed.home?.minor ?? 0), 0)).toBe(all.billed.home?.minor);
          expect(rows.reduce((sum, row) => sum + (row.received.home?.minor ?? 0), 0)).toBe(all.received.home?.minor);
        }
      }),
      tried,
    );
  });
});

describe('what to set aside of a year', () => {
  const year = {
    year: 2026,
    home: { currency: 'USD', country: 'US' },
    percent: '28',
    received: [received('2026-02-01', 60_725_00, { tax: usd(725_00), home: { amount: usd(60_725_00), tax: usd(725_00) } })],
    spent: [
      { amount: usd(7_000_00), rate: null },
      { amount: eur(1_000_00), rate: '1.1' },
    ],
    paidToHands: [{ amount: usd(1_900_00), rate: null }],
  };

  test('tax that was collected is not mine; costs at their rates and what hands were paid are taken off', () => {
    // 60,725.00 - 725.00 = 60,000.00; 7,000.00 + 1,100.00 + 1,900.00 = 10,000.00; 28 % of 50,000.00.
    expect(yearSetAside(year)).toMatchObject({
      income: usd(60_000_00),
      collected: usd(725_00),
      costs: usd(10_000_00),
      profit: usd(50_000_00),
      amount: usd(14_000_00),
      // 50,000.00 x 0.9235 x 0.153 = 7,064.775.
      selfEmployment: { tax: usd(7_064_78) },
    });
  });

  test('what cannot be counted is named', () => {
    const { cautions } = yearSetAside({
      ...year,
      percent: null,
      received: [...year.received, received('2026-03-01', 0, { amount: eur(100), home: null })],
      spent: [{ amount: eur(100), rate: null }],
    });
    expect(cautions.slice(0, 3)).toEqual([
      'The share to set aside is part of your own year: fill it in in Setup.',
      '1 payment in another currency without a rate is left out.',
      '1 cost in another currency without a rate is left out.',
    ]);
  });

  test('the tax of one country is not told to another', () => {
    expect(yearSetAside({ ...year, home: { currency: 'USD', country: 'EC' } }).selfEmployment).toBeNull();
  });
});

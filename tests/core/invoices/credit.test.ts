import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { creditOf, creditTroubles, leftOfLines, type EarlierCredit, type Issued } from '../../../core/invoices/credit.ts';
import { depositLines, setOff, toPayOf } from '../../../core/invoices/deposit.ts';
import { sumsOf, type InvoiceLine } from '../../../core/invoices/lines.ts';
import { percentOf, money, sum, type Money } from '../../../core/money/money.ts';
import { taxLines, type Tax } from '../../../core/money/taxes.ts';
import { tried } from '../laws.ts';

const usd = (minor: number): Money => money(minor, 'USD');
const vat = (percent: string): Tax => ({ name: 'VAT', percent, state: 'rated', reason: '' });
const line = (id: string, minor: number, percent: string): InvoiceLine => ({
  id,
  section: 'days',
  what: id,
  quantity: '2',
  unit: 'days',
  unitPrice: String(minor / 200),
  amount: usd(minor),
  taxes: [vat(percent)],
});
const issued = (lines: InvoiceLine[], included = false): Issued => ({ lines, included, totals: sumsOf('USD', lines, included) });
const total = (credits: readonly EarlierCredit[], invoice: Issued) =>
  sum<string>('USD', [invoice.totals.gross, ...credits.map(({ totals }) => totals.gross)]).minor;

describe('a deposit', () => {
  const lines = [line('a', 100_000, '20'), line('b', 50_000, '0')];
  const bill = taxLines<string>('USD', lines, false);
  const deposit = percentOf(bill.gross, '50');

  test('half of 1,700.00 is 600.00 (500.00 + 100.00 tax) and 250.00; tax left for the final bill is 100.00', () => {
    const own = depositLines(deposit, bill.baskets, 'Deposit, 50 %');
    expect(own.map(({ amount }) => amount.minor)).toEqual([60_000, 25_000]);
    const totals = sumsOf('USD', own, true);
    expect(totals.taxes.map(({ percent, net, tax }) => [percent, net.minor, tax.minor])).toEqual([
      ['20', 50_000, 10_000],
      ['0', 25_000, 0],
    ]);

    const final = sumsOf('USD', lines, false);
    const off = setOff([{ invoiceId: 'x', number: '2026-001', date: '2026-02-01', totals }]);
    expect(off[0]?.groups.map(({ net, tax }) => [net.minor, tax.minor])).toEqual([
      [-50_000, -10_000],
      [-25_000, 0],
    ]);
    expect(toPayOf(final, off)).toEqual(usd(85_000));
    expect(final.tax.minor + (off[0]?.tax.minor ?? 0)).toBe(10_000);
  });
  test('law: the parts of a deposit add up to it, whatever the taxes', () => {
    const lists = fc.array(fc.tuple(fc.integer({ min: 1, max: 500_000 }), fc.constantFrom('0', '5', '7.25', '20')), {
      minLength: 1,
      maxLength: 6,
    });
    fc.assert(
      fc.property(lists, fc.integer({ min: 1, max: 100 }), (list, percent) => {
        const taxed = taxLines<string>(
          'USD',
          list.map(([minor, rate]) => ({ amount: usd(minor), taxes: [vat(rate)] })),
          false,
        );
        const asked = percentOf(taxed.gross, percent);
        const totals = sumsOf('USD', depositLines(asked, taxed.baskets, 'Deposit'), true);
        expect(totals.gross).toEqual(asked);
        expect(totals.net.minor + totals.tax.minor).toBe(asked.minor);
      }),
      tried,
    );
  });
});

describe('a credit note', () => {
  const invoice = issued([line('a', 10_001, '20'), line('b', 5000, '20'), line('c', 333, '0')]);

  test('in full repeats every amount with the sign turned', () => {
    const credit = creditOf(invoice, [], 'all');
    expect(credit.lines.map(({ quantity, amount }) => [quantity, amount.minor])).toEqual([
      ['-2', -10_001],
      ['-2', -5000],
      ['-2', -333],
    ]);
    expect(total([credit], invoice)).toBe(0);
    expect(credit.totals.taxes.map(({ net, tax }) => [net.minor, tax.minor])).toEqual([
      [-15_001, -3000],
      [-333, 0],
    ]);
  });
  test('a part takes no more than is left of a line', () => {
    const first = creditOf(invoice, [], [{ id: 'a', amount: usd(4000) }]);
    expect(first.totals).toMatchObject({ net: usd(-4000), tax: usd(-800), gross: usd(-4800) });
    expect(first.lines[0]).toMatchObject({ quantity: '1', unitPrice: '-40', amount: usd(-4000) });
    expect(leftOfLines(invoice, [first]).map(({ left }) => left.minor)).toEqual([6001, 5000, 333]);
    expect(creditTroubles(invoice, [first], [{ id: 'a', amount: usd(6002) }])).toEqual(['a: 60.01 is left to credit, not 60.02.']);
  });
  test.each([
    ['nothing named', [], ['Name at least one line to credit.']],
    ['an unknown line', [{ id: 'z', amount: usd(1) }], ['The invoice has no line "z".']],
    ['the wrong sign', [{ id: 'c', amount: usd(-1) }], ['c: 3.33 is left to credit, not -0.01.']],
    ['nothing of a line', [{ id: 'c', amount: usd(0) }], ['c: 3.33 is left to credit, not 0.00.']],
    [
      'a line twice',
      [
        { id: 'c', amount: usd(1) },
        { id: 'c', amount: usd(1) },
      ],
      ['A line is named twice; give it one amount.'],
    ],
    ['another currency', [{ id: 'c', amount: money(1, 'EUR') }], ['c is in USD, not in EUR.']],
  ])('refused: %s', (_, asked, sentences) => {
    expect(creditTroubles(invoice, [], asked)).toEqual(sentences);
  });
  test('refused: everything was credited', () => {
    expect(creditTroubles(invoice, [creditOf(invoice, [], 'all')], 'all')).toEqual(['Everything on this invoice was credited already.']);
  });
  test('law: however it is credited in parts, the last brings net, tax and gross of every group to zero', () => {
    const cases = fc.record({
      lines: fc.array(fc.tuple(fc.integer({ min: 1, max: 99_999 }), fc.constantFrom('0', '7', '19')), { minLength: 1, maxLength: 4 }),
      included: fc.boolean(),
      cuts: fc.array(fc.tuple(fc.nat(3), fc.integer({ min: 1, max: 99 })), { maxLength: 5 }),
    });
    fc.assert(
      fc.property(cases, ({ lines, included, cuts }) => {
        const paper = issued(
          lines.map(([minor, percent], index) => line(`l${index}`, minor, percent)),
          included,
        );
        const credits: EarlierCredit[] = [];
        for (const [place, percent] of cuts) {
          const { id, left } = leftOfLines(paper, credits)[place % lines.length] ?? { id: '', left: usd(0) };
          const asked = [{ id, amount: percentOf(left, percent) }];
          if (creditTroubles(paper, credits, asked).length === 0) credits.push(creditOf(paper, credits, asked));
        }
        if (creditTroubles(paper, credits, 'all').length === 0) credits.push(creditOf(paper, credits, 'all'));
        const all = [paper.totals, ...credits.map(({ totals }) => totals)];
        for (const key of ['net', 'tax', 'gross'] as const) expect(all.reduce((left, totals) => left + totals[key].minor, 0)).toBe(0);
        for (const group of paper.totals.taxes) {
          const same = all.flatMap((totals) => totals.taxes.filter(({ percent }) => percent === group.percent));
          expect(same.reduce((left, { tax }) => left + tax.minor, 0)).toBe(0);
        }
      }),
      tried,
    );
  });
});

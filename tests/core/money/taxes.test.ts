import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lineAmount, money, sum, type Money } from '../../../core/money/money.ts';
import { depositParts, factorsOf, invoicedTax, splitIncluded, taxLines, type Tax } from '../../../core/money/taxes.ts';
import { decimalText } from '../../../core/money/exact.ts';
import { tried } from '../laws.ts';

const rated = (percent: string, name = 'VAT'): Tax => ({ name, percent, state: 'rated', reason: '' });
const usd = (minor: number): Money<'USD'> => money(minor, 'USD');
const line = (minor: number, ...taxes: Tax[]) => ({ amount: usd(minor), taxes });
const made = (list: [number, Tax[]][]) => list.map(([minor, taxes]) => line(minor, ...taxes));

describe('prices without tax', () => {
  test('3 lines of 33.33 at 7.25 %: 99.99, tax 7.25, 107.24', () => {
    const taxed = taxLines(
      'USD',
      Array.from({ length: 3 }, () => ({ amount: lineAmount('1', '33.33', 'USD'), taxes: [rated('7.25')] })),
      false,
    );
    expect([taxed.net.minor, taxed.tax.minor, taxed.gross.minor]).toEqual([9999, 725, 10_724]);
  });
  test('one group for one name, rate and state; its tax is of its whole net', () => {
    const taxed = taxLines('USD', [line(3334, rated('19')), line(3334, rated('19.0')), line(3334, rated('19'))], false);
    expect(taxed.groups).toHaveLength(1);
    expect(taxed.groups[0]).toMatchObject({ net: usd(10_002), amount: usd(1900) });
  });
  test('two taxes on one line are two groups on the same net', () => {
    const [gst, pst] = [rated('5', 'GST'), rated('7', 'PST')];
    const taxed = taxLines('USD', [line(10_000, gst, pst), line(5000, gst)], false);
    expect(taxed.groups.map(({ tax, net, amount }) => [tax.name, net.minor, amount.minor])).toEqual([
      ['GST', 15_000, 750],
      ['PST', 10_000, 700],
    ]);
    expect(taxed.gross.minor).toBe(16_450);
    expect(
      sum(
        'USD',
        taxed.baskets.map((basket) => basket.gross),
      ),
    ).toEqual(taxed.gross);
  });
  test('a compound tax is also on the tax before it', () => {
    expect(factorsOf([rated('5'), { ...rated('9.5'), compound: true }]).map(({ factor }) => decimalText(factor))).toEqual([
      '0.05',
      '0.09975',
    ]);
  });
  test.each(['exempt', 'reverse charge', 'not registered'] as const)('%s: no tax, and the reason stays with the group', (state) => {
    const taxed = taxLines('USD', [line(10_000, { name: 'VAT', percent: '20', state, reason: 'because' })], false);
    expect(taxed).toMatchObject({ tax: usd(0), gross: usd(10_000) });
    expect(taxed.groups[0]).toMatchObject({ tax: { state, reason: 'because' }, net: usd(10_000) });
  });
  test('a credit has a negative tax', () =>
    expect(taxLines('USD', [line(-10_000, rated('20'))], false)).toMatchObject({ tax: usd(-2000), gross: usd(-12_000) }));
  test('nothing comes to nothing', () =>
    expect(taxLines('USD', [], false)).toMatchObject({ net: usd(0), tax: usd(0), gross: usd(0), groups: [] }));
});

describe('prices with tax included', () => {
  test('1,000.01 with 19 % included: net 840.34, tax 159.67; an e-invoice says 159.66 and rounding 0.01', () => {
    const taxed = taxLines('USD', [line(100_001, rated('19'))], true);
    expect([taxed.net.minor, taxed.tax.minor, taxed.gross.minor]).toEqual([84_034, 15_967, 100_001]);
    expect(invoicedTax(taxed.groups[0]!)).toEqual({ tax: usd(15_966), rounding: usd(1) });
  });
  test('line nets are shared out to the net of the group', () => {
    const taxed = taxLines('USD', [line(3333, rated('19')), line(3333, rated('19')), line(3335, rated('19'))], true);
    expect(sum('USD', taxed.lineNets)).toEqual(taxed.net);
  });
  test('two included taxes part what is included by their rates', () => {
    const taxed = taxLines('USD', [line(11_200, rated('5', 'GST'), rated('7', 'PST'))], true);
    expect(taxed.groups.map((group) => group.amount.minor)).toEqual([500, 700]);
    expect(taxed.net.minor).toBe(10_000);
  });
});

describe('a deposit over tax groups', () => {
  test('1,000.00 at 20 % and 500.00 at 0 %, deposit half of 1,700.00: 600.00 (500.00 + 100.00) and 250.00; 100.00 of tax is left', () => {
    const taxed = taxLines('USD', [line(100_000, rated('20')), line(50_000, rated('0'))], false);
    expect(taxed.gross.minor).toBe(170_000);
    const parts = depositParts(usd(85_000), taxed.baskets);
    expect(parts.map((part) => [part.gross.minor, part.net.minor, part.tax.minor])).toEqual([
      [60_000, 50_000, 10_000],
      [25_000, 25_000, 0],
    ]);
    expect(taxed.tax.minor - parts.reduce((total, part) => total + part.tax.minor, 0)).toBe(10_000);
  });
});

describe('laws', () => {
  const tax = fc.constantFrom(rated('0'), rated('5', 'GST'), rated('7.25'), rated('19'), rated('20'));
  const lines = fc.array(
    fc.tuple(fc.integer({ min: 0, max: 5_000_000 }), fc.uniqueArray(tax, { selector: (one) => one.name + one.percent, maxLength: 2 })),
    { maxLength: 12 },
  );

  test('net and taxes add up to gross, baskets to the whole, line nets to the net', () =>
    fc.assert(
      fc.property(lines, fc.boolean(), (list, included) => {
        const taxed = taxLines('USD', made(list), included);
        expect(taxed.net.minor + taxed.tax.minor).toBe(taxed.gross.minor);
        expect(
          sum(
            'USD',
            taxed.groups.map((group) => group.amount),
          ),
        ).toEqual(taxed.tax);
        expect(
          sum(
            'USD',
            taxed.baskets.map((basket) => basket.gross),
          ),
        ).toEqual(taxed.gross);
        expect(sum('USD', taxed.lineNets)).toEqual(taxed.net);
        if (included) expect(taxed.gross.minor).toBe(list.reduce((total, [minor]) => total + minor, 0));
      }),
      tried,
    ));

  test('the order of lines changes no total', () =>
    fc.assert(
      fc.property(lines, fc.boolean(), (list, included) => {
        const [one, other] = [list, list.toReversed()].map((each) => taxLines('USD', made(each), included));
        expect([one!.net, one!.tax, one!.gross]).toEqual([other!.net, other!.tax, other!.gross]);
      }),
      tried,
    ));

  test('included and excluded agree to a unit', () =>
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), tax, (minor, one) => {
        const gross = taxLines('USD', [line(minor, one)], false).gross;
        const back = splitIncluded(gross, [one]);
        expect(Math.abs(back.net.minor - minor)).toBeLessThanOrEqual(1);
      }),
      tried,
    ));

  test('the parts of a deposit add up to it', () =>
    fc.assert(
      fc.property(lines, fc.integer({ min: 0, max: 100 }), (list, percent) => {
        const taxed = taxLines('USD', made(list), false);
        if (taxed.gross.minor === 0) return;
        const deposit = usd(Math.round((taxed.gross.minor * percent) / 100));
        const parts = depositParts(deposit, taxed.baskets);
        expect(
          sum(
            'USD',
            parts.map((part) => part.gross),
          ),
        ).toEqual(deposit);
        for (const part of parts) expect(part.net.minor + part.tax.minor).toBe(part.gross.minor);
      }),
      tried,
    ));
});

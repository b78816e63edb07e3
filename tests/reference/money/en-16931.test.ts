/**
 * Totals and tax of a paper against the business rules that e-invoices are validated by.
 * @source European Commission, eInvoicing-EN16931 validation artefacts (CEN EN 16931-1), rules BR-CO-10 to BR-CO-17, BR-AE and BR-DEC, 2017
 */
import { describe, expect, test } from 'vitest';
import { lineAmount, money, sum, type Money } from '../../../core/money/money.ts';
import { invoicedTax, taxLines, type Tax } from '../../../core/money/taxes.ts';

const vat = (percent: string): Tax => ({ name: 'VAT', percent, state: 'rated', reason: '' });
const eur = (minor: number): Money<'EUR'> => money(minor, 'EUR');

/** Mixed rates, odd quantities, an allowance as a negative line. */
const lines = [
  { amount: lineAmount('3', '33.335', 'EUR'), taxes: [vat('19')] },
  { amount: lineAmount('1.5', '99.99', 'EUR'), taxes: [vat('7')] },
  { amount: lineAmount('7', '0.725', 'EUR'), taxes: [vat('0')] },
  { amount: eur(-1_001), taxes: [vat('19')] },
];
const taxed = taxLines('EUR', lines, false);

test('BR-CO-10 and -13: the total without VAT is the sum of line nets less allowances', () => {
  expect(
    sum(
      'EUR',
      lines.map((line) => line.amount),
    ),
  ).toEqual(taxed.net);
});
test('BR-CO-14: the VAT total is the sum of the VAT of each category', () => {
  expect(
    sum(
      'EUR',
      taxed.groups.map((group) => group.amount),
    ),
  ).toEqual(taxed.tax);
});
test('BR-CO-15: the total with VAT is the total without it and the VAT total', () => {
  expect(taxed.gross.minor).toBe(taxed.net.minor + taxed.tax.minor);
});
test.each(taxed.groups.map((group) => [group.tax.percent, group] as const))(
  'BR-CO-17: VAT at %s %% is net x rate / 100, rounded to two decimals',
  (percent, group) => {
    const exactly = (BigInt(group.net.minor) * BigInt(percent) * 2n + 100n) / 200n;
    expect(BigInt(group.amount.minor)).toBe(exactly);
  },
);
test('BR-AE-05 and -09: reverse charge has rate 0 and VAT 0, and says why', () => {
  const { groups, tax } = taxLines(
    'EUR',
    [{ amount: eur(100_000), taxes: [{ name: 'VAT', percent: '0', state: 'reverse charge', reason: 'Reverse charge' }] }],
    false,
  );
  expect([groups[0]?.amount.minor, tax.minor, groups[0]?.tax.reason]).toEqual([0, 0, 'Reverse charge']);
});
test('BR-DEC: no amount has more than two decimals', () => {
  for (const amount of [taxed.net, taxed.tax, taxed.gross, ...taxed.lineNets]) expect(Number.isInteger(amount.minor)).toBe(true);
});

describe('BR-CO-16: where prices include tax, the unit between gross and net x rate is the rounding amount (BT-114)', () => {
  test.each([
    [100_001, '19', 84_034, 15_967, 1],
    [10_000, '19', 8_403, 1_597, 0],
    [10_000, '7', 9_346, 654, 0],
    [99_999, '20', 83_333, 16_666, -1],
  ])('%i at %s %%: net %i, tax %i, rounding %i', (gross, percent, net, tax, rounding) => {
    const included = taxLines('EUR', [{ amount: eur(gross), taxes: [vat(percent)] }], true);
    expect([included.net.minor, included.tax.minor]).toEqual([net, tax]);
    const group = included.groups[0];
    if (!group) throw new Error('no group');
    const invoiced = invoicedTax(group);
    expect(invoiced.rounding.minor).toBe(rounding);
    expect(net + invoiced.tax.minor + invoiced.rounding.minor).toBe(gross);
  });
});

// A public test case of invoice software: three lines of 33.335 with 19 % VAT; VAT by line would be 18.99.
test('tax is worked out on the total of a category, not line by line', () => {
  const each = { amount: lineAmount('1', '33.335', 'EUR'), taxes: [vat('19')] };
  expect(taxLines('EUR', [each, each, each], false)).toMatchObject({ net: { minor: 10_002 }, tax: { minor: 1_900 } });
});

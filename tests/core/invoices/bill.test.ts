/**
 * Bills and their papers: lines that alone give the totals of the quote, credit notes that bring a bill to nothing, statements in any order.
 */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { InvoiceContent, InvoiceRow } from '../../../core/contract/invoices.ts';
import { askedByHand } from '../../../core/invoices/asked.ts';
import { billLines } from '../../../core/invoices/bill-lines.ts';
import { creditNoteContent } from '../../../core/invoices/content.ts';
import { creditOf } from '../../../core/invoices/credit.ts';
import { setOff, toPayOf } from '../../../core/invoices/deposit.ts';
import { entriesOf } from '../../../core/invoices/entries.ts';
import { sumsOf } from '../../../core/invoices/lines.ts';
import { shareBill } from '../../../core/invoices/part-bills.ts';
import { statementOf } from '../../../core/invoices/statement.ts';
import { exact } from '../../../core/money/exact.ts';
import { add, money, zero, type Money } from '../../../core/money/money.ts';
import type { Tax } from '../../../core/money/taxes.ts';
import { discountedSections } from '../../../core/quotes/discount.ts';
import { quoteLine, type PricedLine } from '../../../core/quotes/line.ts';
import { totalsOf } from '../../../core/quotes/totals.ts';
import type { SetupFields } from '../../../core/contract/setup.ts';
import { tried } from '../laws.ts';

const usd = (minor: number): Money => money(minor, 'USD');
const mine: Tax[] = [
  { name: 'State', percent: '7.25', state: 'rated', reason: '' },
  { name: 'City', percent: '1.5', state: 'rated', reason: '' },
];
const borne: readonly (readonly Tax[])[] = [
  mine,
  mine.slice(0, 1),
  [{ name: 'State', percent: '0', state: 'exempt', reason: 'A licence.' }],
  mine.map(({ name }) => ({ name, percent: '0', state: 'reverse charge', reason: 'The recipient accounts for it.' })),
];

const SETUP: SetupFields = {
  name: 'Lakeline Pictures',
  address: '',
  email: '',
  phone: '',
  home: { key: 'own:home', name: 'Duluth', region: 'Minnesota', country: 'US', lat: 46.8, lon: -92.1, zone: 'America/Chicago' },
  currency: 'USD',
  paper: 'Letter',
  distance: 'mi',
  registered: true,
  taxId: '',
  tax: null,
  restHours: '8',
  year: null,
};

const priced = fc.array(
  fc.record({
    section: fc.constantFrom('days', 'kit', 'travel', 'extras') as fc.Arbitrary<PricedLine['section']>,
    minor: fc.integer({ min: 1, max: 400_000 }),
    taxes: fc.nat(borne.length - 1),
  }),
  { minLength: 1, maxLength: 7 },
);

describe('lines of a bill', () => {
  test('law: they alone give the net, tax and gross of the quote, discount and all', () => {
    fc.assert(
      fc.property(priced, fc.boolean(), fc.nat(90), (list, included, percent) => {
        const plain = { unit: '', reason: '', estimated: false, changed: false, quantity: exact(1) };
        const lines = list.map(({ section, minor, taxes }, order): { line: PricedLine; taxes: readonly Tax[] } => ({
          line: { ...plain, id: `${section}/${order}`, section, what: section, unitPrice: exact(minor).div(100n) },
          taxes: borne[taxes] ?? [],
        }));
        const within = list.filter(({ section }) => section !== 'travel').reduce((all, { minor }) => all + minor, 0);
        const off = Math.floor((within * percent) / 100);
        const discount: PricedLine = {
          ...plain,
          id: 'discount/percent',
          section: 'discount',
          what: 'Discount',
          unitPrice: exact(-off).div(100n),
        };
        const all = off > 0 ? [...lines, { line: discount, taxes: mine }] : lines;
        const over = discountedSections({ percent: '0', fixed: '0', over: null });
        const { totals } = totalsOf(all, included, over, 'USD');
        const quote = all.map(({ line, taxes }) => quoteLine(line, 'USD', taxes));
        const bill = billLines({ lines: quote, discount: { percent: '0', fixed: '0', over: null }, currency: 'USD', totals }, mine);
        const sums = sumsOf('USD', bill, included);
        expect([sums.net, sums.tax, sums.gross]).toEqual([totals.net, totals.tax, totals.gross]);
      }),
      tried,
    );
  });

  test('law: a share of a whole asks for just that, whatever its taxes', () => {
    fc.assert(
      fc.property(priced, fc.integer({ min: 1, max: 100 }), (list, percent) => {
        const lines = list.map(({ minor, taxes }) => ({ amount: usd(minor), taxes: borne[taxes] ?? [] }));
        const { gross } = sumsOf('USD', lines, false);
        const { ask } = askedByHand([{ op: 'ask', percent: String(percent) }]);
        const bill = shareBill({ currency: 'USD', lines, included: false }, { ask }, null, gross, 'Instalment');
        const asked = bill.lines.reduce((all, line) => add(all, line.amount), zero<string>('USD'));
        expect(asked.minor).toBe(Math.round((gross.minor * percent) / 100));
        expect(sumsOf('USD', bill.lines, true).gross).toEqual(asked);
      }),
      tried,
    );
  });
});

describe('a credit note', () => {
  test('law: the one that leaves nothing brings lines, taxes, set-offs and what is to pay to zero', () => {
    fc.assert(
      fc.property(priced, fc.nat(100), (list, share) => {
        const lines = list.map(({ section, minor, taxes }, order) => ({
          id: `${section}/${order}`,
          section,
          what: section,
          quantity: '1',
          unit: '',
          unitPrice: String(minor / 100),
          amount: usd(minor),
          taxes: [...(borne[taxes] ?? [])],
        }));
        const totals = sumsOf('USD', lines, false);
        const deposit = sumsOf('USD', [{ amount: usd(Math.round((totals.gross.minor * share) / 100)), taxes: mine }], true);
        const credited = setOff([{ invoiceId: 'd', number: '2026-001', date: '2026-10-01', totals: deposit }]);
        const invoice = {
          number: '2026-002',
          issueDate: '2026-12-14',
          billTo: { name: 'Northwind Bakers', address: '', taxId: '', country: null, order: '' },
          job: null,
          supply: null,
          currency: 'USD',
          included: false,
          lines,
          totals,
          credited,
          toPay: toPayOf(totals, credited),
          rate: null,
        } as unknown as InvoiceContent;
        const whole = creditOf(invoice, [], 'all');
        const numbered = { number: '2026-003', issueDate: '2026-12-15', issuedAt: '2026-12-15T15:00:00Z' };
        const note = creditNoteContent(invoice, whole, true, SETUP, numbered, 'Wrong');
        expect(add(invoice.toPay, note.toPay).minor).toBe(0);
        expect(add(invoice.totals.tax, note.totals.tax).minor).toBe(0);
        expect(note.credited.map(({ gross }, order) => add(gross, credited[order]?.gross ?? gross).minor)).toEqual([0]);
      }),
      tried,
    );
  });
});

describe('a statement', () => {
  test('law: does not depend on the order in which things were entered', () => {
    const invoice = (id: string, minor: number): InvoiceRow =>
      ({
        id,
        kind: minor < 0 ? 'credit note' : 'final',
        number: id,
        issueDate: `2026-0${(minor % 8) + 1 || 1}-01`,
        currency: 'USD',
        toPay: usd(minor),
        writtenOff: usd(0),
      }) as InvoiceRow;
    const payment = (id: string, minor: number) => ({
      id,
      kind: minor < 0 ? ('refund' as const) : ('payment' as const),
      clientId: 'c',
      on: '2026-05-05',
      amount: usd(minor),
      rate: null,
      how: id,
      note: '',
      parts: [{ invoiceId: null, number: '', amount: usd(minor), gain: null }],
      credit: usd(minor),
      gain: null,
      reverses: null,
      reversed: false,
      madeAt: '2026-05-05T00:00:00Z',
    });
    const minors = fc.array(fc.integer({ min: 1, max: 90_000 }), { maxLength: 8 });
    fc.assert(
      fc.property(minors, minors, fc.infiniteStream(fc.nat(1000)), (bills, sums, stream) => {
        const shuffled = <T>(things: readonly T[]): T[] =>
          things
            .map((thing) => ({ thing, at: stream.next().value }))
            .toSorted((a, b) => a.at - b.at)
            .map(({ thing }) => thing);
        const invoices = bills.map((minor, order) => invoice(`i${order}`, minor));
        const payments = sums.map((minor, order) => payment(`p${order}`, minor));
        const rows = (of: InvoiceRow[], and: typeof payments) =>
          statementOf<string>('USD', entriesOf('USD', of, and, new Map()), '2026-12-31');
        const straight = rows(invoices, payments);
        expect(rows(shuffled(invoices), shuffled(payments))).toEqual(straight);
        const left = bills.reduce((all, minor) => all + minor, 0) - sums.reduce((all, minor) => all + minor, 0);
        expect(straight.at(-1)?.balance.minor ?? 0).toBe(left);
      }),
      tried,
    );
  });
});

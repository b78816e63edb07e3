import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ageingOf, bucketOf, daysPastDue } from '../../../core/invoices/ageing.ts';
import { proposeParts } from '../../../core/invoices/allocate.ts';
import { exchangeGain } from '../../../core/invoices/exchange-gain.ts';
import { lateInterest } from '../../../core/invoices/interest.ts';
import { invoiceNumber, yearOfNumber } from '../../../core/invoices/number.ts';
import { standingOf, type InvoiceEvent } from '../../../core/invoices/standing.ts';
import { statementKinds, statementOf, type StatementEntry } from '../../../core/invoices/statement.ts';
import { money, sum, type Money } from '../../../core/money/money.ts';
import { tried } from '../laws.ts';

const usd = (minor: number): Money<'USD'> => money(minor, 'USD');

describe('numbers', () => {
  test('the year is that of the issue date at home, not in UTC', () => {
    const lastEvening = Date.parse('2027-01-01T04:30:00Z');
    expect(yearOfNumber(lastEvening, 'America/Chicago')).toBe(2026);
    expect(yearOfNumber(lastEvening, 'Pacific/Auckland')).toBe(2027);
  });
  test.each([
    ['', 31, '2026-031'],
    ['K', 7, 'K-2026-007'],
    ['', 1234, '2026-1234'],
  ])('series "%s", %i', (series, sequence, text) => {
    expect(invoiceNumber(series, 2026, sequence)).toBe(text);
  });
});

describe('ageing', () => {
  test.each([
    ['2026-03-31', '2026-03-31', 0, 'not due'],
    ['2026-03-31', '2026-04-01', 1, '1-30'],
    ['2026-03-31', '2026-04-30', 30, '1-30'],
    ['2026-03-31', '2026-05-01', 31, '31-60'],
    ['2026-03-31', '2026-05-31', 61, '61-90'],
    ['2026-03-31', '2026-06-29', 90, '61-90'],
    ['2026-03-31', '2026-06-30', 91, 'over 90'],
    ['2028-02-28', '2028-03-01', 2, '1-30'],
    ['2026-12-31', '2026-12-01', -30, 'not due'],
  ])('due %s, as of %s: %i days past due, %s', (due, asOf, days, bucket) => {
    expect(daysPastDue(due, asOf)).toBe(days);
    expect(bucketOf(days)).toBe(bucket);
  });
  test('each bucket is there, and together they are all that is open', () => {
    const rows = ageingOf(
      'USD',
      [
        { dueDate: '2026-01-10', open: usd(100) },
        { dueDate: '2026-03-30', open: usd(20) },
        { dueDate: '2026-03-31', open: usd(3) },
        { dueDate: '2025-01-01', open: usd(0) },
      ],
      '2026-03-31',
    );
    expect(rows.map(({ bucket, amount, count }) => [bucket, amount.minor, count])).toEqual([
      ['not due', 3, 1],
      ['1-30', 20, 1],
      ['31-60', 0, 0],
      ['61-90', 100, 1],
      ['over 90', 0, 0],
    ]);
  });
});

test('interest: 2,400.00 at 11.75 % for 37 days is 28.59, rounded once', () => {
  const { days, amount, reason } = lateInterest(usd(240_000), '11.75', '2026-03-31', '2026-05-07');
  expect([days, amount.minor]).toEqual([37, 2859]);
  expect(reason).toBe('2,400.00 x 11.75 % x 37 days / 365 = 28.59.');
  expect(lateInterest(usd(240_000), '11.75', '2026-03-31', '2026-03-31').amount.minor).toBe(0);
});

describe('where an invoice stands', () => {
  const at = (asOf: string, ...events: InvoiceEvent<'USD'>[]) => standingOf(usd(100_00), '2026-04-30', events, asOf);
  const paid = (on: string, minor: number): InvoiceEvent<'USD'> => ({ kind: 'paid', on, amount: usd(minor) });

  test.each([
    ['untouched', '2026-04-30', [], 'open', 10_000],
    ['the day after it was due', '2026-05-01', [], 'late', 10_000],
    ['part paid', '2026-04-20', [paid('2026-04-11', 4000)], 'part paid', 6000],
    ['part paid and late', '2026-05-20', [paid('2026-04-11', 4000)], 'late', 6000],
    ['paid after the date asked about', '2026-04-10', [paid('2026-04-11', 10_000)], 'open', 10_000],
    ['paid', '2026-06-01', [paid('2026-04-11', 4000), paid('2026-05-02', 6000)], 'paid', 0],
    ['a payment that came back', '2026-06-01', [paid('2026-04-11', 10_000), paid('2026-04-12', -10_000)], 'late', 10_000],
    ['credited in full', '2026-06-01', [{ kind: 'credited', on: '2026-05-01', amount: usd(-10_000) }], 'credited', 0],
    ['disputed', '2026-06-01', [{ kind: 'disputed', on: '2026-05-01' }], 'disputed', 10_000],
    [
      'disputed and settled',
      '2026-06-01',
      [
        { kind: 'settled', on: '2026-05-09' },
        { kind: 'disputed', on: '2026-05-01' },
      ],
      'late',
      10_000,
    ],
    ['written off', '2026-06-01', [paid('2026-05-02', 2500), { kind: 'written off', on: '2026-05-20' }], 'written off', 0],
  ] as const)('%s', (_, asOf, events, state, open) => {
    expect(at(asOf, ...events)).toMatchObject({ state, open: usd(open) });
  });
  test('money after a write-off reverses it by as much', () => {
    const off: InvoiceEvent<'USD'> = { kind: 'written off', on: '2026-05-20' };
    expect(at('2026-06-01', off).writtenOff).toEqual(usd(10_000));
    expect(at('2026-06-01', off, paid('2026-05-25', 3000)).writtenOff).toEqual(usd(7000));
    expect(at('2026-06-01', off, paid('2026-05-25', 10_000))).toMatchObject({ state: 'paid', writtenOff: usd(0) });
  });
  test('what is paid past the sum is the credit of the client', () => {
    expect(at('2026-06-01', paid('2026-05-25', 12_000))).toMatchObject({ state: 'paid', over: usd(2000), open: usd(0) });
  });
  test('law: paid + credited + written off + open less over is what the paper asks for', () => {
    const event = fc.oneof(
      fc.record({
        kind: fc.constant('paid' as const),
        on: fc.constant('2026-05-01'),
        amount: fc.integer({ min: -9000, max: 15_000 }).map(usd),
      }),
      fc.record({
        kind: fc.constant('credited' as const),
        on: fc.constant('2026-05-01'),
        amount: fc.integer({ min: -9000, max: 0 }).map(usd),
      }),
      fc.record({ kind: fc.constant('written off' as const), on: fc.constant('2026-05-02') }),
    );
    fc.assert(
      fc.property(fc.array(event, { maxLength: 6 }), (events) => {
        const stands = at('2026-06-01', ...events);
        const { paid: money1, credited, writtenOff, open, over } = stands;
        expect(money1.minor + credited.minor + writtenOff.minor + open.minor - over.minor).toBe(10_000);
        expect(Math.min(open.minor, over.minor, writtenOff.minor)).toBeGreaterThanOrEqual(0);
        expect(at('2026-06-01', ...events.toReversed())).toEqual(stands);
      }),
      tried,
    );
  });
});

describe('what a payment is for', () => {
  const invoice = (id: string, dueDate: string, open: number, issueDate = '2026-01-01') => ({
    id,
    number: id,
    issueDate,
    dueDate,
    open: usd(open),
  });
  test('oldest due first, then oldest issued; what is over is named', () => {
    const { parts, over } = proposeParts(usd(10_000), [
      invoice('c', '2026-03-01', 5000),
      invoice('a', '2026-02-01', 3000, '2026-01-05'),
      invoice('b', '2026-02-01', 1000, '2026-01-02'),
    ]);
    expect(parts.map(({ id, amount }) => [id, amount.minor])).toEqual([
      ['b', 1000],
      ['a', 3000],
      ['c', 5000],
    ]);
    expect(over).toEqual(usd(1000));
  });
  test('law: parts and what is over are the payment; no part is more than what is open', () => {
    fc.assert(
      fc.property(fc.nat(100_000), fc.array(fc.nat(20_000), { maxLength: 8 }), (payment, open) => {
        const invoices = open.map((minor, index) => invoice(`i${index}`, `2026-0${1 + (index % 9)}-01`, minor));
        const { parts, over } = proposeParts(usd(payment), invoices);
        const spread = sum(
          'USD',
          parts.map(({ amount }) => amount),
        );
        expect(spread.minor + over.minor).toBe(payment);
        expect(
          parts.every(({ id, amount }) => amount.minor > 0 && amount.minor <= (invoices.find((one) => one.id === id)?.open.minor ?? -1)),
        ).toBe(true);
      }),
      tried,
    );
  });
});

test('a rate that rose between supply and payment is a gain: 1,000.00 CAD at 0.7250 and 0.7412', () => {
  const rate = (text: string, date: string) => ({ from: 'CAD', to: 'USD', rate: text, date }) as const;
  const gain = exchangeGain(money(100_000, 'CAD'), rate('0.7250', '2026-03-01'), rate('0.7412', '2026-04-20'));
  expect(gain).toEqual(usd(1620));
});

describe('a statement', () => {
  const entry = (on: string, kind: StatementEntry['kind'], name: string, minor: number): StatementEntry<'USD'> => ({
    on,
    kind,
    name,
    amount: usd(minor),
  });
  test('runs in order of date with what is left after each', () => {
    const rows = statementOf(
      'USD',
      [
        entry('2026-03-20', 'payment', 'transfer', -4000),
        entry('2026-03-20', 'invoice', '2026-002', 5000),
        entry('2026-03-01', 'invoice', '2026-001', 10_000),
        entry('2026-05-01', 'payment', 'transfer', -9000),
      ],
      '2026-04-01',
    );
    expect(rows.map(({ name, balance }) => [name, balance.minor])).toEqual([
      ['2026-001', 10_000],
      ['2026-002', 15_000],
      ['transfer', 11_000],
    ]);
  });
  test('law: the order of entry changes nothing', () => {
    const entries = fc.array(
      fc.record({
        on: fc.constantFrom('2026-03-01', '2026-03-02', '2026-04-01'),
        kind: fc.constantFrom(...statementKinds),
        name: fc.constantFrom('a', 'b'),
        amount: fc.integer({ min: -500, max: 500 }).map(usd),
      }),
    );
    fc.assert(
      fc.property(entries, fc.integer(), (given, turn) => {
        const moved = given.map((_, index) => given[(index + Math.abs(turn)) % given.length] ?? given[index]!);
        expect(statementOf('USD', moved, '2026-12-31')).toEqual(statementOf('USD', given, '2026-12-31'));
      }),
      tried,
    );
  });
});

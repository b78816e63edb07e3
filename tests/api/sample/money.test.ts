/**
 * The money of the sample year: what the ledger says is what the papers say, as read back from their files.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Invoice, InvoiceRow } from '../../../core/contract/invoices.ts';
import type { Money } from '../../../core/contract/parts.ts';
import type { Payment } from '../../../core/contract/payments.ts';
import { toPayOnPaper } from '../billing/papers.ts';
import { told, type Told } from './told.ts';

type Sum = { by: Money[]; home: Money | null };

const folder = mkdtempSync(join(tmpdir(), 'kitbound-'));
let its: Told;
let rows: InvoiceRow[];
let payments: Payment[];
beforeAll(async () => {
  its = await told('2026-11-26T15:00:00Z', folder);
  ({ invoices: rows } = await its.call<{ invoices: InvoiceRow[] }>('invoices.list'));
  ({ payments } = await its.call<{ payments: Payment[] }>('payments.list'));
}, 120_000);
afterAll(() => {
  its.store.close();
  rmSync(folder, { recursive: true, force: true });
});

const totals = (amounts: readonly Money[]): Map<string, number> => {
  const sums = new Map<string, number>();
  for (const { currency, minor } of amounts) sums.set(currency, (sums.get(currency) ?? 0) + minor);
  return sums;
};

test('every way in which a bill can end is there, and numbers run without a gap', () => {
  const count = (state: InvoiceRow['state']) => rows.filter((row) => row.state === state).length;
  expect({ disputed: count('disputed'), 'written off': count('written off') }).toEqual({ disputed: 1, 'written off': 1 });
  expect(count('paid')).toBeGreaterThan(60);
  expect(count('late')).toBeGreaterThan(2);
  expect(new Set(rows.map(({ kind }) => kind))).toEqual(new Set(['deposit', 'final', 'cancellation', 'credit note']));
  for (const year of ['2025', '2026']) {
    const numbers = rows.map(({ number }) => number).filter((number) => number.startsWith(year));
    expect(numbers.toReversed()).toEqual(numbers.map((_, index) => `${year}-${String(index + 1).padStart(3, '0')}`));
  }
});

test('what the ledger has as billed in a year is the sum of its papers, read back from their files', { timeout: 120_000 }, async () => {
  for (const year of [2025, 2026]) {
    const onPaper: Money[] = [];
    for (const { id, currency, issueDate } of rows) {
      if (!issueDate.startsWith(String(year))) continue;
      const { invoice } = await its.call<{ invoice: Invoice }>('invoices.get', { id });
      const { base64 } = await its.call<{ base64: string }>('papers.read', { id: invoice.paper.id });
      onPaper.push({ currency, minor: await toPayOnPaper(Uint8Array.from(Buffer.from(base64, 'base64')), currency) });
    }
    const { billed } = await its.call<{ billed: Sum }>('ledger.year', { year });
    expect([year, totals(billed.by)]).toEqual([year, totals(onPaper)]);
  }
});

test('what is open is what was billed, less what came and what was given up; credit stands apart', async () => {
  const { open } = await its.call<{ open: Sum }>('ledger.see');
  const came = payments.flatMap(({ parts }) => parts).flatMap(({ invoiceId, amount }) => (invoiceId === null ? [] : [amount]));
  const over = rows.map((row) => row.over);
  const writtenOff = rows.map((row) => row.writtenOff);
  const less = (amounts: readonly Money[]): Money[] => amounts.map(({ currency, minor }) => ({ currency, minor: -minor }));
  const left = totals([...rows.map(({ toPay }) => toPay), ...less(came), ...less(writtenOff), ...over]);
  expect(new Map([...left].filter(([, minor]) => minor !== 0))).toEqual(totals(open.by));
});

test('nothing of the past waits for hours or a bill: the Desk shows what bites', async () => {
  const { clocks } = await its.call<{ clocks: { kind: string }[] }>('desk.see');
  const kinds = clocks.map(({ kind }) => kind);
  expect(kinds.filter((kind) => kind === 'hours' || kind === 'bill')).toEqual([]);
  expect(kinds).toContain('reminder');
});

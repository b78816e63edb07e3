/**
 * Expenses and receipts through the door: kept, charged on, corrected, taken off; what is refused leaves nothing behind.
 */
import { readdirSync } from 'node:fs';
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { newId } from '../../../db/ids.ts';
import type { ExpenseFields } from '../../../core/contract/expenses.ts';
import { expenses } from '../../../electron/api/expenses.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { papers } from '../../../electron/api/papers.ts';
import { callProcedure } from '../../../electron/api/serve.ts';
import { onSite } from '../hours/site.ts';
import { refusal } from '../world.ts';

const fields = (given: Partial<ExpenseFields> = {}): ExpenseFields => ({
  jobId: null,
  on: '2026-12-12',
  category: 'parking',
  what: 'Parking at the dock',
  amount: { minor: 1_200, currency: 'USD' },
  rate: null,
  markUpPercent: '0',
  billed: false,
  untaxed: null,
  ...given,
});
const base64 = (text: string) => Buffer.from(text, 'latin1').toString('base64');
const PDF = base64('%PDF-1.7 a receipt');

async function at13() {
  const site = await onSite();
  site.w.at('2026-12-13T18:00:00Z');
  return site;
}

test('what was spent is summed by currency, and what is charged on comes about with its numbers', async () => {
  const { at, job } = await at13();
  const save = (given: Partial<ExpenseFields>) => call(expenses.save, { fields: fields({ jobId: job.id, ...given }) }, at);
  await save({ billed: true, markUpPercent: '10' });
  await save({ what: 'Room', category: 'lodging', amount: { minor: 9_850, currency: 'USD' } });
  await save({ what: 'Cable', amount: { minor: 3_000, currency: 'CAD' }, rate: { rate: '0.715', date: '2026-12-11' }, billed: true });
  await save({ what: 'Bridge', amount: { minor: 500, currency: 'CAD' }, billed: true });
  const seen = await call(expenses.of, { jobId: job.id }, at);
  expect(seen.currency).toBe('USD');
  expect(seen.expenses.map(({ what, charged }) => [what, charged?.minor ?? null])).toEqual([
    ['Parking at the dock', 1_320],
    ['Room', null],
    ['Cable', 2_145],
    ['Bridge', null],
  ]);
  expect(seen.charged).toEqual({ minor: 3_465, currency: 'USD' });
  expect(seen.spent).toEqual([
    { minor: 3_500, currency: 'CAD' },
    { minor: 11_050, currency: 'USD' },
  ]);
  expect(seen.cautions).toEqual([expect.stringContaining('"Bridge" of Sat 12 December 2026 is in CAD and this job in USD')]);
});

test.each([
  ['nothing', { amount: { minor: 0, currency: 'USD' } }, 'fields.amount', 'not above zero'],
  ['less than nothing', { amount: { minor: -5, currency: 'USD' } }, 'fields.amount', 'not above zero'],
  ['10^12 and one', { amount: { minor: 1_000_000_000_001, currency: 'USD' } }, 'fields.amount.minor', 'too large'],
  ['a currency that is none', { amount: { minor: 5, currency: 'ZZZ' } }, 'fields.amount.currency', 'ISO 4217'],
  ['a rate of zero', { amount: { minor: 5, currency: 'CAD' }, rate: { rate: '0', date: '2026-12-11' } }, 'fields.rate.rate', 'is zero'],
  ['a rate where none is needed', { rate: { rate: '1.1', date: '2026-12-11' } }, 'fields.rate', 'it needs no rate'],
  ['a date to come', { on: '2026-12-15' }, 'fields.on', 'still to come'],
  ['something for no job that is charged on', { jobId: null, billed: true }, 'fields.billed', 'Say for which job'],
])('%s is bad input', async (_, given, field, sentence) => {
  const { w, at, job } = await at13();
  const answer = await refusal(callProcedure(w.context, 'expenses.save', { fields: fields({ jobId: job.id, ...given }) }));
  expect(answer).toMatchObject({ code: 'BAD_INPUT', fields: [{ field, sentence: expect.stringContaining(sentence) }] });
  expect((await call(expenses.list, { from: '2026-01-01', to: '2026-12-31' }, at)).expenses).toEqual([]);
});

test('a change keeps what was before in the history and is refused when stale; what was taken off can be put back', async () => {
  const { at, job } = await at13();
  const { expense } = await call(expenses.save, { fields: fields({ jobId: job.id }) }, at);
  const more = fields({ jobId: job.id, amount: { minor: 1_500, currency: 'USD' } });
  await call(expenses.save, { id: expense.id, version: 1, fields: more }, at);
  expect(await refusal(call(expenses.save, { id: expense.id, version: 1, fields: more }, at))).toMatchObject({
    code: 'STALE',
    current: { amount: { minor: 1_500 }, version: 2 },
  });
  const [entry] = (await call(jobs.history, { id: job.id }, at)).entries;
  expect(entry?.sentence).toBe(
    'Parking at the dock, USD 15.00, Sat 12 December 2026. Before: Parking at the dock, USD 12.00, Sat 12 December 2026.',
  );
  const withReceipt = await call(expenses.attach, { id: expense.id, version: 2, name: 'dock.pdf', base64: PDF }, at);
  await call(expenses.drop, { id: expense.id, version: 3 }, at);
  const back = await call(expenses.save, { fields: more }, at);
  const receiptId = withReceipt.expense.receipt?.id ?? '';
  expect((await call(expenses.putReceipt, { id: back.expense.id, version: 1, receiptId }, at)).expense.receipt).toEqual(
    withReceipt.expense.receipt,
  );
});

test('a receipt is what its bytes are, is kept by its hash with the right ending, and read back', async () => {
  const { w, at, job } = await at13();
  const { expense } = await call(expenses.save, { fields: fields({ jobId: job.id }) }, at);
  const jpeg = base64('\u00ff\u00d8\u00ff\u00e0 a picture');
  const first = await call(expenses.attach, { id: expense.id, version: 1, name: 'IMG 0012.HEIC', base64: jpeg, key: newId() }, at);
  expect(first.expense.receipt).toMatchObject({ name: 'IMG 0012.jpg', type: 'image/jpeg', bytes: 14 });
  const second = await call(expenses.attach, { id: expense.id, version: 2, name: 'dock.pdf', base64: PDF }, at);
  expect(
    readdirSync(w.context.store.papers)
      .map((name) => name.slice(64))
      .sort(),
  ).toEqual(['.jpg', '.pdf', '.pdf']);
  expect(await call(expenses.receipt, { id: expense.id }, at)).toEqual({ name: 'dock.pdf', type: 'application/pdf', base64: PDF });
  // The picture that was there before is kept among the papers, and can be read.
  expect(await call(papers.read, { id: first.expense.receipt?.id ?? '' }, at)).toMatchObject({ type: 'image/jpeg', base64: jpeg });
  expect(await call(papers.check, {}, at)).toEqual({ whole: 3, lost: [], orphans: [] });
  const bare = await call(expenses.putReceipt, { id: expense.id, version: second.expense.version, receiptId: null }, at);
  expect(bare.expense.receipt).toBeNull();
  expect(await refusal(call(expenses.receipt, { id: expense.id }, at))).toMatchObject({ code: 'NOT_FOUND' });
});

test.each([
  ['text', base64('Parking 12.00'), 'is no PDF and no JPEG, PNG, WebP or HEIC picture'],
  ['a drawing that could run something', base64('<svg xmlns="http://www.w3.org/2000/svg">'), 'is no PDF'],
  ['what is no base64', 'not base64!', 'is not base64'],
  ['nothing', '', 'is empty'],
])('%s is refused with a sentence, and nothing is kept', async (_, bytes, sentence) => {
  const { w, at, job } = await at13();
  const { expense } = await call(expenses.save, { fields: fields({ jobId: job.id }) }, at);
  const before = readdirSync(w.context.store.papers);
  const answer = await refusal(callProcedure(w.context, 'expenses.attach', { id: expense.id, version: 1, name: 'x.pdf', base64: bytes }));
  expect(answer).toMatchObject({ code: 'BAD_INPUT', what: expect.stringContaining(sentence), kept: 'Nothing was changed.' });
  expect(readdirSync(w.context.store.papers)).toEqual(before);
  expect((await call(expenses.of, { jobId: job.id }, at)).expenses[0]?.receipt).toBeNull();
});

test('8 MB to the byte are kept, a byte more is refused', async () => {
  const { w, at, job } = await at13();
  const { expense } = await call(expenses.save, { fields: fields({ jobId: job.id }) }, at);
  const sized = (bytes: number) => Buffer.concat([Buffer.from('%PDF-1.7'), Buffer.alloc(bytes - 8)]).toString('base64');
  const attach = (bytes: number, version: number) =>
    callProcedure(w.context, 'expenses.attach', { id: expense.id, version, name: 'long.pdf', base64: sized(bytes) });
  await attach(8_000_000, 1);
  expect((await call(expenses.of, { jobId: job.id }, at)).expenses[0]?.receipt?.bytes).toBe(8_000_000);
  for (const bytes of [8_000_001, 8_000_002, 9_000_000])
    expect(await refusal(attach(bytes, 2))).toMatchObject({ code: 'BAD_INPUT', what: expect.stringContaining('is larger than 8 MB') });
});

test('a receipt for an expense that was changed meanwhile leaves nothing in the folder', async () => {
  const { w, at, job } = await at13();
  const { expense } = await call(expenses.save, { fields: fields({ jobId: job.id }) }, at);
  const before = readdirSync(w.context.store.papers);
  expect(await refusal(call(expenses.attach, { id: expense.id, version: 7, name: 'x.pdf', base64: PDF }, at))).toMatchObject({
    code: 'STALE',
  });
  expect(await refusal(call(expenses.attach, { id: newId(), version: 1, name: 'x.pdf', base64: PDF }, at))).toMatchObject({
    code: 'NOT_FOUND',
  });
  expect(readdirSync(w.context.store.papers)).toEqual(before);
});

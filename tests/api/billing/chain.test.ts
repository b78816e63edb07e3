/**
 * From a quote to the last payment by the command line alone: ink, deposit, hours, expenses, bill, part payment, reminder, paid.
 */
import { expect, test } from 'vitest';
import type { Expense } from '../../../core/contract/expenses.ts';
import type { OvertimeAsk } from '../../../core/contract/hours.ts';
import type { Paper } from '../../../core/contract/jobs.ts';
import { pagesOfText } from '../../papers/read-text.ts';
import { house, TAXED, usd } from './house.ts';
import { onPapers } from './papers.ts';

const PNG = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';
const PAY_TO = { name: 'Lakeline Pictures', iban: '', bic: '', words: 'By check to the address above.' };

test('quote, ink, deposit, hours, expenses, bill, part payment, reminder, paid', async () => {
  const h = await house({ setup: { ...TAXED, payTo: PAY_TO, lateInterestPercent: '11.75' } });
  const { call, refused, at, paper } = h.door;
  // Two days at 1,200.00 are 2,400.00; 20 % on it are 480.00; half of 2,880.00 is 1,440.00.
  expect(h.version.draft).toMatchObject({
    totals: { net: usd(240_000), tax: usd(48_000), gross: usd(288_000) },
    deposit: { amount: usd(144_000) },
  });
  const job = await h.job();
  const one = { id: job.id, version: job.version };
  expect(job).toMatchObject({ state: 'inked', ink: { who: 'Ilse Marrow', how: 'mail', quoteVersion: 1 } });
  const { paper: terms } = await call<{ paper: Paper }>('jobs.terms', one);
  const words = (await pagesOfText(await paper(terms.id))).join(' ');
  expect(words).toContain('it costs: USD 2,880.00 in all');
  expect(words).toContain('A deposit of USD 1,440.00 (50 % of the total)');
  expect(words).toContain('interest of 11.75 % a year');
  await call('jobs.signed', { ...one, name: 'terms signed.png', base64: PNG });

  // 1,440.00 with 240.00 of tax in it, due in 14 days.
  const deposit = await h.issue('deposit');
  expect(deposit).toMatchObject({ number: '2026-001', net: usd(120_000), tax: usd(24_000), toPay: usd(144_000), dueDate: '2026-10-15' });
  at('2026-10-10T15:00:00Z');
  expect(await call('payments.propose', { clientId: h.client.id, amount: usd(144_000), on: '2026-10-10' })).toMatchObject({
    parts: [{ number: '2026-001', amount: usd(144_000) }],
    over: usd(0),
  });
  await h.pay(usd(144_000), '2026-10-10', [deposit]);
  expect(await h.invoice(deposit.id)).toMatchObject({ state: 'paid', open: usd(0) });
  await call('jobs.amend', { ...one, what: 'The evening awards are filmed too, hours as they come.', who: 'Ilse Marrow', how: 'phone' });

  // Asked for on the day and approved on site; 08:00 to 20:30 less half an hour is 12 h, 2 h over at 120.00 x 1.5.
  at('2026-12-12T23:30:00Z');
  const { ask } = await call<{ ask: OvertimeAsk }>('hours.ask', { jobId: job.id, date: '2026-12-12', minutes: 120 });
  await call('hours.settleAsk', { id: ask.id, approved: true, who: 'Ana Voss', how: 'word of mouth' });
  at('2026-12-14T15:00:00Z');
  await h.worked('2026-12-12T08:00', '2026-12-12T20:30', 30);
  await h.worked('2026-12-13T08:00', '2026-12-13T18:00');

  // Parking 24.00, charged on with 10 %: 26.40.
  const spent = {
    jobId: job.id,
    on: '2026-12-12',
    category: 'parking',
    what: 'Parking at the hall',
    amount: usd(2_400),
    rate: null,
    markUpPercent: '10',
    billed: true,
    untaxed: null,
  };
  const { expense } = await call<{ expense: Expense }>('expenses.save', { fields: spent });
  await call('expenses.attach', { id: expense.id, version: expense.version, name: 'parking.png', base64: PNG });

  // 2,400.00 + 360.00 + 26.40 = 2,786.40; 20 % are 557.28; 3,343.68 less 1,440.00 (1,200.00 + 240.00) leaves 1,903.68.
  const draft = await h.draft('final');
  expect(draft.lines.map(({ what, amount }) => [what, amount.minor])).toEqual([
    [expect.stringContaining('Shooting'), 240_000],
    [expect.stringContaining('vertime'), 36_000],
    [expect.stringContaining('Parking at the hall'), 2_640],
  ]);
  expect(draft).toMatchObject({
    totals: { net: usd(278_640), tax: usd(55_728), gross: usd(334_368) },
    credited: [{ number: '2026-001', gross: usd(-144_000), tax: usd(-24_000) }],
    toPay: usd(190_368),
    missing: [],
  });
  expect(draft.differences.join(' ')).toContain('2 h approved by Ana Voss');
  expect(draft.differences).toContainEqual('Total 3,343.68 instead of 2,880.00: 463.68 more.');
  const bill = await h.issue('final');
  expect(bill).toMatchObject({ number: '2026-002', dueDate: '2026-12-28', open: usd(190_368), state: 'open' });

  at('2026-12-20T15:00:00Z');
  await h.pay(usd(100_000), '2026-12-20', [bill]);
  expect(await h.invoice(bill.id)).toMatchObject({ state: 'part paid', open: usd(90_368), daysLate: 0 });

  // A year's end lies between: 13 days late on 10 January.
  at('2027-01-10T15:00:00Z');
  expect(await h.invoice(bill.id)).toMatchObject({ state: 'late', open: usd(90_368), daysLate: 13 });
  const reminder = await call<{ subject: string; text: string }>('invoices.reminder', { id: bill.id, tone: 'plain' });
  expect(reminder.text).toContain('903.68');
  expect(reminder.subject).toContain('2026-002');
  await call('invoices.reminded', { id: bill.id, tone: 'plain' });
  at('2027-01-12T15:00:00Z');
  await h.pay(usd(90_368), '2027-01-12', [bill]);
  expect(await h.invoice(bill.id)).toMatchObject({
    state: 'paid',
    open: usd(0),
    reminders: [{ tone: 'plain', at: '2027-01-10T15:00:00Z' }],
  });
  expect(await refused('invoices.reminder', { id: bill.id, tone: 'firm' })).toMatchObject({ code: 'REFUSED' });

  // What the ledger says is what the papers say: 1,440.00 + 1,903.68 = 3,343.68 billed in 2026; 2,440.00 came then, 903.68 in 2027.
  expect(await onPapers(h)).toEqual([
    ['2026-001', 144_000],
    ['2026-002', 190_368],
  ]);
  expect(await call('ledger.year', { year: 2026 })).toMatchObject({ billed: { home: usd(334_368) }, received: { home: usd(244_000) } });
  expect(await call('ledger.year', { year: 2027 })).toMatchObject({ billed: { home: usd(0) }, received: { home: usd(90_368) } });
  expect(await call('ledger.see')).toMatchObject({ openCount: 0, lateCount: 0, clients: [] });
  expect(await call('ledger.see', { asOf: '2027-01-11' })).toMatchObject({ open: { home: usd(90_368) }, late: { home: usd(90_368) } });
  const { statements } = await call<{ statements: { rows: { balance: object }[] }[] }>('invoices.statement', { clientId: h.client.id });
  expect(statements[0]?.rows.map(({ balance }) => balance)).toEqual([144_000, 0, 190_368, 90_368, 0].map(usd));
});

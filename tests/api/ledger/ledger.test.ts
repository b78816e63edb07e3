/**
 * The ledger over a job from its ink to its last payment, every sum worked by hand, and against the papers themselves.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { blankClient } from '../../../core/people/blank.ts';
import { desk } from '../../../electron/api/desk.ts';
import { expenses } from '../../../electron/api/expenses.ts';
import { invoices } from '../../../electron/api/invoices.ts';
import { ledger } from '../../../electron/api/ledger.ts';
import { payments } from '../../../electron/api/payments.ts';
import { agreedJob, issued, TAXED, worked, type Agreed } from '../invoices/agreed-job.ts';
import { refusal, SETUP, world } from '../world.ts';

const usd = (minor: number) => ({ minor, currency: 'USD' });
const eur = (minor: number) => ({ minor, currency: 'EUR' });
const only = (minor: number) => ({ by: [usd(minor)], home: usd(minor) });
const nothing = { by: [], home: usd(0) };
const see = async ({ at: { context } }: Agreed, asOf?: string) => call(ledger.see, asOf ? { asOf } : {}, { context });
const clocks = async ({ at: { context } }: Agreed) => (await call(desk.see, {}, { context })).clocks;
const about = { how: 'transfer', note: '' };

async function paid({ at: { context } }: Agreed, invoiceId: string, minor: number, on: string): Promise<void> {
  const amount = usd(minor);
  await call(payments.record, { on, ...about, amount, parts: [{ invoiceId, amount }], toCredit: false }, { context });
}

test('an empty ledger is all zeros', async () => {
  const { context } = await world('2026-10-01T15:00:00Z');
  expect(await call(ledger.see, {}, { context })).toEqual({
    asOf: '2026-10-01',
    home: 'USD',
    open: nothing,
    openCount: 0,
    late: nothing,
    lateCount: 0,
    disputed: nothing,
    ageing: [],
    clients: [],
    expected: [],
  });
  expect(await call(ledger.papers, { show: 'all' }, { context })).toMatchObject({ rows: [], more: 0 });
  expect(await call(ledger.earned, {}, { context })).toEqual({ rows: [], together: null });
  expect(await call(ledger.year, {}, { context })).toMatchObject({ year: 2026, years: [2026], billed: nothing, received: nothing });
});

test('before the first set-up it says what to do', async () => {
  const { context } = await world('2026-10-01T15:00:00Z', null);
  expect(await refusal(call(ledger.see, {}, { context }))).toMatchObject({
    code: 'REFUSED',
    todo: 'Fill in Setup first: your name and where you start from.',
  });
});

test('from ink to paid: what is expected, owed, late and received on every day of it', async () => {
  const agreed = await agreedJob({ setup: TAXED });
  const { at, job, clientId } = agreed;
  const { context } = at;

  // 2,400.00 and 20 % tax are 2,880.00: half as a deposit by first call on 12 December, half 14 days after the last wrap.
  expect(
    (await see(agreed)).expected.map(({ from, sum, parts }) => [from, sum.home?.minor, parts.map(({ kind, on }) => [kind, on])]),
  ).toEqual([
    ['2026-12-07', 144_000, [['deposit', '2026-12-12']]],
    ['2026-12-21', 144_000, [['to bill', '2026-12-27']]],
  ]);
  expect((await clocks(agreed)).map(({ kind, sentence }) => [kind, sentence])).toEqual([
    ['deposit', 'Bakers congress: deposit of USD 1,440.00 to bill'],
  ]);

  const deposit = await issued(agreed, 'deposit');
  expect(await see(agreed)).toMatchObject({
    open: only(144_000),
    openCount: 1,
    late: nothing,
    clients: [{ clientId, open: only(144_000), daysLate: 0 }],
  });
  // From two weeks before it is due.
  expect(await clocks(agreed)).toEqual([]);
  at.at('2026-10-02T15:00:00Z');
  expect((await clocks(agreed)).map(({ kind, at: instant, late }) => [kind, instant, late])).toEqual([
    ['due', '2026-10-16T04:59:00Z', false],
  ]);

  // Due on 15 October, it is late from the 16th on.
  at.at('2026-10-20T15:00:00Z');
  const late = await see(agreed);
  expect(late).toMatchObject({ late: only(144_000), lateCount: 1 });
  expect(late.ageing[0]?.rows.map(({ bucket, count }) => [bucket, count]).filter(([, count]) => count !== 0)).toEqual([['1-30', 1]]);
  expect((await see(agreed, '2026-10-15')).late).toEqual(nothing);
  expect((await clocks(agreed)).map(({ kind, action, invoiceId }) => [kind, action, invoiceId])).toEqual([
    ['reminder', 'remind', deposit.id],
  ]);
  await call(invoices.reminded, { id: deposit.id, tone: 'kind' }, { context });
  expect((await clocks(agreed))[0]).toMatchObject({ kind: 'reminder', at: '2026-10-27T15:00:00Z', late: false });
  at.at('2026-10-22T15:00:00Z');
  await paid(agreed, deposit.id, 144_000, '2026-10-21');
  expect(await see(agreed)).toMatchObject({ open: nothing, clients: [] });
  // As of the day before the payment it was open still.
  expect((await see(agreed, '2026-10-20')).open).toEqual(only(144_000));

  at.at('2026-12-14T15:00:00Z');
  expect((await clocks(agreed)).map(({ kind }) => kind)).toEqual(['hours']);
  await worked(agreed, '2026-12-12T08:00', '2026-12-12T18:00');
  await worked(agreed, '2026-12-13T08:00', '2026-12-13T18:00');
  expect((await clocks(agreed)).map(({ kind }) => kind)).toEqual(['bill']);
  const final = await issued(agreed, 'final');
  at.at('2026-12-31T15:00:00Z');
  await paid(agreed, final.id, 44_000, '2026-12-20');
  expect(await see(agreed)).toMatchObject({ open: only(100_000), late: only(100_000) });

  // Billed 1,440.00 in October and in December; received 1,440.00 and 440.00. Tax: 240.00 of the deposit, 440 x 240 / 1,440 = 73.33.
  const year = await call(ledger.year, { year: 2026 }, { context });
  expect(year).toMatchObject({ billed: only(288_000), received: only(188_000), years: [2026] });
  expect(
    year.months
      .filter(({ billed }) => billed.by.length > 0)
      .map(({ month, billed, received }) => [month, billed.home?.minor, received.home?.minor]),
  ).toEqual([
    ['2026-10', 144_000, 144_000],
    ['2026-12', 144_000, 44_000],
  ]);
  expect(year.clients).toMatchObject([{ clientId, name: 'Northwind Bakers', billed: only(288_000), received: only(188_000) }]);
  expect(year.jobs).toMatchObject([{ jobId: job.id, title: 'Bakers congress' }]);
  expect(year.setAside).toMatchObject({ income: usd(188_000 - 31_333), collected: usd(31_333), costs: usd(0) });

  await paid(agreed, final.id, 100_000, '2026-12-31');
  expect((await call(ledger.year, { year: 2026 }, { context })).setAside.collected).toEqual(usd(48_000));
  expect(await see(agreed)).toMatchObject({ open: nothing, late: nothing, expected: [] });
  expect(await clocks(agreed)).toEqual([]);
});

test('a full credit note brings every sum to zero, and the job waits for its bill again', async () => {
  const agreed = await agreedJob();
  agreed.at.at('2026-12-14T15:00:00Z');
  const { context } = agreed.at;
  const final = await issued(agreed, 'final');
  expect((await see(agreed)).open).toEqual(only(240_000));
  await call(invoices.credit, { id: final.id, lines: 'all', reason: 'Wrong address' }, { context });
  expect(await see(agreed)).toMatchObject({ open: nothing, ageing: [], clients: [] });
  expect(await call(ledger.year, {}, { context })).toMatchObject({ billed: nothing, received: nothing });
  expect((await call(ledger.earned, {}, { context })).rows).toEqual([]);
  expect((await see(agreed)).expected.flatMap(({ parts }) => parts.map(({ kind }) => kind))).toEqual(['deposit', 'to bill']);
});

test('kept per hour away: the bill less what was spent, over the hours that were worked', async () => {
  const agreed = await agreedJob();
  const { context } = agreed.at;
  agreed.at.at('2026-12-14T15:00:00Z');
  await worked(agreed, '2026-12-12T08:00', '2026-12-12T20:00');
  await worked(agreed, '2026-12-13T08:00', '2026-12-13T18:00');
  const spent = {
    jobId: agreed.job.id,
    on: '2026-12-12',
    category: 'parking' as const,
    what: 'Parking',
    rate: null,
    markUpPercent: '0',
    untaxed: null,
  };
  await call(expenses.save, { fields: { ...spent, amount: usd(40_00), billed: false } }, { context });
  await call(expenses.save, { fields: { ...spent, amount: usd(60_00), billed: true } }, { context });
  await issued(agreed, 'final');
  const { rows, together } = await call(ledger.earned, {}, { context });
  // 2,400.00 and 2 h over at 180.00 are 2,760.00, with 60.00 charged on 2,820.00; less 100.00 spent: 2,720.00 over 22 h is 123.64.
  expect(rows).toMatchObject([
    {
      title: 'Bakers congress',
      on: '2026-12-14',
      kept: usd(272_000),
      hours: '22',
      perHour: usd(123_64),
      quoted: usd(120_00),
      pulledDown: ['40.00 of expenses was not charged on.'],
      cautions: [],
    },
  ]);
  expect(together).toEqual({ jobs: 1, perHour: usd(123_64) });
  expect((await call(desk.see, {}, { context })).month).toMatchObject({
    perHour: { jobs: 1 },
    owed: { open: { home: usd(282_000) }, late: nothing },
  });
});

test('euro beside dollars: each by itself, and together only by the rate of the invoice', async () => {
  const agreed = await agreedJob({ currency: 'EUR' });
  const { context } = agreed.at;
  // What is not billed yet has no rate: it is not added at home.
  expect((await see(agreed)).expected[0]?.sum).toEqual({ by: [eur(120_000)], home: null });
  const deposit = await issued(agreed, 'deposit', [{ op: 'rate', rate: '1.1', date: '2026-10-01' }]);
  expect((await see(agreed)).open).toEqual({ by: [eur(120_000)], home: usd(132_000) });
  const rate = { rate: '1.15', date: '2026-10-05' };
  const amount = eur(120_000);
  agreed.at.at('2026-10-06T15:00:00Z');
  await call(
    payments.record,
    { on: '2026-10-05', ...about, amount, rate, parts: [{ invoiceId: deposit.id, amount }], toCredit: false },
    { context },
  );
  expect(await call(ledger.year, {}, { context })).toMatchObject({
    billed: { by: [eur(120_000)], home: usd(132_000) },
    received: { by: [eur(120_000)], home: usd(138_000) },
    setAside: { income: usd(138_000) },
  });
});

test('papers are found by what they are and by words; what is late longest stands first', async () => {
  const agreed = await agreedJob();
  const { context } = agreed.at;
  const deposit = await issued(agreed, 'deposit');
  agreed.at.at('2026-12-14T15:00:00Z');
  await issued(agreed, 'final');
  const numbers = async (input: object) =>
    (await call(ledger.papers, { show: 'open', ...input }, { context })).rows.map(({ number }) => number);
  expect(await numbers({})).toEqual(['2026-001', '2026-002']);
  expect(await numbers({ show: 'late' })).toEqual(['2026-001']);
  expect(await numbers({ text: 'bakers 002' })).toEqual(['2026-002']);
  expect(await numbers({ text: 'nobody' })).toEqual([]);
  await paid(agreed, deposit.id, 120_000, '2026-12-14');
  expect(await numbers({ show: 'paid' })).toEqual(['2026-001']);
  expect(await numbers({ show: 'all' })).toEqual(['2026-002', '2026-001']);
  expect(await numbers({ show: 'open', asOf: '2026-11-01' })).toEqual(['2026-001']);
});

test('a purchase order that is asked for and missing is a clock from two weeks before the wrap', async () => {
  const agreed = await agreedJob({ client: { asks: { ...blankClient('').asks, purchaseOrder: true } } });
  agreed.at.at('2026-12-01T15:00:00Z');
  expect((await clocks(agreed)).map(({ kind }) => kind)).toContain('order');
});

test('tables open in a spreadsheet without running anything, with plain figures', async () => {
  const agreed = await agreedJob({ client: { name: '=Bakers' } });
  const { context } = agreed.at;
  const deposit = await issued(agreed, 'deposit');
  await paid(agreed, deposit.id, 120_000, '2026-10-01');
  const span = { from: '2026-01-01', to: '2026-12-31' };
  const table = async (what: 'invoices' | 'payments' | 'expenses' | 'mileage' | 'per diem' | 'income') =>
    call(ledger.csv, { what, ...span }, { context });
  const bills = await table('invoices');
  expect(bills).toMatchObject({ name: 'invoices 2026-01-01 to 2026-12-31.csv', rows: 1 });
  expect(bills.text.split('\r\n')[1]).toBe(
    "2026-001,deposit,2026-10-01,2026-10-15,'=Bakers,Bakers congress,USD,1200.00,0.00,1200.00,1200.00,1200.00,0.00,0.00,0.00,paid,,",
  );
  expect((await table('payments')).text.split('\r\n')[1]).toBe("2026-10-01,payment,'=Bakers,transfer,USD,1200.00,2026-001,USD,1200.00,,,,");
  expect((await table('income')).text.split('\r\n')).toContain("client,'=Bakers,USD,1200.00,1200.00,1200.00");
  for (const what of ['expenses', 'mileage', 'per diem'] as const) expect((await table(what)).text).toMatch(/^\ufeffDate,/);
  expect(await refusal(call(ledger.csv, { what: 'income', from: '2026-02-01', to: '2026-01-01' }, { context }))).toMatchObject({
    code: 'BAD_REQUEST',
  });
});

test('a store that is set up in another country tells nothing of the tax of this one', async () => {
  const { context } = await world('2026-10-01T15:00:00Z', { ...SETUP, currency: 'EUR' });
  expect((await call(ledger.year, {}, { context })).setAside.selfEmployment).toBeNull();
});

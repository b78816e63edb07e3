/**
 * Money that comes, goes, comes too much, in another currency, or not at all: every sum worked by hand.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { invoices } from '../../../electron/api/invoices.ts';
import { payments } from '../../../electron/api/payments.ts';
import { refusal } from '../world.ts';
import { agreedJob, issued, type Agreed } from './agreed-job.ts';

const usd = (minor: number) => ({ minor, currency: 'USD' });
const eur = (minor: number) => ({ minor, currency: 'EUR' });
const about = { how: 'transfer', note: '' };
const get = async ({ at: { context } }: Agreed, id: string) => (await call(invoices.get, { id }, { context })).invoice;

/** A deposit of 1,200.00 due 15 October and a bill of 1,200.00 due 28 December; now is 1 January. */
async function billed() {
  const agreed = await agreedJob();
  const deposit = await issued(agreed, 'deposit');
  agreed.at.at('2026-12-14T15:00:00Z');
  const final = await issued(agreed, 'final');
  agreed.at.at('2027-01-01T18:00:00Z');
  return { agreed, deposit, final, context: agreed.at.context };
}

test('one payment over two invoices, oldest due first; part payment; what is over becomes credit, is used and paid back', async () => {
  const { agreed, deposit, final, context } = await billed();
  const { clientId } = agreed;
  const on = '2026-12-31';
  expect(await call(payments.propose, { clientId, amount: usd(150_000), on }, { context })).toMatchObject({
    parts: [
      { number: '2026-001', amount: usd(120_000), dueDate: '2026-10-15' },
      { number: '2026-002', amount: usd(30_000) },
    ],
    over: usd(0),
    credit: [],
  });
  const parts = [
    { invoiceId: deposit.id, amount: usd(120_000) },
    { invoiceId: final.id, amount: usd(30_000) },
  ];
  await call(payments.record, { on, ...about, amount: usd(150_000), parts, toCredit: false }, { context });
  expect(await get(agreed, deposit.id)).toMatchObject({ state: 'paid', open: usd(0) });
  expect(await get(agreed, final.id)).toMatchObject({ state: 'late', open: usd(90_000), paid: usd(30_000), daysLate: 4 });

  const rest = { on, ...about, amount: usd(100_000), parts: [{ invoiceId: final.id, amount: usd(90_000) }] };
  expect(await refusal(call(payments.record, { ...rest, toCredit: false }, { context }))).toMatchObject({
    findings: ['USD 100.00 is over. Keep it as credit of the client, or correct the amount.'],
  });
  const { payment } = await call(payments.record, { ...rest, toCredit: true }, { context });
  expect(payment).toMatchObject({ credit: usd(10_000), clientId, gain: null });
  expect((await call(payments.credit, { clientId }, { context })).credit).toEqual([usd(10_000)]);

  expect(await refusal(call(payments.refund, { clientId, on, ...about, amount: usd(10_001) }, { context }))).toMatchObject({
    what: 'USD 100.00 is all the credit there is, not USD 100.01.',
  });
  const refunded = await call(payments.refund, { clientId, on, ...about, amount: usd(4_000) }, { context });
  expect(refunded.payment).toMatchObject({ kind: 'refund', amount: usd(-4_000), parts: [{ invoiceId: null, amount: usd(-4_000) }] });
  expect((await call(payments.credit, { clientId }, { context })).credit).toEqual([usd(6_000)]);
  // The credit was partly paid back, so the payment that brought it cannot just vanish.
  expect((await refusal(call(payments.reverse, { id: payment.id, reason: 'Bounced' }, { context }))).what).toBe(
    'The credit that this payment brought was used since.',
  );

  // Issued 1,200.00 twice; paid 1,500.00 and 1,000.00, 40.00 back: 2,400.00 - 2,500.00 + 40.00 = -60.00, the credit that is left.
  const { statements } = await call(invoices.statement, { clientId }, { context });
  expect(statements).toMatchObject([{ currency: 'USD', balance: usd(-6_000) }]);
  expect(statements[0]?.rows.map(({ kind, amount, balance }) => [kind, amount.minor, balance.minor])).toEqual([
    ['invoice', 120_000, 120_000],
    ['invoice', 120_000, 240_000],
    ['payment', -150_000, 90_000],
    ['payment', -100_000, -10_000],
    ['refund', 4_000, -6_000],
  ]);
});

test('what was paid on a bill that is credited is credit: used for the next bill, and the books come to zero', async () => {
  const { agreed, final, context } = await billed();
  const { clientId } = agreed;
  const on = '2026-12-31';
  const parts = [{ invoiceId: final.id, amount: usd(120_000) }];
  await call(payments.record, { on, ...about, amount: usd(120_000), parts, toCredit: false }, { context });
  await call(invoices.credit, { id: final.id, lines: 'all', reason: 'Wrong client' }, { context });
  expect(await get(agreed, final.id)).toMatchObject({ state: 'credited', over: usd(120_000) });
  expect(
    await refusal(
      call(
        payments.record,
        { on, ...about, amount: usd(1), parts: [{ invoiceId: final.id, amount: usd(1) }], toCredit: false },
        { context },
      ),
    ),
  ).toMatchObject({ findings: ['2026-002 was credited; nothing can be paid on it. Pay the one that took its place.'] });

  const again = await issued(agreed, 'final');
  const used = await call(payments.applyCredit, { clientId, invoiceId: again.id, amount: usd(120_000) }, { context });
  expect(used.payment).toMatchObject({
    kind: 'credit used',
    amount: usd(0),
    parts: [
      { invoiceId: final.id, amount: usd(-120_000) },
      { invoiceId: again.id, amount: usd(120_000) },
    ],
  });
  expect(await get(agreed, again.id)).toMatchObject({ state: 'paid', number: '2027-002' });
  expect(await get(agreed, final.id)).toMatchObject({ over: usd(0) });
  // The deposit is open still: 1,200.00.
  expect((await call(invoices.statement, { clientId }, { context })).statements).toMatchObject([{ balance: usd(120_000) }]);
  expect((await call(payments.credit, { clientId }, { context })).credit).toEqual([]);
});

test('written off, then money comes after all; a payment that bounced is reversed and the invoice is open again', async () => {
  const { agreed, final, context } = await billed();
  const on = '2026-12-31';
  expect((await call(invoices.writeOff, { id: final.id, reason: 'Insolvent' }, { context })).invoice).toMatchObject({
    state: 'written off',
    open: usd(0),
    writtenOff: usd(120_000),
  });
  expect((await refusal(call(invoices.writeOff, { id: final.id, reason: 'Again' }, { context }))).what).toBe(
    'Nothing is open of 2026-002.',
  );
  const part = { on, ...about, amount: usd(50_000), parts: [{ invoiceId: final.id, amount: usd(50_000) }], toCredit: false };
  const { payment } = await call(payments.record, part, { context });
  expect(await get(agreed, final.id)).toMatchObject({ state: 'written off', paid: usd(50_000), writtenOff: usd(70_000) });
  const { statements } = await call(invoices.statement, { clientId: agreed.clientId }, { context });
  expect(statements).toMatchObject([{ balance: usd(120_000) }]);

  const { payment: reversal } = await call(payments.reverse, { id: payment.id, reason: 'Bounced' }, { context });
  expect(reversal).toMatchObject({ kind: 'reversal', amount: usd(-50_000), reverses: payment.id, note: 'Bounced' });
  expect(await get(agreed, final.id)).toMatchObject({ paid: usd(0), writtenOff: usd(120_000) });
  expect((await refusal(call(payments.reverse, { id: payment.id, reason: 'Twice' }, { context }))).what).toBe(
    'This payment was reversed already.',
  );
  expect((await refusal(call(payments.reverse, { id: reversal.id, reason: 'Back' }, { context }))).what).toBe('This is a reversal itself.');
  const { payments: all } = await call(payments.list, { clientId: agreed.clientId }, { context });
  expect(all.map(({ kind, reversed }) => [kind, reversed])).toEqual([
    ['reversal', false],
    ['payment', true],
  ]);
});

test('an invoice in euro: paid in euro at another rate, and by dollars that the bank made of it', async () => {
  const agreed = await agreedJob({ currency: 'EUR' });
  const { context } = agreed.at;
  // EUR 1,200.00 at 1.08 are USD 1,296.00.
  const bill = await issued(agreed, 'deposit', [{ op: 'rate', rate: '1.08', date: '2026-10-01' }]);
  agreed.at.at('2026-10-20T15:00:00Z');
  const on = '2026-10-20';
  const half = { on, ...about, amount: eur(60_000), parts: [{ invoiceId: bill.id, amount: eur(60_000) }], toCredit: false };
  expect(await refusal(call(payments.record, half, { context }))).toMatchObject({
    findings: ['EUR needs its rate: USD for one EUR on the date of payment.'],
  });
  // 600.00 at 1.10 are 660.00; at 1.08 they were 648.00: 12.00 gained.
  const paid = await call(payments.record, { ...half, rate: { rate: '1.10', date: on } }, { context });
  expect(paid.payment).toMatchObject({ gain: usd(1_200), parts: [{ gain: usd(1_200) }] });
  // 640.00 dollars came for the other 600.00: 8.00 lost.
  const dollars = { on, ...about, amount: usd(64_000), parts: [{ invoiceId: bill.id, amount: eur(60_000) }], toCredit: false };
  expect((await call(payments.record, dollars, { context })).payment).toMatchObject({ gain: usd(-800), credit: usd(0) });
  expect(await get(agreed, bill.id)).toMatchObject({ state: 'paid', open: eur(0), daysLate: 0 });
});

test('what cannot be meant is refused, and nothing is kept', async () => {
  const { agreed, deposit, final, context } = await billed();
  const on = '2026-12-31';
  const record = (more: object) =>
    refusal(call(payments.record, { on, ...about, amount: usd(100), parts: [], toCredit: false, ...more }, { context }));
  expect(await record({ on: '2027-01-02' })).toMatchObject({
    code: 'BAD_INPUT',
    what: 'on is still to come; record it when it has happened.',
  });
  expect(await record({ amount: usd(0) })).toMatchObject({ code: 'BAD_INPUT' });
  expect(await record({ amount: usd(10 ** 12 + 1) })).toMatchObject({ code: 'BAD_REQUEST' });
  expect(await record({ parts: [{ invoiceId: deposit.id, amount: usd(120_001) }], amount: usd(120_001) })).toMatchObject({
    findings: ['2026-001: 1,200.00 is open, not 1,200.01.'],
  });
  expect(await record({ parts: [{ invoiceId: deposit.id, amount: usd(-5) }] })).toMatchObject({
    findings: ['2026-001: a part is above zero.'],
  });
  expect(await record({ parts: [{ invoiceId: final.id, amount: usd(101) }] })).toMatchObject({
    findings: ['USD 1.01 is set on invoices, and 1.00 came.'],
  });
  const twice = [deposit, deposit].map(({ id }) => ({ invoiceId: id, amount: usd(50) }));
  expect(await record({ parts: twice })).toMatchObject({ code: 'BAD_INPUT' });
  expect(await record({ parts: [], toCredit: true })).toMatchObject({ what: "What is over would be nobody's credit." });
  expect((await call(payments.list, {}, { context })).payments).toEqual([]);
  expect(
    await refusal(call(payments.applyCredit, { clientId: agreed.clientId, invoiceId: final.id, amount: usd(1) }, { context })),
  ).toMatchObject({
    what: 'There is no credit, not USD 0.01.',
  });
});

test('a dispute stands beside the invoice until it is settled; reminders are in the tone asked for and are noted', async () => {
  const { agreed, final, context } = await billed();
  const remind = (tone: 'kind' | 'plain' | 'firm') => call(invoices.reminder, { id: final.id, tone }, { context });
  const { subject, text } = await remind('kind');
  expect(subject).toBe('Reminder: invoice 2026-002, Bakers congress');
  expect(text).toContain('USD 1,200.00 is open and was due on 28 December 2026, 4 days ago.');
  expect((await remind('firm')).subject).toBe('Overdue: invoice 2026-002, Bakers congress');
  const { invoice } = await call(invoices.reminded, { id: final.id, tone: 'kind' }, { context });
  expect(invoice.reminders).toEqual([{ tone: 'kind', at: '2027-01-01T18:00:00Z' }]);

  await call(invoices.dispute, { id: final.id, why: 'Two hours are contested' }, { context });
  expect(await get(agreed, final.id)).toMatchObject({ state: 'disputed', disputed: 'Two hours are contested', daysLate: 4 });
  expect((await refusal(remind('plain'))).what).toBe('2026-002 is disputed: Two hours are contested.');
  agreed.at.at('2027-01-02T18:00:00Z');
  await call(invoices.dispute, { id: final.id, why: null }, { context });
  expect(await get(agreed, final.id)).toMatchObject({ state: 'late', disputed: null });
  expect((await refusal(call(invoices.dispute, { id: final.id, why: null }, { context }))).what).toBe('2026-002 is not disputed.');
});

/**
 * The unhappy twins of the chain by the command line, each total worked by hand: 2 days at 1,200.00, half of it asked for as a deposit.
 */
import { expect, test } from 'vitest';
import type { CallingOff } from '../../../core/contract/callings.ts';
import type { Invoice } from '../../../core/contract/invoices.ts';
import { pagesOfText } from '../../papers/read-text.ts';
import { house, TAXED, usd, type House } from './house.ts';
import { onPapers } from './papers.ts';

const eur = (minor: number) => ({ minor, currency: 'EUR' });
const AFTER = '2026-12-14T15:00:00Z';

/** Nothing is open, and what was billed and what came in are as given. */
async function squared({ door, client }: House, year: number, billed: number, received: number): Promise<void> {
  expect(await door.call('ledger.see')).toMatchObject({ openCount: 0, clients: [] });
  expect(await door.call('ledger.year', { year })).toMatchObject({ billed: { home: usd(billed) }, received: { home: usd(received) } });
  const { statements } = await door.call<{ statements: { balance: { minor: number } }[] }>('invoices.statement', { clientId: client.id });
  expect(statements.map(({ balance }) => balance.minor)).toEqual(statements.map(() => 0));
}

async function called(h: House, postponeTo: string | null, more: object = {}): Promise<CallingOff> {
  const { id, version } = await h.job();
  return (await h.door.call<{ calling: CallingOff }>('callings.off', { id, version, postponeTo, ...more })).calling;
}

async function paidDeposit(h: House): Promise<Invoice> {
  const deposit = await h.issue('deposit');
  h.door.at('2026-10-10T15:00:00Z');
  await h.pay(usd(deposit.toPay.minor), '2026-10-10', [deposit]);
  return deposit;
}

test('cancelled at six days: half of the days and a room already bound, the deposit set against them', async () => {
  const h = await house();
  await paidDeposit(h);
  // First call is on 12 December at 14:00 UTC; six days before it is under seven: 50 % of 2,400.00, and 150.00 for the room.
  h.door.at('2026-12-06T14:00:00Z');
  const { owes } = await called(h, null, { bound: '150' });
  expect(owes).toMatchObject({ fee: usd(120_000), bound: usd(15_000), deposit: usd(120_000), owed: usd(15_000), paidBack: usd(0) });
  expect((await h.job()).state).toBe('cancelled');
  expect((await h.draft('final')).missing).toContainEqual('Bakers congress was cancelled: bill what its terms say.');
  const bill = await h.issue('cancellation');
  expect(bill).toMatchObject({ number: '2026-002', gross: usd(135_000), toPay: usd(15_000) });
  expect(bill.content.lines.map(({ amount }) => amount)).toEqual([usd(120_000), usd(15_000)]);
  await h.pay(usd(15_000), '2026-12-06', [bill]);
  expect(await onPapers(h)).toEqual([
    ['2026-001', 120_000],
    ['2026-002', 15_000],
  ]);
  await squared(h, 2026, 135_000, 135_000);
});

test('cancelled in good time: nothing is owed, the deposit is credited and paid back, and every sum is zero', async () => {
  const h = await house();
  const deposit = await paidDeposit(h);
  h.door.at('2026-11-01T14:00:00Z');
  expect((await called(h, null)).owes).toMatchObject({ fee: usd(0), owed: usd(0), paidBack: usd(120_000) });
  expect((await h.draft('cancellation')).missing).toContainEqual(
    'Nothing is owed by the terms. Credit the deposit instead, if there was one.',
  );
  await h.door.call('invoices.credit', { id: deposit.id, lines: 'all', reason: 'Cancelled in good time' });
  expect(await h.invoice(deposit.id)).toMatchObject({ state: 'credited', over: usd(120_000) });
  const back = { clientId: h.client.id, on: '2026-11-01', how: 'bank', note: '', amount: usd(120_000) };
  await h.door.call('payments.refund', back);
  expect(await h.door.refused('payments.refund', back)).toMatchObject({ code: 'REFUSED' });
  await squared(h, 2026, 0, 0);
});

test('postponed over the year’s end: a quarter is owed, the deposit goes along, the bill comes from the new dates', async () => {
  const h = await house();
  await paidDeposit(h);
  // Half of the 50 % for a date agreed at once: 25 % of 2,400.00.
  h.door.at('2026-12-06T14:00:00Z');
  expect((await called(h, '2027-01-09')).owes).toMatchObject({ total: usd(60_000) });
  const fee = await h.issue('cancellation');
  expect(fee).toMatchObject({ number: '2026-002', toPay: usd(60_000), content: { credited: [] } });
  await h.pay(usd(60_000), '2026-12-06', [fee]);
  expect((await h.job()).days.map(({ date }) => date)).toEqual(['2027-01-09', '2027-01-10']);
  h.door.at('2027-01-11T15:00:00Z');
  await h.worked('2027-01-09T08:00', '2027-01-09T18:00');
  await h.worked('2027-01-10T08:00', '2027-01-10T18:00');
  const bill = await h.issue('final');
  expect(bill).toMatchObject({
    number: '2027-001',
    gross: usd(240_000),
    toPay: usd(120_000),
    content: { credited: [{ number: '2026-001' }] },
  });
  await h.pay(usd(120_000), '2027-01-11', [bill]);
  await squared(h, 2027, 120_000, 120_000);
  expect(await h.door.call('ledger.year', { year: 2026 })).toMatchObject({ billed: { home: usd(180_000) } });
});

test('disputed: no reminder while it lasts; settled by a part credit, and the rest is paid', async () => {
  const h = await house();
  h.door.at(AFTER);
  const bill = await h.issue('final');
  const { invoice } = await h.door.call<{ invoice: Invoice }>('invoices.dispute', { id: bill.id, why: 'Left at five on Sunday' });
  expect(invoice).toMatchObject({ state: 'disputed', disputed: 'Left at five on Sunday', open: usd(240_000) });
  expect(await h.door.call('ledger.see')).toMatchObject({ disputed: { home: usd(240_000) } });
  expect(await h.door.refused('invoices.reminder', { id: bill.id, tone: 'kind' })).toMatchObject({
    what: '2026-001 is disputed: Left at five on Sunday.',
  });
  const [line] = bill.content.lines;
  await h.door.call('invoices.credit', { id: bill.id, lines: [{ id: line?.id, amount: usd(20_000) }], reason: 'An hour and more less' });
  await h.door.call('invoices.dispute', { id: bill.id, why: null });
  expect(await h.invoice(bill.id)).toMatchObject({ disputed: null, open: usd(220_000), credited: usd(20_000) });
  await h.pay(usd(220_000), '2026-12-14', [bill]);
  expect(await onPapers(h)).toEqual([
    ['2026-001', 240_000],
    ['2026-002', -20_000],
  ]);
  await squared(h, 2026, 220_000, 220_000);
});

test('one payment over two invoices, and 100.00 too much: asked, kept as credit, paid back', async () => {
  const h = await house();
  const deposit = await h.issue('deposit');
  h.door.at(AFTER);
  const bill = await h.issue('final');
  // 1,200.00 and 1,200.00 are open; 2,500.00 came.
  const proposed = { clientId: h.client.id, amount: usd(250_000), on: '2026-12-14' };
  expect(await h.door.call('payments.propose', proposed)).toMatchObject({
    parts: [
      { number: '2026-001', amount: usd(120_000) },
      { number: '2026-002', amount: usd(120_000) },
    ],
    over: usd(10_000),
  });
  await expect(h.pay(usd(250_000), '2026-12-14', [deposit, bill])).rejects.toThrow(/REFUSED|cannot be recorded/);
  expect(await h.pay(usd(250_000), '2026-12-14', [deposit, bill], { toCredit: true })).toMatchObject({ credit: usd(10_000) });
  expect(await h.door.call('payments.credit', { clientId: h.client.id })).toEqual({ credit: [usd(10_000)] });
  await h.door.call('payments.refund', { clientId: h.client.id, on: '2026-12-14', how: 'bank', note: '', amount: usd(10_000) });
  expect(await h.door.call('payments.credit', { clientId: h.client.id })).toEqual({ credit: [] });
  await squared(h, 2026, 240_000, 240_000);
});

test('a wrong invoice is credited whole, which brings every sum to zero, and issued anew', async () => {
  const h = await house({ setup: TAXED });
  h.door.at(AFTER);
  const wrong = await h.issue('final');
  expect(wrong.toPay).toEqual(usd(288_000));
  await h.door.call('invoices.credit', { id: wrong.id, lines: 'all', reason: 'Billed to the wrong house' });
  const zero = usd(0);
  expect(await h.door.call('ledger.year', { year: 2026 })).toMatchObject({
    billed: { home: zero },
    received: { home: zero },
    setAside: { income: zero, collected: zero },
  });
  const rows = await h.invoices();
  for (const part of ['net', 'tax', 'gross', 'toPay', 'open'] as const)
    expect([part, rows.reduce((sum, row) => sum + row[part].minor, 0)]).toEqual([part, 0]);
  await squared(h, 2026, 0, 0);
  const again = await h.issue('final');
  expect(again.number).toBe('2026-003');
  expect(await onPapers(h)).toEqual([
    ['2026-001', 288_000],
    ['2026-002', -288_000],
    ['2026-003', 288_000],
  ]);
  await h.pay(usd(288_000), '2026-12-14', [again]);
  await squared(h, 2026, 288_000, 288_000);
});

test('a client in another currency: the rate of the supply on the bill, that of the day on the payment, and what lies between', async () => {
  const h = await house({ currency: 'EUR' });
  h.door.at('2026-12-20T15:00:00Z');
  expect((await h.draft('final')).missing).toContainEqual('The exchange rate: USD for one EUR on Sun 13 December 2026.');
  const bill = await h.issue('final', [{ op: 'rate', rate: '1.10', date: '2026-12-13' }]);
  expect(bill).toMatchObject({ toPay: eur(240_000), rate: { rate: '1.10', date: '2026-12-13' } });
  // 2,400.00 at 1.10 are 2,640.00; at 1.15 they are 2,760.00: 120.00 gained.
  const paid = await h.pay(eur(240_000), '2026-12-20', [bill], { rate: { rate: '1.15', date: '2026-12-20' } });
  expect(paid).toMatchObject({ gain: usd(12_000), parts: [{ amount: eur(240_000), gain: usd(12_000) }] });
  expect(await onPapers(h)).toEqual([['2026-001', 240_000]]);
  await squared(h, 2026, 264_000, 276_000);
});

test('prices with their tax inside: what was agreed is what is paid, and the tax comes out of it', async () => {
  const h = await house({ setup: { ...TAXED, tax: { name: 'Sales tax', percent: '20', included: true } } });
  // 2,400.00 hold 400.00 of tax; the deposit of 1,200.00 holds 200.00.
  const deposit = await paidDeposit(h);
  expect(deposit).toMatchObject({ net: usd(100_000), tax: usd(20_000), toPay: usd(120_000) });
  h.door.at(AFTER);
  const bill = await h.issue('final');
  expect(bill).toMatchObject({ net: usd(200_000), tax: usd(40_000), gross: usd(240_000), toPay: usd(120_000) });
  expect(bill.content.credited).toMatchObject([{ net: usd(-100_000), tax: usd(-20_000) }]);
  await h.pay(usd(120_000), '2026-12-14', [bill]);
  await squared(h, 2026, 240_000, 240_000);
});

test('reverse charge: no tax, and the paper says why and whose tax number it is', async () => {
  const client = {
    tax: 'reverse charge' as const,
    taxReason: 'The customer accounts for the tax.',
    taxId: 'DE 999 888 777',
    country: 'DE',
  };
  const h = await house({ setup: TAXED, client });
  const deposit = await paidDeposit(h);
  expect(deposit).toMatchObject({ net: usd(120_000), tax: usd(0), toPay: usd(120_000) });
  h.door.at(AFTER);
  const bill = await h.issue('final');
  expect(bill).toMatchObject({ net: usd(240_000), tax: usd(0), gross: usd(240_000), toPay: usd(120_000) });
  const words = (await pagesOfText(await h.door.paper(bill.paper.id))).join(' ');
  expect(words).toContain('The customer accounts for the tax.');
  expect(words).toContain('DE 999 888 777');
  expect(words).toContain('MN 4471');
});

test('overtime that nobody approved stands marked with its caution; it is asked for, refused, and left out', async () => {
  const h = await house();
  h.door.at(AFTER);
  await h.worked('2026-12-12T08:00', '2026-12-12T20:00');
  await h.worked('2026-12-13T08:00', '2026-12-13T18:00');
  // 2 h at 120.00 x 1.5 are 360.00.
  const draft = await h.draft('final');
  expect(draft.toPay).toEqual(usd(276_000));
  expect(draft.cautions).toContainEqual(expect.stringContaining('2 h of overtime is not approved'));
  const { id } = await h.job();
  const { ask } = await h.door.call<{ ask: { id: string } }>('hours.ask', { jobId: id, date: '2026-12-12', minutes: 120 });
  await h.door.call('hours.settleAsk', { id: ask.id, approved: false, who: 'Ana Voss', how: 'mail' });
  const overtime = (await h.draft('final')).lines.find(({ amount }) => amount.minor === 36_000);
  const bill = await h.issue('final', [{ op: 'drop', id: overtime?.id ?? '' }]);
  expect(bill.toPay).toEqual(usd(240_000));
  expect(await onPapers(h)).toEqual([['2026-001', 240_000]]);
});

test('a tax rate that changes in the middle: the bill at the new one, the deposit set off at its own, and it says so', async () => {
  const h = await house({ setup: TAXED });
  await paidDeposit(h);
  h.door.at(AFTER);
  await h.door.call('setup.save', { version: 1, fields: { ...TAXED, tax: { name: 'Sales tax', percent: '25', included: false } } });
  // 2,400.00 and 25 % are 3,000.00; less 1,440.00 (1,200.00 and 240.00) leaves 1,560.00.
  const draft = await h.draft('final');
  expect(draft).toMatchObject({ totals: { tax: usd(60_000), gross: usd(300_000) }, toPay: usd(156_000) });
  expect([...draft.differences, ...draft.cautions].join(' ')).toMatch(/25 %.*20 %|20 %.*25 %/);
  expect((await h.issue('final')).content.credited).toMatchObject([{ groups: [{ percent: '20', tax: usd(-24_000) }] }]);
});

test('another beginning of the numbers starts a run of its own; a purchase-order rule holds until it is overruled with a reason', async () => {
  const h = await house({ client: { asks: { purchaseOrder: true, insurance: false, taxForm: false, confidentiality: false } } });
  const { id } = await h.job();
  const input = { jobId: id, kind: 'deposit', draftVersion: 0 };
  expect(await h.door.refused('invoices.issue', input)).toMatchObject({ code: 'REFUSED', what: expect.stringContaining('purchase-order') });
  await h.door.call('invoices.issue', { ...input, override: 'They send it with the payment' });
  const { setup } = await h.door.call<{ setup: { version: number } }>('setup.get');
  const { version, suggestedZone: _zone, ...fields } = { suggestedZone: '', ...setup };
  await h.door.call('setup.save', { version, fields: { ...fields, series: 'D-' } });
  h.door.at(AFTER);
  const { invoice } = await h.door.call<{ invoice: Invoice }>('invoices.issue', { ...input, kind: 'final', override: 'As before' });
  expect(invoice).toMatchObject({ series: 'D-', sequence: 1, year: 2026 });
  expect((await h.invoices()).map(({ number }) => number)).toEqual([invoice.number, '2026-001']);
});

/**
 * Bills of a job: deposit, instalment and the bill at wrap, with every total worked by hand.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { hours } from '../../../electron/api/hours.ts';
import { invoices } from '../../../electron/api/invoices.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { callings } from '../../../electron/api/callings.ts';
import { blankKnows } from '../../../core/jobs/knows.ts';
import { saveSetup } from '../../../db/setup.ts';
import { refusal, SETUP } from '../world.ts';
import { agreedJob, issued, TAXED, worked } from './agreed-job.ts';

const usd = (minor: number) => ({ minor, currency: 'USD' });

test('deposit, hours with approved and unapproved overtime, and the bill that sets the deposit off by its tax', async () => {
  const agreed = await agreedJob({ setup: TAXED });
  const { at, job } = agreed;
  const { context } = at;
  // Two days at 1,200.00 are 2,400.00; 20 % on it 480.00; half of 2,880.00 as a deposit is 1,440.00: 1,200.00 and 240.00 tax.
  const { draft } = await call(invoices.draft, { jobId: job.id, kind: 'deposit' }, { context });
  expect(draft).toMatchObject({
    missing: [],
    included: true,
    lines: [{ what: 'Deposit for Bakers congress', amount: usd(144_000), taxes: [{ name: 'Sales tax', percent: '20', state: 'rated' }] }],
    totals: { net: usd(120_000), tax: usd(24_000), gross: usd(144_000) },
    toPay: usd(144_000),
    dueDate: '2026-10-15',
    billTo: { name: 'Northwind Bakers' },
  });
  const deposit = await issued(agreed, 'deposit');
  expect(deposit).toMatchObject({
    number: '2026-001',
    kind: 'deposit',
    state: 'open',
    open: usd(144_000),
    issueDate: '2026-10-01',
    daysLate: 0,
  });
  expect(await refusal(issued(agreed, 'deposit'))).toMatchObject({
    code: 'REFUSED',
    findings: ['2026-001 of Thu 1 October 2026 is this bill already. Credit it first, and issue it anew.'],
  });

  at.at('2026-12-14T15:00:00Z');
  await worked(agreed, '2026-12-12T08:00', '2026-12-12T20:30', 30);
  const { ask } = await call(hours.ask, { jobId: job.id, date: '2026-12-12', minutes: 120 }, { context });
  await call(hours.settleAsk, { id: ask.id, approved: true, who: 'Ana Voss', how: 'word of mouth' }, { context });
  const before = await call(invoices.draft, { jobId: job.id, kind: 'final' }, { context });
  expect(before.draft.cautions).toContainEqual('The hours of Sun 13 December 2026 are not entered: billed as agreed.');
  await worked(agreed, '2026-12-13T08:00', '2026-12-13T19:00');

  // Saturday: 12 h 30 less 30 min is 12 h, 2 h over at 180.00. Sunday: 11 h, 1 h over at 180.00. 2,400.00 + 540.00 = 2,940.00; tax 588.00.
  const bill = (await call(invoices.draft, { jobId: job.id, kind: 'final' }, { context })).draft;
  expect(bill.lines.map(({ id, amount }) => [id, amount.minor])).toEqual([
    ['days/shoot', 240_000],
    ['days/overtime-shoot-1.5', 54_000],
  ]);
  expect(bill).toMatchObject({
    totals: { net: usd(294_000), tax: usd(58_800), gross: usd(352_800) },
    credited: [{ number: '2026-001', date: '2026-10-01', net: usd(-120_000), tax: usd(-24_000), gross: usd(-144_000) }],
    toPay: usd(208_800),
    supply: { from: '2026-12-12', to: '2026-12-13' },
    dueDate: '2026-12-28',
    missing: [],
  });
  expect(bill.differences).toContainEqual('Total 3,528.00 instead of 2,880.00: 648.00 more.');
  expect(bill.differences).toContainEqual(expect.stringContaining('2 h approved by Ana Voss'));
  expect(bill.cautions).toContainEqual(expect.stringContaining('Sun 13 December 2026: 1 h of overtime is not approved.'));

  // The hour that nobody approved is left out: 2 h at 180.00 are 360.00.
  const final = await issued(agreed, 'final', [{ op: 'set', id: 'days/overtime-shoot-1.5', quantity: '2' }]);
  expect(final).toMatchObject({
    number: '2026-002',
    gross: usd(331_200),
    toPay: usd(187_200),
    open: usd(187_200),
    content: { totals: { net: usd(276_000), tax: usd(55_200) }, credited: [{ number: '2026-001' }] },
  });
  expect(await refusal(call(invoices.credit, { id: deposit.id, lines: 'all', reason: 'Wrong' }, { context }))).toMatchObject({
    what: '2026-001 is set off in 2026-002.',
  });
  const { invoices: all } = await call(invoices.list, { jobId: job.id }, { context });
  expect(all.map(({ number }) => number)).toEqual(['2026-002', '2026-001']);
  expect((await call(invoices.list, { text: 'bakers 002' }, { context })).invoices.map(({ number }) => number)).toEqual(['2026-002']);
  expect((await call(jobs.history, { id: job.id }, { context })).entries[0]?.sentence).toBe(
    'Invoice 2026-002 was issued: USD 1,872.00, due Mon 28 December 2026.',
  );
});

test('a wrong bill is credited whole, set-offs and all, and issued anew', async () => {
  const agreed = await agreedJob({ setup: TAXED });
  const { context } = agreed.at;
  await issued(agreed, 'deposit');
  agreed.at.at('2026-12-14T15:00:00Z');
  const wrong = await issued(agreed, 'final');
  const { invoice: note } = await call(invoices.credit, { id: wrong.id, lines: 'all', reason: 'Wrong address' }, { context });
  expect(note).toMatchObject({
    number: '2026-003',
    kind: 'credit note',
    credits: wrong.id,
    toPay: usd(-wrong.toPay.minor),
    gross: usd(-288_000),
    content: { credits: { number: '2026-002', reason: 'Wrong address' }, credited: [{ number: '2026-001', gross: usd(144_000) }] },
  });
  const { invoice } = await call(invoices.get, { id: wrong.id }, { context });
  expect(invoice).toMatchObject({ state: 'credited', open: usd(0), over: usd(0), left: [{ left: usd(0) }] });
  const again = await issued(agreed, 'final');
  expect(again).toMatchObject({ number: '2026-004', toPay: usd(144_000), content: { credited: [{ number: '2026-001' }] } });
  expect(await refusal(call(invoices.credit, { id: wrong.id, lines: 'all', reason: 'Again' }, { context }))).toMatchObject({
    findings: ['Everything on this invoice was credited already.'],
  });
  expect((await refusal(call(invoices.credit, { id: note.id, lines: 'all', reason: 'Again' }, { context }))).what).toBe(
    '2026-003 is a credit note.',
  );
});

test('part credits: never more than is left of a line, and the last takes the rest', async () => {
  const agreed = await agreedJob({ setup: { ...TAXED, tax: { name: 'Sales tax', percent: '7.25', included: false } } });
  const { context } = agreed.at;
  const bill = await issued(agreed, 'final');
  // 2,400.00 at 7.25 % is 174.00.
  expect(bill.toPay).toEqual(usd(257_400));
  const credit = (minor: number) =>
    call(invoices.credit, { id: bill.id, lines: [{ id: 'days/shoot', amount: usd(minor) }], reason: 'Half a day less' }, { context });
  // 333.33 at 7.25 % is 24.17 (24.1664...).
  expect((await credit(33_333)).invoice).toMatchObject({ net: usd(-33_333), tax: usd(-2_417), toPay: usd(-35_750) });
  expect(await refusal(credit(206_668))).toMatchObject({ findings: ['Shooting: 2,066.67 is left to credit, not 2,066.68.'] });
  expect((await credit(206_667)).invoice).toMatchObject({ net: usd(-206_667), tax: usd(-14_983), toPay: usd(-221_650) });
  expect((await call(invoices.get, { id: bill.id }, { context })).invoice).toMatchObject({ state: 'credited', credited: usd(257_400) });
});

test('an instalment asks for a share of what is left, and the bill sets both off', async () => {
  const agreed = await agreedJob();
  await issued(agreed, 'deposit');
  const { context } = agreed.at;
  expect((await call(invoices.draft, { jobId: agreed.job.id, kind: 'instalment' }, { context })).draft.missing).toEqual([
    'How much it asks for: an amount, or per cent of what is left to bill.',
  ]);
  // 2,400.00 less the deposit of 1,200.00 leaves 1,200.00; a quarter of it is 300.00.
  const part = await issued(agreed, 'instalment', [{ op: 'ask', percent: '25' }]);
  expect(part).toMatchObject({ number: '2026-002', toPay: usd(30_000) });
  expect(await refusal(issued(agreed, 'instalment', [{ op: 'ask', amount: '900.01' }]))).toMatchObject({
    findings: ['900.00 is left to bill, less than the 900.01 that is asked for.'],
  });
  const bill = await issued(agreed, 'final');
  expect(bill).toMatchObject({ number: '2026-003', gross: usd(240_000), toPay: usd(90_000) });
  expect(bill.content.credited.map(({ number, gross }) => [number, gross.minor])).toEqual([
    ['2026-001', -120_000],
    ['2026-002', -30_000],
  ]);
});

test('cancelled six days before: half of the net, the deposit set off; postponed: the deposit stays with the job', async () => {
  const agreed = await agreedJob();
  const { at, job } = agreed;
  const { context } = at;
  expect((await refusal(call(invoices.draft, { jobId: job.id, kind: 'cancellation' }, { context }))).what).toBe(
    'Bakers congress was not called off.',
  );
  await issued(agreed, 'deposit');
  at.at('2026-12-06T15:00:00Z');
  const { job: off } = await call(callings.off, { id: job.id, version: job.version, postponeTo: null, bound: '80' }, { context });
  // 50 % of 2,400.00 and 80.00 bound are 1,280.00; less 1,200.00 leaves 80.00.
  const bill = await issued({ ...agreed, job: off }, 'cancellation');
  expect(bill).toMatchObject({ gross: usd(128_000), toPay: usd(8_000), content: { credited: [{ number: '2026-001' }] } });
  expect(bill.content.lines.map(({ amount }) => amount.minor)).toEqual([120_000, 8_000]);
  expect(await refusal(issued({ ...agreed, job: off }, 'final'))).toMatchObject({
    findings: ['Bakers congress was cancelled: bill what its terms say.'],
  });
});

test('a purchase order that is asked for: refused without it, issued with it or with a reason', async () => {
  const agreed = await agreedJob();
  const { at, job } = agreed;
  const { context } = at;
  const knows = { ...blankKnows(), purchaseOrder: { required: true, number: '' } };
  const saved = await call(jobs.saveKnows, { id: job.id, version: job.version, knows }, { context });
  expect(await refusal(issued(agreed, 'deposit'))).toMatchObject({
    code: 'REFUSED',
    what: 'Northwind Bakers pays only with a purchase-order number, and none is known.',
  });
  expect((await call(invoices.list, {}, { context })).invoices).toEqual([]);
  const override = 'Told on the phone that it follows';
  await call(invoices.issue, { jobId: job.id, kind: 'deposit', draftVersion: 0, override }, { context });
  expect((await call(jobs.history, { id: job.id }, { context })).entries[0]?.sentence).toContain(
    `Without a purchase-order number: ${override}.`,
  );
  const numbered = { ...knows, purchaseOrder: { required: true, number: 'PO 7713' } };
  await call(jobs.saveKnows, { id: job.id, version: saved.job.version, knows: numbered }, { context });
  expect((await issued(agreed, 'final')).content.billTo.order).toBe('PO 7713');
});

test('a year ends between two papers, a series is renamed: each run begins at 1, the old one stays', async () => {
  const agreed = await agreedJob();
  const { at } = agreed;
  expect((await issued(agreed, 'deposit')).number).toBe('2026-001');
  // 23:30 on 31 December at home is 05:30 of the new year in UTC.
  at.at('2027-01-01T05:30:00Z');
  const part = await issued(agreed, 'instalment', [{ op: 'ask', amount: '100' }]);
  expect(part).toMatchObject({ number: '2026-002', issueDate: '2026-12-31' });
  at.at('2027-01-01T06:00:00Z');
  expect((await issued(agreed, 'instalment', [{ op: 'ask', amount: '100' }])).number).toBe('2027-001');
  at.context.store.write((db) => saveSetup(db, { ...SETUP, series: 'LP' }, at.context.now()));
  expect((await issued(agreed, 'instalment', [{ op: 'ask', amount: '100' }])).number).toBe('LP-2027-001');
  at.context.store.write((db) => saveSetup(db, SETUP, at.context.now()));
  expect((await issued(agreed, 'instalment', [{ op: 'ask', amount: '100' }])).number).toBe('2027-002');
  at.at('2026-12-30T12:00:00Z');
  expect(await refusal(issued(agreed, 'instalment', [{ op: 'ask', amount: '100' }]))).toMatchObject({
    what: 'The last number of this run was given on Thu 31 December 2026, and the clock says Wed 30 December 2026.',
  });
});

test('a rate that changed in the middle of a job: the bill bears the new one, the deposit goes off at its own', async () => {
  const agreed = await agreedJob({ setup: TAXED });
  const { at, job } = agreed;
  await issued(agreed, 'deposit');
  at.context.store.write((db) => saveSetup(db, { ...TAXED, tax: { name: 'Sales tax', percent: '21', included: false } }, at.context.now()));
  const { draft } = await call(invoices.draft, { jobId: job.id, kind: 'final' }, { context: at.context });
  // 2,400.00 at 21 % is 504.00; less 1,200.00 and 240.00.
  expect(draft).toMatchObject({ totals: { tax: usd(50_400), gross: usd(290_400) }, toPay: usd(146_400) });
  expect(draft.credited[0]?.groups).toMatchObject([{ percent: '20', net: usd(-120_000), tax: usd(-24_000) }]);
  expect(draft.differences).toContainEqual('Sales tax is 21 % instead of 20 %.');
  expect(draft.cautions).toContainEqual('The rate in force at issue is billed; deposits are set off at the rate that they bore.');
});

test('a discount over two sets of taxes is parted, and lines alone give the totals of the quote', async () => {
  const changes = [
    { op: 'add' as const, section: 'extras' as const, what: 'Music licence', quantity: '1', unit: '', unitPrice: '333.33' },
    { op: 'tax' as const, ids: ['extras/added-1'], state: 'exempt' as const, reason: 'Licences are exempt.' },
    { op: 'discount' as const, percent: '10' },
  ];
  const agreed = await agreedJob({ setup: TAXED, changes });
  const { draft } = await call(invoices.draft, { jobId: agreed.job.id, kind: 'final' }, { context: agreed.at.context });
  // 10 % of 2,733.33 is 273.33: 240.00 of the days, 33.33 of the licence. 2,160.00 at 20 % is 432.00; 300.00 exempt.
  expect(draft.lines.filter(({ section }) => section === 'discount').map(({ amount }) => amount.minor)).toEqual([-24_000, -3_333]);
  expect(draft.totals).toMatchObject({ net: usd(246_000), tax: usd(43_200), gross: usd(289_200) });
  expect(draft.differences).toEqual([]);
});

test('another currency: no number without a dated rate; what cannot be meant is refused', async () => {
  const agreed = await agreedJob({ currency: 'EUR' });
  const { at, job } = agreed;
  const { context } = at;
  expect(await refusal(issued(agreed, 'deposit'))).toMatchObject({ findings: ['The exchange rate: USD for one EUR.'] });
  const bill = await issued(agreed, 'deposit', [{ op: 'rate', rate: '1.08', date: '2026-10-01' }]);
  expect(bill).toMatchObject({ toPay: { minor: 120_000, currency: 'EUR' }, rate: { rate: '1.08', date: '2026-10-01' } });

  const change = (draftVersion: number, changes: Parameters<typeof issued>[2]) =>
    refusal(call(invoices.change, { jobId: job.id, kind: 'final', draftVersion, changes: changes ?? [] }, { context }));
  expect(await change(0, [{ op: 'set', id: 'days/none', quantity: '1' }])).toMatchObject({ code: 'BAD_INPUT' });
  expect(await change(0, [{ op: 'ask', amount: '5' }])).toMatchObject({ code: 'BAD_INPUT' });
  expect(
    await change(0, [{ op: 'add', section: 'extras', what: 'All', quantity: '1', unit: '', unitPrice: '100000000000' }]),
  ).toMatchObject({
    code: 'BAD_INPUT',
    what: expect.stringContaining('past what a job can cost'),
  });
  expect(await change(3, [{ op: 'due', date: '2026-12-30' }])).toMatchObject({ code: 'STALE' });
  expect((await call(invoices.draft, { jobId: job.id, kind: 'final' }, { context })).draft.draftVersion).toBe(0);
});

test('a repeated key issues once; a change is taken back', async () => {
  const agreed = await agreedJob();
  const { at, job } = agreed;
  const { context } = at;
  const key = '0198a1f0-0000-7000-8000-000000000001';
  const input = { jobId: job.id, kind: 'deposit' as const, draftVersion: 0, key };
  const [one, two] = await Promise.all([call(invoices.issue, input, { context }), call(invoices.issue, input, { context })]);
  expect(two).toEqual(one);
  const changed = await call(
    invoices.change,
    { jobId: job.id, kind: 'final', draftVersion: 0, changes: [{ op: 'note', text: 'Thank you.' }] },
    { context },
  );
  expect(changed.draft).toMatchObject({ draftVersion: 1, undoable: 1, note: 'Thank you.' });
  const undone = await call(invoices.undo, { jobId: job.id, kind: 'final', draftVersion: 1 }, { context });
  expect(undone.draft).toMatchObject({ draftVersion: 2, undoable: 0, note: '' });
});

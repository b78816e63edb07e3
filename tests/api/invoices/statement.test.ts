/**
 * A client's statement on paper, made through the procedure and read back.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { invoices } from '../../../electron/api/invoices.ts';
import { papers } from '../../../electron/api/papers.ts';
import { payments } from '../../../electron/api/payments.ts';
import { people } from '../../../electron/api/people.ts';
import { pagesOfText } from '../../papers/read-text.ts';
import { refusal } from '../world.ts';
import { agreedJob, issued } from './agreed-job.ts';

/** A deposit of 1,200.00 of 1 October, 500.00 of it paid on the 10th, and a bill of the other 1,200.00 of 14 December. */
async function billed() {
  const agreed = await agreedJob();
  const { context } = agreed.at;
  const deposit = await issued(agreed, 'deposit');
  agreed.at.at('2026-10-10T15:00:00Z');
  const amount = { minor: 50_000, currency: 'USD' };
  const parts = [{ invoiceId: deposit.id, amount }];
  await call(payments.record, { on: '2026-10-10', how: 'transfer', note: '', amount, parts, toCredit: false }, { context });
  agreed.at.at('2026-12-14T15:00:00Z');
  await issued(agreed, 'final');
  return { ...agreed, context };
}

test('every entry with the balance after it, kept among the papers, the same when asked again with its key', async () => {
  const { clientId, context } = await billed();
  const key = '01890000-0000-7000-8000-00000000abcd';
  const { paper } = await call(invoices.statementPaper, { clientId, currency: 'USD', key }, { context });
  expect(paper).toMatchObject({ kind: 'statement', name: 'Statement 2026-12-14 USD, Northwind Bakers.pdf' });
  const { base64, type } = await call(papers.read, { id: paper.id }, { context });
  expect(type).toBe('application/pdf');
  const text = (await pagesOfText(new Uint8Array(Buffer.from(base64, 'base64')))).join(' ');
  expect(text).toContain(
    '1 October 2026 Invoice 2026-001 1,200.00 1,200.00 10 October 2026 Payment, transfer, 2026-001 −500.00 700.00 ' +
      '14 December 2026 Invoice 2026-002 1,200.00 1,900.00 Open on 14 December 2026 1,900.00',
  );
  expect((await call(invoices.statementPaper, { clientId, currency: 'USD', key }, { context })).paper).toEqual(paper);
  expect((await call(papers.check, {}, { context })).lost).toEqual([]);
});

test('as of an earlier date it has what was there then', async () => {
  const { clientId, context } = await billed();
  const { paper } = await call(invoices.statementPaper, { clientId, currency: 'USD', asOf: '2026-10-05' }, { context });
  const { base64 } = await call(papers.read, { id: paper.id }, { context });
  const text = (await pagesOfText(new Uint8Array(Buffer.from(base64, 'base64')))).join(' ');
  expect(text).toContain('Open on 5 October 2026 1,200.00');
  expect(text).not.toContain('Payment,');
});

test('where there is nothing to state, or a name cannot be drawn, it says so and keeps no paper', async () => {
  const { clientId, context } = await billed();
  const eur = call(invoices.statementPaper, { clientId, currency: 'EUR' }, { context });
  expect((await refusal(eur)).what).toBe('Nothing was billed to Northwind Bakers or paid in EUR up to 14 December 2026.');
  const { client } = await call(people.client, { id: clientId }, { context });
  const { id, version, ...fields } = client;
  await call(people.saveClient, { id, version, fields: { ...fields, name: '面包节' } }, { context });
  const undrawn = call(invoices.statementPaper, { clientId, currency: 'USD' }, { context });
  expect((await refusal(undrawn)).what).toBe("The typeface of papers has no 面 包 节 (in the client's name).");
  expect((await call(papers.check, {}, { context })).orphans).toEqual([]);
});

/**
 * The yes to one of several offers: it is recorded with the ink and counts from then on.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import type { Job } from '../../../core/contract/jobs.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { quotes } from '../../../electron/api/quotes.ts';
import { rates } from '../../../electron/api/rates.ts';
import { FARGO, refusal, world, type World } from '../world.ts';

/** A pencilled job whose first version has a plain offer and one with a crane, the second 800.00 dearer. */
async function offered(at: World): Promise<Job> {
  const { fields } = await call(rates.defaults, { role: 'shoot', currency: 'USD', validFrom: '2026-01-01' }, at);
  await call(rates.save, { fields: { ...fields, dayRate: '1000.00' } }, at);
  const days = [{ date: '2026-12-12', kind: 'shoot' as const, call: '2026-12-12T08:00', wrap: '2026-12-12T18:00' }];
  const { job } = await call(jobs.add, { facts: { title: 'League final', role: 'shoot', place: FARGO, days } }, at);
  const changes = [
    { op: 'offers' as const, names: ['Plain', 'With a crane'] },
    { op: 'add' as const, section: 'kit' as const, what: 'Crane', quantity: '2', unit: 'days', unitPrice: '400', offer: 2 },
  ];
  await call(quotes.change, { jobId: job.id, draftVersion: 0, changes }, at);
  return (await call(quotes.make, { jobId: job.id, jobVersion: job.version, draftVersion: 1, pencil: true }, at)).job;
}
const yes = (job: Job) => ({ id: job.id, version: job.version, who: 'Odile Fenn', how: 'mail' });

test('the dearer offer of the first version is inked, and counts for total, list, cancellation and the next version', async () => {
  const at = await world('2026-12-01T15:00:00Z');
  const job = await offered(at);
  const [version] = (await call(quotes.versions, { jobId: job.id }, at)).versions;
  const dearer = version?.draft.offers[1];
  expect(job.total).toEqual(version?.draft.offers[0]?.totals.gross);

  const inked = (await call(jobs.ink, { ...yes(job), offer: 2 }, at)).job;
  expect(inked.ink).toMatchObject({ who: 'Odile Fenn', how: 'mail', quoteVersion: 1, offer: 2 });
  expect(inked.total).toEqual(dearer?.totals.gross);
  expect((await call(jobs.list, {}, at)).jobs[0]?.total).toEqual(dearer?.totals.gross);
  const { cancellation } = await call(quotes.cancellation, { jobId: job.id }, at);
  expect(cancellation.base).toEqual(dearer?.cancelBase);
  expect((await call(jobs.history, { id: job.id }, at)).entries[0]?.sentence).toBe(
    'In ink: Odile Fenn said yes to version 1 of the quote, offer 2 "With a crane", mail.',
  );
  const { draft } = await call(quotes.draft, { jobId: job.id }, at);
  expect(draft.offers.map(({ ticked }) => ticked)).toEqual([false, true]);
  expect(draft.totals.gross).toEqual(dearer?.totals.gross);
});

test('an older version can be inked though a newer one was made', async () => {
  const at = await world('2026-12-01T15:00:00Z');
  const first = await offered(at);
  await call(quotes.change, { jobId: first.id, draftVersion: 1, changes: [{ op: 'offers', names: ['With a crane'], from: [2] }] }, at);
  const { job } = await call(quotes.make, { jobId: first.id, jobVersion: first.version, draftVersion: 2, pencil: true }, at);
  const inked = (await call(jobs.ink, { ...yes(job), quoteVersion: 1, offer: 1 }, at)).job;
  const made = (await call(quotes.versions, { jobId: job.id }, at)).versions;
  expect(inked.total).toEqual(made[1]?.draft.offers[0]?.totals.gross);
  expect(inked.total).not.toEqual(made[0]?.draft.totals.gross);
});

test('while it is open which offer is meant nothing is inked; one that is not there is bad input', async () => {
  const at = await world('2026-12-01T15:00:00Z');
  const job = await offered(at);
  expect(await refusal(call(jobs.ink, yes(job), at))).toMatchObject({
    code: 'REFUSED',
    what: 'Version 1 has 2 offers, and none is ticked.',
  });
  expect(await refusal(call(jobs.ink, { ...yes(job), offer: 3 }, at))).toMatchObject({ code: 'BAD_INPUT' });
  expect(await refusal(call(jobs.ink, { ...yes(job), quoteVersion: 7 }, at))).toMatchObject({ code: 'NOT_FOUND' });
  expect((await call(jobs.get, { id: job.id }, at)).job).toMatchObject({ state: 'pencilled', ink: null });
});

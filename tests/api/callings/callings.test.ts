/**
 * Calling off what is in ink: what it owes is shown first and kept then, dates move or are free, and all of it can be taken back.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import type { Job } from '../../../core/contract/jobs.ts';
import { callings } from '../../../electron/api/callings.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { quotes } from '../../../electron/api/quotes.ts';
import { rates } from '../../../electron/api/rates.ts';
import { FARGO, refusal, world } from '../world.ts';

const NOW = '2026-12-01T15:00:00Z';
const day = (date: string) => ({ date, kind: 'shoot' as const, call: `${date}T09:00`, wrap: `${date}T19:00` });

/** A job in ink in Fargo: two days at 1,000.00, and a travel day before and after at half of it. */
async function inked(dates = ['2026-12-12', '2026-12-13']) {
  const w = await world(NOW);
  const { context } = w;
  const { fields } = await call(rates.defaults, { role: 'shoot', currency: 'USD', validFrom: '2026-01-01' }, { context });
  await call(rates.save, { fields: { ...fields, dayRate: '1000.00' } }, { context });
  const ink = async (title: string, days: string[]): Promise<Job> => {
    const { job } = await call(jobs.add, { facts: { title, place: FARGO, days: days.map(day) } }, { context });
    const made = await call(quotes.make, { jobId: job.id, jobVersion: job.version, draftVersion: 0, pencil: false }, { context });
    return (await call(jobs.ink, { id: job.id, version: made.job.version, who: 'Ada Byrd', how: 'mail' }, { context })).job;
  };
  return { w, at: { context }, ink, job: await ink('League final', dates) };
}
const one = ({ id, version }: Job) => ({ id, version });
const minors = ({ fee, bound, total, owed, paidBack }: Record<'fee' | 'bound' | 'total' | 'owed' | 'paidBack', { minor: number }>) => ({
  fee: fee.minor,
  bound: bound.minor,
  total: total.minor,
  owed: owed.minor,
  paidBack: paidBack.minor,
});

test('what was shown before is what is kept: bound costs on top, the deposit set against it, the dates free', async () => {
  const { w, at, job, ink } = await inked();
  w.at('2026-12-06T15:00:00Z'); // six days before first call: half
  const asked = { bound: '120.50', depositPaid: '500' };
  const { cancellation } = await call(quotes.cancellation, { jobId: job.id, ...asked }, at);
  expect(minors(cancellation)).toEqual({ fee: 150_000, bound: 12_050, total: 162_050, owed: 112_050, paidBack: 0 });

  const { job: after, calling } = await call(callings.off, { ...one(job), postponeTo: null, ...asked }, at);
  expect(after.state).toBe('cancelled');
  expect(calling.owes).toEqual(cancellation);
  expect((await call(callings.list, { jobId: job.id }, at)).callings).toEqual([calling]);
  const [entry] = (await call(jobs.history, { id: job.id }, at)).entries;
  expect(entry?.sentence).toContain('Cancelled; Sat 12 and Sun 13 December 2026 free again. It owes USD 1,620.50.');

  await ink('Another', ['2026-12-12']);
  expect(await refusal(call(callings.takeBack, one(after), at))).toMatchObject({
    code: 'REFUSED',
    what: expect.stringContaining('over other ink'),
  });
});

test('a cancellation is taken back: in ink as before, and nothing stands any more', async () => {
  const { at, job } = await inked();
  const { job: off } = await call(callings.off, { ...one(job), postponeTo: null }, at);
  const { job: back } = await call(callings.takeBack, one(off), at);
  expect(back).toMatchObject({ state: 'inked', ink: job.ink, days: job.days });
  expect((await call(callings.list, { jobId: job.id }, at)).callings).toEqual([]);
  expect(await refusal(call(callings.takeBack, one(back), at))).toMatchObject({
    code: 'REFUSED',
    what: 'League final was not called off.',
  });
});

test('postponed: the ink stays, the days move, half is owed; taken back they are where they were', async () => {
  const { w, at, job } = await inked();
  w.at('2026-12-06T15:00:00Z');
  const { job: moved, calling } = await call(callings.off, { ...one(job), postponeTo: '2027-01-20' }, at);
  expect(moved).toMatchObject({ state: 'inked', days: [day('2027-01-20'), day('2027-01-21')] });
  expect(calling).toMatchObject({ from: '2026-12-12', postponedTo: '2027-01-20', quoteVersion: 1, owes: { percent: '25' } });
  expect(calling.owes.fee.minor).toBe(75_000);
  expect((await call(callings.takeBack, one(moved), at)).job.days).toEqual(job.days);
});

test('notice counts from when it was given; a date agreed more than thirty days after it owes all of the scale', async () => {
  const { w, at, job } = await inked(['2027-01-25']);
  w.at('2027-01-10T15:00:00Z');
  const off = async (told: string) =>
    (await call(quotes.cancellation, { jobId: job.id, at: told, postponed: true }, at)).cancellation.percent;
  expect([await off('2027-01-10T15:00:00Z'), await off('2027-01-05T15:00:00Z')]).toEqual(['0', '0']);
  w.at('2027-01-24T15:00:00Z');
  expect(await off('2027-01-20T15:00:00Z')).toBe('25');
  w.at('2027-02-19T15:00:01Z');
  expect(await off('2027-01-20T15:00:00Z')).toBe('50');
});

test.each([
  ['notice after now', { postponeTo: null, told: '2026-12-01T15:00:01Z' }, 'Notice is dated after now.'],
  ['notice before the yes', { postponeTo: null, told: '2026-12-01T14:59:59Z' }, 'Notice is dated before the yes.'],
  ['the date that it has', { postponeTo: '2026-12-12' }, 'The new date is the one that it has.'],
  ['a date that is over', { postponeTo: '2026-11-30' }, 'The first call on the new date is over.'],
])('%s is refused, and nothing is changed', async (_, asked, what) => {
  const { at, job } = await inked();
  expect(await refusal(call(callings.off, { ...one(job), ...asked }, at))).toMatchObject({
    code: 'BAD_INPUT',
    what: expect.stringContaining(what),
  });
  expect((await call(jobs.get, { id: job.id }, at)).job).toEqual(job);
  expect((await call(callings.list, { jobId: job.id }, at)).callings).toEqual([]);
});

test('over other ink, and what is not in ink, is refused', async () => {
  const { at, job, ink } = await inked();
  await ink('Another', ['2026-12-20']);
  expect(await refusal(call(callings.off, { ...one(job), postponeTo: '2026-12-19' }, at))).toMatchObject({ code: 'REFUSED' });
  const { job: inquiry } = await call(jobs.add, { facts: { title: 'Only asked' } }, at);
  expect(await refusal(call(callings.off, { ...one(inquiry), postponeTo: null }, at))).toMatchObject({
    code: 'REFUSED',
    todo: 'Only ink is called off: let the pencil go, or decline it.',
  });
});

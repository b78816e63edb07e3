/**
 * Hours through the door: called and wrapped on site, corrected, approved, owed and paid; and what is refused.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { hours } from '../../../electron/api/hours.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { callProcedure } from '../../../electron/api/serve.ts';
import { newId } from '../../../db/ids.ts';
import { DULUTH, THUNDER_BAY, refusal } from '../world.ts';
import { inked, onSite } from './site.ts';

const day = (call: string, wrap: string | null, more = {}) => ({
  handId: null,
  kind: 'shoot' as const,
  zone: 'America/Chicago',
  call,
  wrap,
  unpaidBreakMinutes: 0,
  note: '',
  ...more,
});

test('called and wrapped now: past midnight, on the clock of the place, and what it comes to', async () => {
  const { w, at, job } = await onSite();
  const of = () => call(hours.of, { jobId: job.id }, at);
  w.at('2026-12-12T13:00:40Z'); // 07:00:40 in Fargo
  const { worked } = await call(hours.callNow, { jobId: job.id, key: newId() }, at);
  expect(worked).toMatchObject({ date: '2026-12-12', kind: 'shoot', call: '2026-12-12T07:00', wrap: null, callAt: '2026-12-12T13:00:00Z' });
  expect(await of()).toMatchObject({ lines: [], total: null, toEnter: [] });
  expect(await refusal(call(hours.callNow, { jobId: job.id }, at))).toMatchObject({
    code: 'REFUSED',
    what: 'Hours of Sat 12 December 2026, 07:00 on still run.',
  });
  expect((await refusal(call(hours.wrapNow, { id: worked.id, version: 1 }, at))).what).toBe('The call began this very minute.');

  w.at('2026-12-13T07:10:00Z'); // 01:10 on Sunday
  const wrapped = await call(hours.wrapNow, { id: worked.id, version: 1 }, at);
  expect(wrapped.worked).toMatchObject({ date: '2026-12-12', wrap: '2026-12-13T01:10', version: 2 });
  const seen = await of();
  // 18 h 10 in started half hours: 8.5 h over, 4 h at 180.00 and 4.5 h at 240.00.
  expect(seen.lines.map(({ amount }) => amount.minor)).toEqual([120_000, 72_000, 108_000]);
  expect(seen.total).toEqual({ minor: 300_000, currency: 'USD' });
  expect(seen.overtime).toMatchObject([
    { date: '2026-12-12', over: 490, open: 490, sentence: expect.stringContaining('8 h 10 min not approved') },
  ]);
  expect(seen.cautions).toEqual([expect.stringContaining('18 h 10 min from call to wrap. Over 14 h, nobody should be driving')]);
  expect(await refusal(call(hours.wrapNow, { id: worked.id, version: 2 }, at))).toMatchObject({ code: 'REFUSED' });
});

test('a call that runs for more than a day is not wrapped now; its wrap is typed', async () => {
  const { w, at, job } = await onSite();
  w.at('2026-12-12T13:00:00Z');
  const { worked } = await call(hours.callNow, { jobId: job.id }, at);
  w.at('2026-12-13T13:01:00Z');
  expect(await refusal(call(hours.wrapNow, { id: worked.id, version: 1 }, at))).toMatchObject({
    code: 'REFUSED',
    what: expect.stringContaining('24 h 1 min. One call lasts at most 24 h.'),
    todo: 'Type the wrap as it was.',
  });
  w.at('2026-12-13T13:00:00Z');
  expect((await call(hours.wrapNow, { id: worked.id, version: 1 }, at)).worked.wrap).toBe('2026-12-13T07:00');
});

test('nobody is on two clocks: a call that runs elsewhere is named', async () => {
  const { w, at, job, hand } = await onSite();
  const other = await inked(at, {
    title: 'Gala',
    place: DULUTH,
    days: [{ date: '2026-12-20', kind: 'shoot', call: '2026-12-20T09:00', wrap: '2026-12-20T18:00' }],
  });
  w.at('2026-12-12T13:00:00Z');
  await call(hours.callNow, { jobId: job.id }, at);
  expect((await refusal(call(hours.callNow, { jobId: other.id }, at))).what).toContain('still run on League final.');
  const { worked } = await call(hours.callNow, { jobId: job.id, handId: hand.id }, at);
  expect(worked).toMatchObject({ handId: hand.id, handName: 'Mara Quill' });
  expect((await refusal(call(hours.callNow, { jobId: job.id, handId: hand.id }, at))).what).toContain("Mara Quill's hours of Sat 12");
});

test('over two zones the elapsed time counts, and each wall time stands on its own clock', async () => {
  const { w, at, job } = await onSite({ place: THUNDER_BAY });
  w.at('2026-12-14T15:00:00Z');
  const { worked } = await call(
    hours.save,
    { jobId: job.id, fields: day('2026-12-12T07:00', '2026-12-12T18:00', { zone: 'America/Toronto' }) },
    at,
  );
  expect([worked.callAt, worked.wrapAt]).toEqual(['2026-12-12T12:00:00Z', '2026-12-12T23:00:00Z']);
  // 11 h: one hour over, two half hours at 180.00.
  expect((await call(hours.of, { jobId: job.id }, at)).total?.minor).toBe(120_000 + 18_000);
});

test('a correction keeps what was before in the history, is refused when stale, and can be put back', async () => {
  const { w, at, job } = await onSite();
  w.at('2026-12-14T15:00:00Z');
  const fields = day('2026-12-12T07:00', '2026-12-12T17:00');
  const { worked } = await call(hours.save, { jobId: job.id, fields }, at);
  const longer = { ...fields, wrap: '2026-12-12T19:30', unpaidBreakMinutes: 30 };
  await call(hours.save, { jobId: job.id, id: worked.id, version: 1, fields: longer }, at);
  expect(await refusal(call(hours.save, { jobId: job.id, id: worked.id, version: 1, fields }, at))).toMatchObject({
    code: 'STALE',
    current: { wrap: '2026-12-12T19:30', version: 2 },
    mine: { wrap: '2026-12-12T17:00' },
  });
  const [entry] = (await call(jobs.history, { id: job.id }, at)).entries;
  expect(entry?.sentence).toBe('Hours of Sat 12 December 2026, 07:00 to 19:30, 30 min of unpaid breaks. Before: 07:00 to 17:00.');
  await call(hours.save, { jobId: job.id, id: worked.id, version: 2, fields }, at);
  await call(hours.drop, { id: worked.id, version: 3 }, at);
  expect((await call(hours.of, { jobId: job.id }, at)).days).toEqual([]);
  const back = await call(hours.save, { jobId: job.id, fields }, at);
  expect(back.worked).toMatchObject({ ...fields, version: 1 });
});

test.each([
  ['a wrap before its call', { wrap: '2026-12-12T06:00' }, 'fields.wrap'],
  ['a 30-hour day', { wrap: '2026-12-13T13:00' }, 'fields.wrap'],
  ['hours below zero', { unpaidBreakMinutes: -60 }, 'fields.unpaidBreakMinutes'],
  ['more break than day', { unpaidBreakMinutes: 600 }, 'fields.unpaidBreakMinutes'],
  ['a day to come', { call: '2026-12-15T07:00', wrap: '2026-12-15T17:00' }, 'fields.call'],
  ['a clock that is none', { zone: 'America/Nowhere' }, 'fields.zone'],
])('%s is bad input, and nothing is kept', async (_, given, field) => {
  const { w, at, job } = await onSite();
  w.at('2026-12-14T15:00:00Z');
  const wrong = { jobId: job.id, fields: day('2026-12-12T07:00', '2026-12-12T17:00', given) };
  expect(await refusal(callProcedure(w.context, 'hours.save', wrong))).toMatchObject({ code: 'BAD_INPUT', fields: [{ field }] });
  expect((await call(hours.of, { jobId: job.id }, at)).days).toEqual([]);
});

test('hours lie on no other hours of the same person', async () => {
  const { w, at, job, hand } = await onSite();
  w.at('2026-12-14T15:00:00Z');
  await call(hours.save, { jobId: job.id, fields: day('2026-12-12T07:00', '2026-12-12T17:00') }, at);
  const over = { jobId: job.id, fields: day('2026-12-12T16:00', '2026-12-12T20:00') };
  expect((await refusal(call(hours.save, over, at))).what).toContain('would lie on Hours of Sat 12 December 2026, 07:00 to 17:00.');
  await call(hours.save, { ...over, fields: { ...over.fields, handId: hand.id } }, at);
});

test('a job that is not in ink has no terms to be worked by', async () => {
  const { at } = await onSite();
  const { job } = await call(jobs.add, { facts: { title: 'Fair', place: DULUTH } }, at);
  for (const refused of [
    call(hours.callNow, { jobId: job.id }, at),
    call(hours.ask, { jobId: job.id, date: '2026-12-12', minutes: 60 }, at),
  ])
    expect(await refusal(refused)).toMatchObject({ code: 'REFUSED', what: 'Fair is not in ink.' });
  expect(await call(hours.of, { jobId: job.id }, at)).toMatchObject({ days: [], total: null, owed: [] });
});

test('paid dates that are over are asked for until their hours are in', async () => {
  const { w, at, job } = await onSite();
  const open = async () => (await call(hours.of, { jobId: job.id }, at)).toEnter;
  w.at('2026-12-12T22:59:59Z');
  expect(await open()).toEqual([]);
  w.at('2026-12-14T15:00:00Z');
  expect(await open()).toEqual(['2026-12-12', '2026-12-13']);
  await call(hours.save, { jobId: job.id, fields: day('2026-12-12T07:00', '2026-12-12T17:00') }, at);
  expect(await open()).toEqual(['2026-12-13']);
});

test('overtime is asked, approved or refused, by whom, when and how; an answer noted by mistake is taken back', async () => {
  const { w, at, job } = await onSite();
  w.at('2026-12-12T22:30:00Z');
  await call(hours.save, { jobId: job.id, fields: day('2026-12-12T07:00', null) }, at);
  const { ask } = await call(hours.ask, { jobId: job.id, date: '2026-12-12', minutes: 120 }, at);
  expect((await refusal(call(hours.ask, { jobId: job.id, date: '2026-12-20', minutes: 60 }, at))).what).toContain(
    'is no date of League final',
  );
  const settle = { id: ask.id, approved: true, who: 'Ada Byrd', how: 'by word of mouth' };
  expect(await refusal(call(hours.settleAsk, { ...settle, at: '2026-12-12T23:00:00Z' }, at))).toMatchObject({ code: 'BAD_INPUT' });
  await call(hours.settleAsk, settle, at);
  expect(await refusal(call(hours.settleAsk, settle, at))).toMatchObject({ code: 'REFUSED', what: 'It was approved by Ada Byrd.' });
  expect(await refusal(call(hours.dropAsk, { id: ask.id }, at))).toMatchObject({ code: 'REFUSED' });

  w.at('2026-12-13T01:00:00Z'); // 19:00 in Fargo
  const [running] = (await call(hours.of, { jobId: job.id }, at)).days;
  await call(hours.wrapNow, { id: running?.id ?? '', version: 1 }, at);
  const seen = await call(hours.of, { jobId: job.id }, at);
  expect(seen.overtime).toMatchObject([
    { over: 120, open: 0, sentence: expect.stringContaining('2 h approved by Ada Byrd at 16:30, by word of mouth') },
  ]);
  expect(seen.cautions).toEqual([]);
  await call(hours.openAsk, { id: ask.id }, at);
  expect((await call(hours.of, { jobId: job.id }, at)).overtime).toMatchObject([{ open: 120 }]);
  await call(hours.dropAsk, { id: ask.id }, at);
  expect((await call(hours.of, { jobId: job.id }, at)).asks).toEqual([]);
});

test('a hand is owed their days, is paid in parts, and what was noted by mistake is taken back', async () => {
  const { w, at, job, hand } = await onSite();
  w.at('2026-12-14T15:00:00Z');
  const worked = (call: string, wrap: string, kind: 'shoot' | 'half') => day(call, wrap, { handId: hand.id, kind });
  await call(hours.save, { jobId: job.id, fields: worked('2026-12-12T07:00', '2026-12-12T17:00', 'shoot') }, at);
  await call(hours.save, { jobId: job.id, fields: worked('2026-12-13T07:00', '2026-12-13T12:00', 'half') }, at);
  const owed = async () => (await call(hours.of, { jobId: job.id }, at)).owed;
  // A day and a half at 400.00, due 14 days after the last of them.
  expect(await owed()).toMatchObject([{ name: 'Mara Quill', amount: { minor: 60_000 }, open: { minor: 60_000 }, due: '2026-12-27' }]);
  const pay = (minor: number, on = '2026-12-14') =>
    call(hours.handPaid, { jobId: job.id, handId: hand.id, amount: { minor, currency: 'USD' }, on, how: 'transfer', key: newId() }, at);
  expect((await pay(45_000)).owed).toMatchObject([{ paid: { minor: 45_000 }, open: { minor: 15_000 } }]);
  expect((await refusal(pay(-45_001))).code).toBe('REFUSED');
  expect((await refusal(pay(1, '2026-12-15'))).what).toContain('dated after today');
  expect((await refusal(pay(0))).code).toBe('BAD_INPUT');
  await pay(-45_000);
  expect((await pay(60_000)).owed).toMatchObject([{ paid: { minor: 60_000 }, open: { minor: 0 } }]);
});

test('the same deed twice is done once', async () => {
  const { w, at, job } = await onSite();
  w.at('2026-12-12T13:00:00Z');
  const input = { jobId: job.id, key: newId() };
  const first = await call(hours.callNow, input, at);
  expect(await call(hours.callNow, input, at)).toEqual(first);
  expect((await call(hours.of, { jobId: job.id }, at)).days).toHaveLength(1);
});

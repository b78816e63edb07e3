import { randomUUID } from 'node:crypto';
import { call } from '@orpc/server';
import { describe, expect, test } from 'vitest';
import type { JobDay } from '../../../core/contract/jobs.ts';
import type { FactChanges } from '../../../core/jobs/facts.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { makeQuote } from './made-quote.ts';
import { DULUTH, FARGO, refusal, THUNDER_BAY, type World, world } from '../world.ts';

const day = (date: string, call = '09:00', wrap = '19:00', kind: JobDay['kind'] = 'shoot'): JobDay => ({
  date,
  kind,
  call: `${date}T${call}`,
  wrap: `${date}T${wrap}`,
});
const FINAL = { title: 'Robotics final', organisation: 'Gear League', place: FARGO, days: [day('2026-12-12'), day('2026-12-13')] };

async function added({ context }: World, facts: FactChanges & { title: string } = FINAL) {
  return (await call(jobs.add, { facts }, { context })).job;
}
/** A job that was added, quoted and inked. */
async function inked(w: World, title: string, days: JobDay[]) {
  const { id } = await added(w, { ...FINAL, title, days });
  makeQuote(w.context, id);
  const { version } = (await call(jobs.get, { id }, { context: w.context })).job;
  return (await call(jobs.ink, { id, version, who: 'Ada Byrd', how: 'mail' }, { context: w.context })).job;
}
const versionOf = ({ id, version }: { id: string; version: number }) => ({ id, version });

describe('from inquiry to ink', () => {
  test('the whole way, with its history', async () => {
    const w = await world('2026-12-01T15:00:00Z');
    const { context } = w;
    let job = await added(w);
    expect(job).toMatchObject({
      state: 'inquiry',
      version: 1,
      pencil: null,
      ink: null,
      total: null,
      received: { wall: '2026-12-01T09:00', zone: 'America/Chicago' },
    });

    job = (await call(jobs.pencil, versionOf(job), { context })).job;
    expect(job).toMatchObject({
      state: 'pencilled',
      version: 2,
      pencil: { state: 'live', expires: { wall: '2026-12-03T09:00', zone: 'America/Chicago' } },
    });

    expect(await refusal(call(jobs.ink, { ...versionOf(job), who: 'Ada Byrd', how: 'mail' }, { context }))).toMatchObject({
      code: 'REFUSED',
      what: 'Robotics final has no made quote.',
    });
    makeQuote(context, job.id);
    job = (await call(jobs.ink, { ...versionOf(job), who: 'Ada Byrd', how: 'mail' }, { context })).job;
    expect(job).toMatchObject({
      state: 'inked',
      ink: { who: 'Ada Byrd', how: 'mail', quoteVersion: 1 },
      pencil: { state: 'inked' },
      total: { minor: 240_000, currency: 'USD' },
    });

    const { entries } = await call(jobs.history, { id: job.id }, { context });
    expect(entries.map((entry) => entry.sentence)).toEqual([
      'In ink: Ada Byrd said yes to version 1 of the quote, mail.',
      'Pencilled until Thu 3 December 2026, 09:00.',
      'Put on the books by hand.',
    ]);
  });

  test('a pencil runs out by itself, and renewed it goes last', async () => {
    const w = await world('2026-12-01T15:00:00Z');
    const { context } = w;
    let job = await added(w);
    job = (await call(jobs.pencil, { ...versionOf(job), expires: '2026-12-02T15:00:00Z' }, { context })).job;
    w.at('2026-12-02T14:59:59Z');
    expect((await call(jobs.get, { id: job.id }, { context })).job.state).toBe('pencilled');
    w.at('2026-12-02T15:00:00Z');
    expect((await call(jobs.get, { id: job.id }, { context })).job).toMatchObject({ state: 'ran out', pencil: { state: 'ran out' } });
    job = (await call(jobs.pencil, versionOf(job), { context })).job;
    expect(job).toMatchObject({ state: 'pencilled', pencil: { pencilledAt: '2026-12-02T15:00:00Z' } });

    w.at('2026-12-03T00:00:00Z');
    const extended = (await call(jobs.pencil, { ...versionOf(job), expires: '2026-12-05T00:00:00Z' }, { context })).job;
    expect(extended.pencil).toMatchObject({ pencilledAt: '2026-12-02T15:00:00Z', expires: { at: '2026-12-05T00:00:00Z' } });
  });

  test('let go and taken back: an inquiry again, holding nothing', async () => {
    const w = await world('2026-12-01T15:00:00Z');
    const { context } = w;
    let job = await added(w);
    job = (await call(jobs.pencil, versionOf(job), { context })).job;
    job = (await call(jobs.letGo, versionOf(job), { context })).job;
    expect(job).toMatchObject({ state: 'let go', pencil: { state: 'let go' } });
    expect(await refusal(call(jobs.pencil, versionOf(job), { context }))).toMatchObject({ code: 'REFUSED', todo: 'Reopen it first.' });
    job = (await call(jobs.reopen, versionOf(job), { context })).job;
    expect(job.state).toBe('inquiry');
    makeQuote(context, job.id);
    job = (await call(jobs.get, { id: job.id }, { context })).job;
    job = (await call(jobs.decline, versionOf(job), { context })).job;
    expect((await call(jobs.reopen, versionOf(job), { context })).job.state).toBe('quoted');
  });

  test('declined with a reply ready to copy', async () => {
    const w = await world('2026-12-01T15:00:00Z');
    const job = await added(w, { ...FINAL, contact: { name: 'Ada Byrd', email: '', phone: '' } });
    const { job: after, reply } = await call(jobs.decline, versionOf(job), { context: w.context });
    expect(after.state).toBe('declined');
    expect(reply.subject).toBe('Re: Robotics final, Sat 12 and Sun 13 December 2026');
    expect(reply.text).toMatch(/^Hello Ada,\n[^]*Robotics final[^]*\nLakeline Pictures\n/);
  });

  test('ink over ink is refused, naming it; touching is not overlapping', async () => {
    const w = await world('2026-12-01T15:00:00Z');
    await inked(w, 'First', [day('2026-12-12', '09:00', '12:00', 'half')]);
    const second = await inked(w, 'Second', [day('2026-12-12', '12:00', '15:00', 'half')]);
    const findings = ['First is in ink on Sat 12 December 2026, 09:00 to Sat 12 December 2026, 12:00 (America/Chicago).'];
    expect(await refusal(inked(w, 'Third', [day('2026-12-12', '11:59', '12:00', 'half')]))).toMatchObject({ code: 'REFUSED', findings });

    const earlier = { ...versionOf(second), changes: { days: [day('2026-12-12', '11:59', '15:00', 'half')] } };
    expect(await refusal(call(jobs.change, earlier, { context: w.context }))).toMatchObject({ code: 'REFUSED', findings });
  });

  test('edit work under a shoot can be moved and refuses nothing', async () => {
    const w = await world('2026-12-01T15:00:00Z');
    await inked(w, 'Cut', [day('2026-12-12', '09:00', '19:00', 'edit')]);
    expect((await inked(w, 'Shoot', [day('2026-12-12')])).state).toBe('inked');
  });
});

describe('changing facts', () => {
  test('an old version is refused with both states', async () => {
    const w = await world('2026-12-01T15:00:00Z');
    const { context } = w;
    const job = await added(w);
    await call(jobs.change, { ...versionOf(job), changes: { notes: 'dock at the back' } }, { context });
    const late = await refusal(call(jobs.change, { ...versionOf(job), changes: { notes: 'dock at the side' } }, { context }));
    expect(late).toMatchObject({
      code: 'STALE',
      current: { notes: 'dock at the back', version: 2 },
      mine: { version: 1, changes: { notes: 'dock at the side' } },
    });
  });

  test('moving the place moves the instants with the clock there', async () => {
    const w = await world('2026-12-01T15:00:00Z');
    const { context } = w;
    const job = await added(w);
    const first = async () => (await call(jobs.list, {}, { context })).jobs[0]?.firstCall;
    expect(await first()).toEqual({ wall: '2026-12-12T09:00', zone: 'America/Chicago', at: '2026-12-12T15:00:00Z' });
    await call(jobs.change, { ...versionOf(job), changes: { place: THUNDER_BAY } }, { context });
    expect(await first()).toEqual({ wall: '2026-12-12T09:00', zone: 'America/Toronto', at: '2026-12-12T14:00:00Z' });
  });

  test.each([
    [
      'a call on another date',
      { ...day('2026-12-12'), call: '2026-12-11T09:00' },
      'The call of 2026-12-12 is on 2026-12-11. A date is that of its call.',
    ],
    [
      'a wrap before its call',
      day('2026-12-12', '09:00', '02:00'),
      '2026-12-12: wrap 02:00 is not after call 09:00. A wrap past midnight is on the next date.',
    ],
    [
      'a wall time that is skipped',
      day('2027-03-14', '02:30', '12:00'),
      '2027-03-14 02:30 does not exist in America/Chicago: the clock jumps over it. Give a time before or after the change.',
    ],
  ])('%s is refused', async (_name, wrong, what) => {
    const w = await world('2026-12-01T15:00:00Z');
    const job = await added(w);
    expect(await refusal(call(jobs.change, { ...versionOf(job), changes: { days: [wrong] } }, { context: w.context }))).toMatchObject({
      code: 'BAD_INPUT',
      what,
    });
  });

  test('ink fixes dates and role; calls may still be corrected', async () => {
    const w = await world('2026-12-01T15:00:00Z');
    const { context } = w;
    const job = await inked(w, FINAL.title, FINAL.days);
    expect(
      await refusal(call(jobs.change, { ...versionOf(job), changes: { days: [day('2026-12-12')], role: 'audio' } }, { context })),
    ).toMatchObject({
      code: 'REFUSED',
      findings: ['The dates and their kinds were agreed in ink; calls and wraps may be corrected.', 'The role was agreed in ink.'],
    });
    const later = [day('2026-12-12', '10:00'), day('2026-12-13')];
    expect((await call(jobs.change, { ...versionOf(job), changes: { days: later } }, { context })).job.days).toEqual(later);
  });

  test('a reply-by whose wall time and instant disagree is refused', async () => {
    const w = await world('2026-12-01T15:00:00Z');
    const replyBy = { wall: '2026-12-02T12:00', zone: 'America/Chicago', at: '2026-12-02T12:00:00Z' };
    expect(await refusal(added(w, { ...FINAL, replyBy }))).toMatchObject({ code: 'BAD_INPUT', fields: [{ field: 'facts.replyBy' }] });
  });
});

describe('a pencil needs something to hold', () => {
  test.each([
    ['no dates', { ...FINAL, days: [] }, 'Robotics final has no dates to hold.'],
    ['no place', { ...FINAL, place: null }, 'Robotics final has no place to hold.'],
    ['dates that are over', { ...FINAL, days: [day('2026-11-20')] }, 'The dates of Robotics final are over.'],
  ])('%s', async (_name, facts, what) => {
    const w = await world('2026-12-01T15:00:00Z');
    const job = await added(w, facts);
    expect(await refusal(call(jobs.pencil, versionOf(job), { context: w.context }))).toMatchObject({ code: 'REFUSED', what });
  });

  test('until a moment between now and the first call', async () => {
    const w = await world('2026-12-01T15:00:00Z');
    const job = await added(w);
    const pencilled = (expires: string) => refusal(call(jobs.pencil, { ...versionOf(job), expires }, { context: w.context }));
    expect(await pencilled('2026-12-01T15:00:00Z')).toMatchObject({ code: 'BAD_INPUT', fields: [{ field: 'expires' }] });
    expect(await pencilled('2026-12-12T15:01:00Z')).toMatchObject({ code: 'BAD_INPUT' });
  });
});

test('a repeated deed answers with the first result and changes nothing', async () => {
  const w = await world('2026-12-01T15:00:00Z');
  const { context } = w;
  const key = randomUUID();
  const first = await call(jobs.add, { facts: FINAL, key }, { context });
  const again = await call(jobs.add, { facts: FINAL, key }, { context });
  expect(again).toEqual(first);
  expect((await call(jobs.list, {}, { context })).jobs).toHaveLength(1);
});

test('the list: next first call first, then without dates, then what is over; words narrow it', async () => {
  const w = await world('2026-12-01T15:00:00Z');
  const { context } = w;
  for (const [title, days] of [
    ['Over', [day('2026-11-02')]],
    ['Long over', [day('2026-10-02')]],
    ['Undated', []],
    ['Later', [day('2027-01-02')]],
    ['Soon', [day('2026-12-02')]],
  ] as const)
    await added(w, { title, days: [...days], place: DULUTH });
  const titles = async (input: { text?: string; states?: ['inquiry' | 'inked'] }) =>
    (await call(jobs.list, input, { context })).jobs.map((row) => row.title);
  expect(await titles({})).toEqual(['Soon', 'Later', 'Undated', 'Over', 'Long over']);
  expect(await titles({ text: 'dul over' })).toEqual(['Over', 'Long over']);
  expect(await titles({ states: ['inked'] })).toEqual([]);
});

test('a job that is not there', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  expect(await refusal(call(jobs.get, { id: '0198d0aa-0000-7000-8000-000000000001' }, { context }))).toMatchObject({ code: 'NOT_FOUND' });
});

test('a budget past any job is refused at the field and changes nothing', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const { id, version } = (await call(jobs.add, { facts: FINAL }, { context })).job;
  const changes = { budget: { amount: 1e300, currency: 'USD', per: 'day' as const } };
  await expect(call(jobs.change, { id, version, changes }, { context })).rejects.toThrow();
  expect((await call(jobs.get, { id }, { context })).job).toMatchObject({ version, budget: null });
});

/**
 * Time spent: one clock in all, typed hours, what is left of the estimate, and what past edits of a template took.
 */
import { call } from '@orpc/server';
import { describe, expect, test } from 'vitest';
import type { TimeSpent } from '../../../core/contract/spent.ts';
import { markStages } from '../../../db/rounds.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { spent } from '../../../electron/api/spent.ts';
import { refusal } from '../world.ts';
import { promised, type Promised } from './promised.ts';

const of = ({ edit, at: { context } }: Promised) => call(spent.of, { deliverableId: edit }, { context });
const start = ({ edit, at: { context } }: Promised, stageId: string | null) =>
  call(spent.start, { deliverableId: edit, stageId }, { context });
const stop = ({ at: { context } }: Promised, { id, version }: TimeSpent, at?: string) =>
  call(spent.stop, { id, version, ...(at === undefined ? {} : { at }) }, { context });
const typed = ({ edit, at: { context } }: Promised, stageId: string | null, minutes: number, more: object = {}) =>
  call(spent.type, { deliverableId: edit, stageId, on: '2026-12-15', minutes, note: '', ...more }, { context });

async function editing(more: Parameters<typeof promised>[0] = {}): Promise<Promised> {
  const p = await promised(more);
  p.at.at('2026-12-15T16:00:00Z');
  return p;
}

describe('the clock', () => {
  test('is started and stopped, and its time stands beside the estimate', async () => {
    const p = await editing();
    const { entry } = await start(p, p.stage('rough cut'));
    p.at.at('2026-12-15T18:30:30Z');
    expect((await of(p)).running).toMatchObject({ minutes: 150, name: 'Highlights', title: 'Bakers congress', stage: 'rough cut' });
    expect((await stop(p, entry)).entry).toMatchObject({ minutes: 150, date: '2026-12-15', typed: false });
    const { stages, total, running } = await of(p);
    expect(running).toBeNull();
    expect(stages.find(({ kind }) => kind === 'rough cut')).toMatchObject({ minutes: 150, estimate: 360, sentence: '2 h 30 min of 6 h' });
    expect(total).toEqual({ minutes: 150, estimate: 1080, sentence: '2 h 30 min of 18 h' });
    expect((await call(jobs.history, { id: p.job.id }, { context: p.at.context })).entries[0]?.sentence).toBe(
      'Highlights: The clock was stopped after 2 h 30 min.',
    );
  });
  test('is one: starting another stops the one that runs', async () => {
    const p = await editing();
    await start(p, p.stage('ingest'));
    p.at.at('2026-12-15T17:00:00Z');
    expect(await refusal(start(p, p.stage('ingest')))).toMatchObject({ what: 'The clock runs on Highlights on ingest already.' });
    const { stopped } = await start(p, p.stage('selects'));
    expect(stopped).toMatchObject({ minutes: 60 });
    expect((await call(spent.running, {}, { context: p.at.context })).running).toMatchObject({ stage: 'selects', minutes: 0 });
  });
  test('stopped within its first minute keeps nothing', async () => {
    const p = await editing();
    const { entry } = await start(p, null);
    p.at.at('2026-12-15T16:00:59Z');
    expect((await stop(p, entry)).entry).toBeNull();
    expect((await of(p)).entries).toEqual([]);
  });
  test('forgotten for more than a day asks when the work ended, and takes the answer', async () => {
    const p = await editing();
    const { entry } = await start(p, null);
    p.at.at('2026-12-16T20:00:00Z');
    expect(await refusal(stop(p, entry))).toMatchObject({
      code: 'REFUSED',
      what: 'The clock on Highlights has run for 28 h: it was forgotten.',
    });
    expect(await refusal(start(p, p.stage('ingest')))).toMatchObject({ code: 'REFUSED' });
    expect(await refusal(stop(p, entry, '2026-12-17T20:00:00Z'))).toMatchObject({ code: 'BAD_INPUT' });
    expect(await refusal(stop(p, entry, '2026-12-14T20:00:00Z'))).toMatchObject({ code: 'BAD_INPUT' });
    expect((await stop(p, entry, '2026-12-15T19:00:00Z')).entry).toMatchObject({ minutes: 180 });
    expect(await refusal(stop(p, { ...entry, version: 2 }))).toMatchObject({ code: 'REFUSED', what: 'This clock was stopped.' });
  });
});

describe('typed time', () => {
  test('is kept by date, corrected and taken off', async () => {
    const p = await editing();
    const { entry } = await typed(p, p.stage('selects'), 90, { note: 'two cameras' });
    expect(entry).toMatchObject({ minutes: 90, date: '2026-12-15', typed: true, note: 'two cameras' });
    const { id, version } = entry;
    const corrected = await typed(p, null, 120, { id, version, on: '2026-12-14' });
    expect(corrected.entry).toMatchObject({ id, version: 2, minutes: 120, date: '2026-12-14', stageId: null });
    expect((await of(p)).stages.at(-1)).toMatchObject({ stageId: null, kind: 'other work', minutes: 120, estimate: 0, sentence: '2 h' });
    expect(await refusal(typed(p, null, 10, { id, version }))).toMatchObject({ code: 'STALE' });
    await call(spent.drop, { id, version: 2 }, { context: p.at.context });
    expect((await of(p)).entries).toEqual([]);
    expect(await refusal(call(spent.drop, { id, version: 2 }, { context: p.at.context }))).toMatchObject({ code: 'NOT_FOUND' });
  });
  test('on a day when the clock is changed it is as long as it was typed', async () => {
    const p = await editing();
    p.at.at('2027-03-15T16:00:00Z');
    expect((await typed(p, null, 300, { on: '2027-03-14' })).entry).toMatchObject({ minutes: 300, date: '2027-03-14' });
  });
  test('of a date to come, of another edit’s stage, or of nothing is refused', async () => {
    const p = await editing();
    expect(await refusal(typed(p, null, 60, { on: '2026-12-16' }))).toMatchObject({ code: 'BAD_INPUT' });
    const elsewhere = '0190b3c0-0000-7000-8000-000000000001';
    expect(await refusal(typed(p, elsewhere, 60))).toMatchObject({ code: 'NOT_FOUND', what: 'This stage is not on the books.' });
    expect((await refusal(typed(p, null, 0))).code).toBe('BAD_REQUEST');
    expect((await of(p)).entries).toEqual([]);
  });
});

test('what past edits of a template took stands beside the next one: finished ones with time alone', async () => {
  const p = await editing();
  const { context } = p.at;
  await typed(p, p.stage('ingest'), 60);
  await typed(p, p.stage('rough cut'), 400);
  await typed(p, null, 80);
  expect((await of(p)).past).toMatchObject({ edits: 0, sentences: [] });
  context.store.write((db) => markStages(db, [p.stage('delivered')], context.now()));
  const sentences = ['Editing took 2 h (one edit) for a finished minute.', 'Ingest took 1 h (one edit).'];
  expect((await of(p)).past).toMatchObject({
    edits: 1,
    perMinute: { count: 1, median: 2 },
    ingest: { median: 1 },
    perRound: null,
    sentences,
  });
  expect((await call(spent.past, { templateId: p.template }, { context })).past.sentences).toEqual(sentences);
  p.at.at('2026-10-02T15:00:00Z');
  const days = [{ date: '2026-11-14', kind: 'shoot', call: '2026-11-14T08:00', wrap: '2026-11-14T18:00' }];
  const other = await promised({ at: p.at, template: p.template, edit: { name: 'Teaser' }, facts: { title: 'Fair', days } });
  expect((await of(other)).past?.sentences).toEqual(sentences);
  expect(await refusal(call(spent.past, { templateId: p.edit }, { context }))).toMatchObject({
    what: 'This template is not on the books.',
  });
});

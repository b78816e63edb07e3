/**
 * Deliverables through the procedures: made with the ink, adjusted, taken off; their stages; what cannot be is refused and nothing is kept of it.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import type { Deliverable } from '../../../core/contract/deliverables.ts';
import { newId } from '../../../db/ids.ts';
import { historyOf } from '../../../db/keeping.ts';
import { deliverables } from '../../../electron/api/deliverables.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { templates } from '../../../electron/api/templates.ts';
import { refusal } from '../world.ts';
import { promised, stageOf } from './job.ts';

const hours = ({ stages }: Deliverable) => stages.map(({ name, halfHours }) => `${name} ${halfHours / 2}`);
const done = ({ stages }: Deliverable) => stages.filter(({ doneAt }) => doneAt !== null).map(({ name }) => name);

test('the ink makes what was promised into deliverables, in its own deed', async () => {
  const { w, at, job, highlight, talks } = await promised();
  expect(highlight).toMatchObject({
    name: 'Highlight',
    template: { name: 'Highlight', dropped: false },
    due: '2027-01-07',
    internalDate: '2027-01-05',
    hours: '19',
    state: 'open',
    lacks: [],
  });
  expect(talks).toMatchObject({
    name: 'Talks',
    template: null,
    due: '2026-12-18',
    agreedDue: '2026-12-18',
    hours: '20',
    rounds: 2,
    hoursPerRound: '2',
  });
  expect(hours(talks)).toEqual([
    'Selects 3',
    'Rough cut 6.5',
    'Fine cut 5',
    'Round 1 2',
    'Round 2 2',
    'Picture lock 1.5',
    'Delivered 0',
    'Approved 0',
  ]);
  const told = w.context.store.read((db) => historyOf(db, 'job', job.id));
  expect(told[0]?.sentence).toContain('2 deliverables are planned: Highlight and Talks.');
  expect(await call(deliverables.of, { jobId: job.id }, at)).toMatchObject({ canMake: false, filesThereFrom: '2026-12-09T00:00:00Z' });
});

test('nothing is made twice; what the job promises since is made when asked', async () => {
  const { at, job, talks } = await promised();
  expect(await call(deliverables.makeFromQuote, { jobId: job.id }, at)).toEqual({
    made: [],
    sentence: 'Everything that was promised is a deliverable already.',
  });
  await call(deliverables.takeOff, { id: talks.id, version: talks.version }, at);
  const { job: now } = await call(jobs.get, { id: job.id }, at);
  await call(jobs.change, { id: job.id, version: now.version, changes: { deliverables: ['Highlight', 'Talks', 'Teaser'] } }, at);
  expect((await call(deliverables.of, { jobId: job.id }, at)).canMake).toBe(true);
  const { made, sentence } = await call(deliverables.makeFromQuote, { jobId: job.id }, at);
  expect(made.map(({ name, lacks }) => [name, lacks])).toEqual([['Teaser', ['when it is due', 'how many hours it takes']]]);
  expect(sentence).toBe('1 deliverable is planned: Teaser. Still to be said: of Teaser when it is due and how many hours it takes.');
});

test('one is added from a template, with a due date by its rule, or with numbers of its own', async () => {
  const { at, job, templateId } = await promised();
  const { deliverable } = await call(deliverables.add, { jobId: job.id, templateId, fields: { name: 'Awards' } }, at);
  expect(deliverable).toMatchObject({ name: 'Awards', position: 3, due: '2027-01-07', internalDate: '2027-01-05', hours: '19' });
  const own = await call(deliverables.add, { jobId: job.id, fields: { name: 'Raw files', editHours: '1.5', due: '2026-12-11' } }, at);
  expect(own.deliverable).toMatchObject({ template: null, due: '2026-12-11', internalDate: '2026-12-10', hours: '1.5' });
  expect(await refusal(call(deliverables.add, { jobId: job.id, fields: {} }, at))).toMatchObject({
    code: 'BAD_INPUT',
    fields: [{ field: 'fields.name' }],
  });
});

test('a date that moves takes its internal date along; what was promised first is kept', async () => {
  const { at, highlight } = await promised();
  const { deliverable } = await call(deliverables.change, { id: highlight.id, version: 1, changes: { due: '2027-01-12' } }, at);
  expect(deliverable).toMatchObject({ due: '2027-01-12', internalDate: '2027-01-08', agreedDue: '2027-01-07', version: 2 });
  const said = await call(
    deliverables.change,
    { id: highlight.id, version: 2, changes: { due: '2027-01-14', internalDate: '2027-01-14' } },
    at,
  );
  expect(said.deliverable.internalDate).toBe('2027-01-14');
});

test('other numbers make the open stages anew and leave what is done', async () => {
  const { at, highlight } = await promised();
  const begun = await call(deliverables.stageDone, stageOf(highlight, 'Rough cut'), at);
  expect(done(begun.deliverable)).toEqual(['Ingest', 'Selects', 'Rough cut']);
  const { deliverable } = await call(
    deliverables.change,
    { id: highlight.id, version: 1, changes: { finishedMinutes: '6', rounds: 1 } },
    at,
  );
  expect(hours(deliverable)).toEqual([
    'Ingest 2',
    'Selects 2.5',
    'Rough cut 5',
    'Fine cut 7',
    'Round 2.5',
    'Picture lock 2.5',
    'Delivered 0',
    'Approved 0',
  ]);
  expect(done(deliverable)).toEqual(['Ingest', 'Selects', 'Rough cut']);
  expect(deliverable.stages.map(({ position }) => position)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
});

test('stages: done with all before, open with all after, to delivered and approved', async () => {
  const { w, at, highlight } = await promised();
  w.at('2026-12-10T15:00:00Z');
  const locked = (await call(deliverables.stageDone, { ...stageOf(highlight, 'Picture lock'), at: '2026-12-10T14:00:00Z' }, at))
    .deliverable;
  expect([locked.state, locked.stages[0]?.doneAt]).toEqual(['open', '2026-12-10T14:00:00Z']);
  const delivered = (await call(deliverables.stageDone, stageOf(locked, 'Delivered'), at)).deliverable;
  const approved = (await call(deliverables.stageDone, stageOf(delivered, 'Approved'), at)).deliverable;
  expect([delivered.state, approved.state]).toEqual(['delivered', 'approved']);
  const again = (await call(deliverables.stageOpen, stageOf(approved, 'Round 2'), at)).deliverable;
  expect([again.state, done(again).at(-1)]).toEqual(['open', 'Round 1']);
  expect(await refusal(call(deliverables.stageOpen, stageOf(again, 'Round 2'), at))).toMatchObject({
    code: 'REFUSED',
    what: 'Round 2 of Highlight is open.',
  });
  expect(await refusal(call(deliverables.stageDone, { ...stageOf(again, 'Round 2'), at: '2026-12-11T00:00:00Z' }, at))).toMatchObject({
    code: 'BAD_INPUT',
    fields: [{ field: 'at' }],
  });
});

test('hours of a stage and the date before which it cannot begin are changed; a mark takes no time', async () => {
  const { at, highlight } = await promised();
  const changed = await call(
    deliverables.changeStage,
    { ...stageOf(highlight, 'Selects'), changes: { hours: '3.2', releaseDate: '2026-12-14' } },
    at,
  );
  expect(changed.deliverable.stages[1]).toMatchObject({ halfHours: 7, releaseDate: '2026-12-14', version: 2 });
  const stale = call(deliverables.changeStage, { ...stageOf(highlight, 'Selects'), changes: { hours: '1' } }, at);
  expect(await refusal(stale)).toMatchObject({ code: 'STALE' });
  const mark = call(deliverables.changeStage, { ...stageOf(highlight, 'Delivered'), changes: { hours: '1' } }, at);
  expect(await refusal(mark)).toMatchObject({
    code: 'BAD_INPUT',
    what: 'changes.hours are asked of "Delivered", which is a mark and takes no time.',
  });
});

test('what was taken off takes no time, stands at the end and can be put back', async () => {
  const { at, job, highlight } = await promised();
  await call(deliverables.takeOff, { id: highlight.id, version: 1 }, at);
  const seen = await call(deliverables.of, { jobId: job.id }, at);
  expect(seen.deliverables.map(({ name, off }) => [name, off])).toEqual([
    ['Talks', false],
    ['Highlight', true],
  ]);
  expect((await call(deliverables.plan, {}, at)).plan.edits.map(({ name }) => name)).toEqual(['Talks']);
  expect(await refusal(call(deliverables.takeOff, { id: highlight.id, version: 2 }, at))).toMatchObject({ code: 'REFUSED' });
  const { deliverable } = await call(deliverables.restore, { id: highlight.id, version: 2 }, at);
  expect([deliverable.off, deliverable.version]).toEqual([false, 3]);
  expect(await refusal(call(deliverables.restore, { id: highlight.id, version: 3 }, at))).toMatchObject({ code: 'REFUSED' });
});

test('a template that is dropped while it is used leaves what was made from it, and says so', async () => {
  const { at, job, templateId, highlight } = await promised();
  const { sentence } = await call(templates.drop, { id: templateId, version: 1 }, at);
  expect(sentence).toBe('Template "Highlight" was dropped. 1 deliverable made from it stays.');
  const [kept] = (await call(deliverables.of, { jobId: job.id }, at)).deliverables;
  expect(kept).toEqual({ ...highlight, template: { id: templateId, name: 'Highlight', dropped: true } });
  expect((await call(deliverables.change, { id: highlight.id, version: 1, changes: { finishedMinutes: '4' } }, at)).deliverable.hours).toBe(
    '23',
  );
  expect(await refusal(call(deliverables.add, { jobId: job.id, templateId, fields: {} }, at))).toMatchObject({ code: 'NOT_FOUND' });
});

test.each([
  ['due before the wrap', { due: '2026-12-07' }, 'changes.due', 'lies before the wrap on Tue 8 December 2026'],
  [
    'an internal date after the promised one',
    { internalDate: '2027-01-08' },
    'changes.internalDate',
    'lies after the promised date, Thu 7 January 2027',
  ],
  [
    'an internal date without a promised one',
    { due: null, internalDate: '2026-12-30' },
    'changes.internalDate',
    'has no promised date after it',
  ],
  ['rounds on the same day', { sameDay: true }, 'changes.rounds', 'nobody waits for notes on the same day'],
])('%s is bad input, and nothing of it is kept', async (_, changes, field, sentence) => {
  const { at, job, highlight } = await promised();
  const said = await refusal(call(deliverables.change, { id: highlight.id, version: 1, changes }, at));
  expect(said).toMatchObject({ code: 'BAD_INPUT', fields: [{ field, sentence: expect.stringContaining(sentence) }] });
  expect((await call(deliverables.of, { jobId: job.id }, at)).deliverables[0]).toEqual(highlight);
});

test('what is not there, an old version, and a job that is not in ink', async () => {
  const { at, highlight } = await promised();
  expect(await refusal(call(deliverables.change, { id: newId(), version: 1, changes: {} }, at))).toMatchObject({
    code: 'NOT_FOUND',
    what: 'This deliverable is not on the books.',
  });
  expect(await refusal(call(deliverables.change, { id: highlight.id, version: 1, changes: { handId: newId() } }, at))).toMatchObject({
    code: 'NOT_FOUND',
    what: 'This hand is not on the books.',
  });
  expect(await refusal(call(deliverables.change, { id: highlight.id, version: 2, changes: { rounds: 1 } }, at))).toMatchObject({
    code: 'STALE',
    current: { version: 1 },
  });
  const { job } = await call(jobs.add, { facts: { title: 'Inquiry' } }, at);
  expect(await refusal(call(deliverables.add, { jobId: job.id, fields: { name: 'X' } }, at))).toMatchObject({
    code: 'REFUSED',
    what: 'Inquiry is not in ink.',
  });
});

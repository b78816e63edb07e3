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
import { people } from '../../../electron/api/people.ts';
import { desk } from '../../../electron/api/desk.ts';
import { road } from '../../../electron/api/road.ts';
import { callProcedure } from '../../../electron/api/serve.ts';
import { setup } from '../../../electron/api/setup.ts';
import { templates } from '../../../electron/api/templates.ts';
import { blankHand } from '../../../core/people/blank.ts';
import { DULUTH, FARGO, refusal } from '../world.ts';
import { begun, inked, PROMISED, type At } from './job.ts';

async function promised() {
  const { w, at, templateId } = await begun();
  const job = await inked(at, 'Bakers congress', ['2026-12-07', '2026-12-08'], PROMISED);
  const { deliverables: made } = await call(deliverables.of, { jobId: job.id }, at);
  const [highlight, talks] = made as [Deliverable, Deliverable];
  return { w, at, job, templateId, highlight, talks };
}
const hours = ({ stages }: Deliverable) => stages.map(({ name, halfHours }) => `${name} ${halfHours / 2}`);
const done = ({ stages }: Deliverable) => stages.filter(({ doneAt }) => doneAt !== null).map(({ name }) => name);
const stageOf = ({ stages }: Deliverable, name: string) => {
  const found = stages.find((stage) => stage.name === name);
  if (!found) throw new Error(`no stage ${name}`);
  return { id: found.id, version: found.version };
};

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

const planned = async (at: At) => (await call(deliverables.plan, {}, at)).plan;

test('the plan: camera files first, days on site and on the way out, rounds after the window', async () => {
  const { at } = await promised();
  await inked(at, 'League final', ['2026-12-15', '2026-12-16'], { place: FARGO });
  const plan = await planned(at);
  expect(plan.edits.map(({ name, due }) => [name, due])).toEqual([
    ['Talks', '2026-12-18'],
    ['Highlight', '2027-01-07'],
  ]);
  const dates = [...new Set(plan.blocks.map(({ start }) => start.slice(0, 10)))];
  expect(dates[0]).toBe('2026-12-09');
  // Fargo is four hours away: the 14th goes on the way there, the 17th on the way home.
  expect(dates.filter((date) => date >= '2026-12-14' && date <= '2026-12-16')).toEqual([]);
  const late = plan.edits[0];
  expect(late?.lateDays).toBeGreaterThan(0);
  expect(late?.sentence).toContain('for League final');
  expect(late?.takers.map(({ title }) => title)).toContain('League final');
});

test('the plan follows every change: a hand, a pin, a longer day, a stage that is done', async () => {
  const { at, talks } = await promised();
  const finish = async () => (await planned(at)).edits.find(({ name }) => name === 'Talks')?.finish;
  const before = await finish();
  const { setup: mine } = await call(setup.get, {}, at);
  if (!mine) throw new Error('no setup');
  const { version, ...fields } = mine;
  await call(
    setup.save,
    {
      version,
      fields: {
        ...fields,
        editing: { hoursADay: 10, dayStart: '08:00', closedWeekdays: [7], onHolidays: true, onTravelDays: false, onShootDays: false },
      },
    },
    at,
  );
  expect((await finish())?.localeCompare(before ?? '')).toBe(-1);
  const fine = stageOf(talks, 'Fine cut');
  const pinned = await call(deliverables.pin, { stageId: fine.id, start: '2026-12-11T20:00', end: '2026-12-11T22:00' }, at);
  const pins = (await planned(at)).blocks.filter((block) => block.pinned);
  expect(pins).toMatchObject([{ stageId: fine.id, start: '2026-12-12T02:00:00Z', end: '2026-12-12T04:00:00Z' }]);
  const pinId = pinned.deliverable.stages.find(({ id }) => id === fine.id)?.pins[0]?.id ?? '';
  await call(deliverables.unpin, { id: pinId }, at);
  expect((await planned(at)).blocks.some((block) => block.pinned)).toBe(false);
  const { hand } = await call(people.saveHand, { fields: blankHand('Cy Ek') }, at);
  await call(deliverables.change, { id: talks.id, version: 1, changes: { handId: hand.id } }, at);
  expect((await planned(at)).edits.find(({ name }) => name === 'Talks')?.sentence).toBe(
    'Cy Ek edits it, so it takes no time of mine; due Fri 18 December 2026.',
  );
});

test.each([
  ['that ends before it begins', '2026-12-11T20:00', '2026-12-11T19:00', 'BAD_INPUT', 'end is not after the start'],
  ['longer than a day', '2026-12-11T20:00', '2026-12-12T20:30', 'BAD_INPUT', 'end is more than 24 hours after'],
  ['before the files are there', '2026-12-08T10:00', '2026-12-08T12:00', 'BAD_INPUT', 'start lies before the last wrap'],
  ['that is over', '2026-11-25T10:00', '2026-11-25T12:00', 'BAD_INPUT', 'end is over already'],
  ['on a time that the clock skips', '2027-03-14T02:30', '2027-03-14T04:00', 'BAD_INPUT', 'start '],
  ['over another', '2026-12-10T11:00', '2026-12-10T13:00', 'REFUSED', 'That stretch is set aside already'],
])('a stretch %s is not set aside', async (_, start, end, code, what) => {
  const { at, talks } = await promised();
  const stageId = stageOf(talks, 'Fine cut').id;
  await call(deliverables.pin, { stageId, start: '2026-12-10T10:00', end: '2026-12-10T12:00' }, at);
  const said = await refusal(call(deliverables.pin, { stageId, start, end }, at));
  expect([said.code, said.what]).toEqual([code, expect.stringContaining(what)]);
  expect((await planned(at)).blocks.filter(({ pinned }) => pinned)).toHaveLength(1);
});

test('tried on: somebody hired, a date moved, a longer day; nothing is saved', async () => {
  const { at, highlight, talks } = await promised();
  await inked(at, 'League final', ['2026-12-15', '2026-12-16'], { place: FARGO });
  const before = await planned(at);
  const tried = async (tryOn: object) => call(deliverables.tryOn, { tryOn }, at);
  const lateNow = before.edits.find(({ name }) => name === 'Talks')?.lateDays ?? 0;
  expect((await tried({ moved: [{ deliverableId: talks.id, due: '2027-01-29' }] })).changed).toMatchObject([
    { name: 'Talks', lateDaysBefore: lateNow, lateDays: 0, sentence: expect.stringContaining('would be in time with Fri 29 January 2027') },
  ]);
  const hired = await tried({ hired: [talks.id] });
  expect(hired.sentence).toBe('No edits would be late, where 1 is now.');
  expect(hired.plan.edits.find(({ name }) => name === 'Talks')?.sentence).toContain('Somebody hired edits it');
  expect((await tried({ hoursADay: 12, onTravelDays: true, closedWeekdays: [] })).changed[0]?.lateDays ?? 0).toBeLessThan(lateNow);
  expect(await refusal(tried({ hired: [newId()] }))).toMatchObject({ code: 'NOT_FOUND' });
  expect((await planned(at)).edits).toEqual(before.edits);
  expect(highlight.name).toBe('Highlight');
});

test('home moves to another zone in the middle: the plan is laid on the new clock, pins keep their instant', async () => {
  const { at, talks } = await promised();
  await call(deliverables.pin, { stageId: stageOf(talks, 'Fine cut').id, start: '2026-12-10T10:00', end: '2026-12-10T12:00' }, at);
  const { setup: mine } = await call(setup.get, {}, at);
  if (!mine) throw new Error('no setup');
  const { version, ...fields } = mine;
  await call(
    setup.save,
    { version, fields: { ...fields, home: { ...fields.home, key: 'own:x', zone: 'Pacific/Auckland', country: 'NZ', region: '' } } },
    at,
  );
  const plan = await planned(at);
  expect(plan.zone).toBe('Pacific/Auckland');
  expect(plan.blocks.filter(({ pinned }) => pinned)).toMatchObject([{ start: '2026-12-10T16:00:00Z' }]);
  for (const { start, pinned } of plan.blocks) if (!pinned) expect(start.slice(11)).toMatch(/^(19|2[0-3]|0[0-3]):/);
});

test('on the Desk each edit is a clock: by when it is begun, then when it is due, until it is delivered', async () => {
  const { w, at, job, talks } = await promised();
  w.at('2026-12-10T15:00:00Z');
  const clocks = async () => (await call(desk.see, {}, at)).clocks.filter(({ kind }) => kind === 'edit');
  const first = await clocks();
  expect(first.map(({ jobId, action }) => [jobId, action])).toEqual(first.map(() => [job.id, 'edit']));
  expect(first[0]?.sentence).toMatch(/^Talks: /);
  await call(deliverables.stageDone, stageOf(talks, 'Delivered'), at);
  expect((await clocks()).map(({ sentence }) => sentence).filter((sentence) => sentence.startsWith('Talks'))).toEqual([]);
});

test('the Road shows the planned hours on their dates in place of sold edit days, and what loses its day to a candidate', async () => {
  const { at, job } = await promised();
  const seen = await call(road.see, { from: '2026-12-07', days: 14 }, at);
  const plan = await planned(at);
  const hours = plan.blocks
    .filter(({ start }) => start < '2026-12-21')
    .reduce((sum, { start, end }) => sum + (Date.parse(end) - Date.parse(start)) / 3_600_000, 0);
  expect(seen.edit.days.reduce((sum, day) => sum + day.hours, 0)).toBe(hours);
  expect(seen.edit.days[0]).toMatchObject({
    date: '2026-12-09',
    hours: 6,
    over: false,
    lost: false,
    parts: [{ jobId: job.id, title: 'Bakers congress' }],
  });
  const days = [{ date: '2026-12-10', kind: 'shoot' as const, call: '2026-12-10T08:00', wrap: '2026-12-10T18:00' }];
  const inquiry = (await call(jobs.add, { facts: { title: 'Opening', place: DULUTH, days } }, at)).job;
  const laid = await call(road.see, { from: '2026-12-07', days: 14, candidate: inquiry.id }, at);
  expect(laid.edit.lost).toBe('6 h of editing lose their day: Thu 10 December 2026.');
});

test.each([
  ['more hours than a day has', { hoursADay: 25 }, 'is more than a day has'],
  ['a quarter of an hour', { hoursADay: 6.25 }, 'goes in half hours'],
  ['a day that begins at no time', { dayStart: '9' }, 'is not a time; write it as 09:00'],
  ['an eighth day of the week', { closedWeekdays: [8] }, 'closedWeekdays'],
])('an edit day of %s is bad input, and my details stay as they were', async (_, wrong, sentence) => {
  const { w, at } = await begun();
  const { setup: mine } = await call(setup.get, {}, at);
  if (!mine) throw new Error('no setup');
  const { version, ...fields } = mine;
  const editing = {
    hoursADay: 6,
    dayStart: '09:00',
    closedWeekdays: [6, 7],
    onHolidays: false,
    onTravelDays: false,
    onShootDays: false,
    ...wrong,
  };
  const said = await refusal(callProcedure(w.context, 'setup.save', { version, fields: { ...fields, editing } }));
  expect([said.code, JSON.stringify(said.fields)]).toEqual(['BAD_INPUT', expect.stringContaining(sentence)]);
  expect((await call(setup.get, {}, at)).setup).toEqual(mine);
});

test('an edit calendar without a single hour plans nothing and says why; the work is not lost', async () => {
  const { at } = await promised();
  const { setup: mine } = await call(setup.get, {}, at);
  if (!mine) throw new Error('no setup');
  const { version, ...fields } = mine;
  const editing = {
    hoursADay: 6,
    dayStart: '09:00',
    closedWeekdays: [1, 2, 3, 4, 5, 6, 7],
    onHolidays: false,
    onTravelDays: false,
    onShootDays: false,
  };
  await call(setup.save, { version, fields: { ...fields, editing } }, at);
  const plan = await planned(at);
  expect([plan.blocks.length, plan.edits.length, plan.troubles[0]]).toEqual([0, 2, expect.stringContaining('has no open hour')]);
});

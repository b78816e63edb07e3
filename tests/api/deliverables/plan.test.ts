/**
 * The edit plan through the procedures: it follows every change, is tried on, and stands on the Desk and the Road.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { newId } from '../../../db/ids.ts';
import { deliverables } from '../../../electron/api/deliverables.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { people } from '../../../electron/api/people.ts';
import { desk } from '../../../electron/api/desk.ts';
import { road } from '../../../electron/api/road.ts';
import { callProcedure } from '../../../electron/api/serve.ts';
import { setup } from '../../../electron/api/setup.ts';
import { blankHand } from '../../../core/people/blank.ts';
import { DULUTH, FARGO, refusal } from '../world.ts';
import { begun, inked, promised, stageOf, type At } from './job.ts';

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

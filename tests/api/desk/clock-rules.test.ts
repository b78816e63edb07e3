/**
 * Other zone data than last time: what is to come keeps its wall time, what is over its instant; what moved is told on the Desk until put away.
 */
import { call } from '@orpc/server';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changeInWords, rebuilt, type Resolve } from '../../../core/time/clock-rules.ts';
import { instantOf, instantText, WallTimeError } from '../../../core/time/read.ts';
import { daysOf } from '../../../db/job-days.ts';
import { desk } from '../../../electron/api/desk.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { personal } from '../../../electron/api/personal.ts';
import { keepToClockRules } from '../../../electron/starting/clock-rules.ts';
import { tried } from '../../core/laws.ts';
import { DULUTH, FARGO, THUNDER_BAY, world } from '../world.ts';

const HOUR = 3_600_000;
const asEver: Resolve = (wall, zone) => instantOf(wall, zone).epochMilliseconds;
/** As if Toronto kept summer time all year: its clocks show every wall time of the winter an hour sooner. */
const torontoAhead: Resolve = (wall, zone) => asEver(wall, zone) - (zone === 'America/Toronto' ? HOUR : 0);
const day = (date: string) => ({ date, kind: 'shoot' as const, call: `${date}T09:00`, wrap: `${date}T19:00` });

async function books() {
  const w = await world('2026-12-11T17:00:00Z');
  const at = { context: w.context };
  const days = ['2026-12-11', '2026-12-12'].map(day);
  const { job: there } = await call(jobs.add, { facts: { title: 'Curling', place: THUNDER_BAY, days } }, at);
  const { job: here } = await call(jobs.add, { facts: { title: 'League final', place: FARGO, days: [day('2026-12-20')] } }, at);
  const fields = {
    title: 'Choir',
    from: '2026-12-13T18:00',
    to: '2026-12-13T20:00',
    zone: 'America/Toronto',
    hardness: 'never' as const,
    note: '',
  };
  await call(personal.save, { fields }, at);
  const calls = (id: string) => w.context.store.read((db) => daysOf(db, id).map(({ callAt }) => instantText(callAt)));
  const lines = async () => (await call(desk.see, {}, at)).lines;
  return { w, at, store: w.context.store, now: w.context.now(), there, here, calls, lines };
}

test('the first opening notes the version; the same version builds nothing anew', async () => {
  const { store, now, lines } = await books();
  expect(keepToClockRules(store, now, '2026b', asEver)).toEqual([]);
  expect(keepToClockRules(store, now, '2026b', torontoAhead)).toEqual([]);
  expect(await lines()).toEqual([]);
});

test('calls to come move, the one that is over and those under other clocks stay; each is told with its job and put away', async () => {
  const { store, now, at, there, here, calls, lines } = await books();
  keepToClockRules(store, now, '2026b', asEver);
  const said = keepToClockRules(store, now, '2026c', torontoAhead);
  expect(said).toEqual([
    'Clock rules changed: call of Curling on Sat 12 December 2026, 09:00 in Toronto now comes 1 h earlier than before.',
    'Clock rules changed: wrap of Curling on Sat 12 December 2026, 19:00 in Toronto now comes 1 h earlier than before.',
    'Clock rules changed: the beginning of Choir on Sun 13 December 2026, 18:00 in Toronto now comes 1 h earlier than before.',
    'Clock rules changed: the end of Choir on Sun 13 December 2026, 20:00 in Toronto now comes 1 h earlier than before.',
  ]);
  expect(calls(there.id)).toEqual(['2026-12-11T14:00:00Z', '2026-12-12T13:00:00Z']);
  expect(calls(here.id)).toEqual(['2026-12-20T15:00:00Z']);
  expect((await call(jobs.get, { id: there.id }, at)).job.days).toEqual(there.days);
  expect((await call(jobs.history, { id: there.id }, at)).entries.map(({ sentence }) => sentence)).toContain(said[0]);

  const told = await lines();
  expect(told.map(({ sentence }) => sentence).toSorted()).toEqual(said.toSorted());
  expect(told.find(({ sentence }) => sentence === said[0])?.jobId).toBe(there.id);
  const line = told[0]?.id ?? '';
  await call(desk.putAway, { line }, at);
  expect((await lines()).map(({ id }) => id)).not.toContain(line);
  await call(desk.bringBack, { line }, at);
  expect(await lines()).toEqual(told);
  expect(keepToClockRules(store, now, '2026c', asEver)).toEqual([]);
});

test('the end of a pencil moves with its clock', async () => {
  const { store, now, at, here } = await books();
  await call(jobs.pencil, { id: here.id, version: here.version, expires: '2026-12-14T18:00:00Z' }, at);
  const homeBehind: Resolve = (wall, zone) => asEver(wall, zone) + (zone === DULUTH.zone ? HOUR / 2 : 0);
  expect(keepToClockRules(store, now, '2026c', homeBehind)).toContain(
    'Clock rules changed: the end of the pencil of League final on Mon 14 December 2026, 12:00 in Chicago now comes 30 min later than before.',
  );
  const { pencil } = (await call(jobs.get, { id: here.id }, at)).job;
  expect(pencil?.expires).toEqual({ wall: '2026-12-14T12:00', zone: DULUTH.zone, at: '2026-12-14T18:30:00Z' });
});

describe('one instant', () => {
  const before = { wall: '2026-12-12T09:00', zone: 'America/Toronto', at: asEver('2026-12-12T09:00', 'America/Toronto') };
  test('a wall time that the new clock skips keeps its instant and says so', () => {
    const skipped: Resolve = (wall, zone) => {
      throw new WallTimeError(wall, zone, 'missing');
    };
    const after = rebuilt(before, skipped, 0);
    expect(after).toMatchObject({ at: before.at, moved: false });
    expect(changeInWords('call of Curling', before, after)).toContain(
      'was left where it was. 2026-12-12 09:00 does not exist in America/Toronto',
    );
  });
  test('seconds inside the minute are no change, and what is over never moves', () => {
    expect(rebuilt({ ...before, at: before.at + 59_999 }, asEver, 0)).toEqual({ at: before.at + 59_999, moved: false, trouble: null });
    expect(rebuilt(before, torontoAhead, before.at).at).toBe(before.at);
    expect(rebuilt(before, torontoAhead, before.at - 1).at).toBe(before.at - HOUR);
  });
  test('built anew twice is built anew once', () =>
    fc.assert(
      fc.property(fc.integer({ min: -10_000, max: 10_000 }), (offset) => {
        const resolve: Resolve = (wall, zone) => asEver(wall, zone) + offset * 60_000;
        const once = rebuilt(before, resolve, 0);
        expect(rebuilt({ ...before, at: once.at }, resolve, 0)).toEqual({ at: once.at, moved: false, trouble: null });
      }),
      tried,
    ));
});

import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { jobs } from '../../../electron/api/jobs.ts';
import { road } from '../../../electron/api/road.ts';
import { DULUTH, FARGO, refusal, THUNDER_BAY, world } from '../world.ts';

const day = (date: string) => ({ date, kind: 'shoot' as const, call: `${date}T09:00`, wrap: `${date}T18:00` });

test('lines for places by distance from home, blocks, moves and what clashes', async () => {
  const w = await world('2026-12-01T15:00:00Z');
  const final = (
    await call(jobs.add, { facts: { title: 'Robotics final', place: FARGO, days: [day('2026-12-12'), day('2026-12-13')] } }, w)
  ).job;
  await call(jobs.pencil, { id: final.id, version: 1 }, w);
  const curling = (await call(jobs.add, { facts: { title: 'Curling', place: THUNDER_BAY, days: [day('2026-12-13')] } }, w)).job;

  const { stringline } = await call(road.see, { from: '2026-12-07', days: 14, candidate: curling.id }, w);
  expect(stringline).toMatchObject({ from: '2026-12-07T06:00:00Z', to: '2026-12-21T06:00:00Z', zone: 'America/Chicago' });
  expect(stringline.places.map(({ place, home, shiftMinutes }) => [place.name, home, shiftMinutes])).toEqual([
    ['Duluth', true, 0],
    ['Thunder Bay', false, 60],
    ['Fargo', false, 0],
  ]);
  const [pencil, laid] = stringline.jobs;
  expect(pencil).toMatchObject({ firmness: 'pencil', note: 'first pencil', blocks: [{}, {}] });
  expect(pencil?.moves.map(({ fromKey, toKey }) => [fromKey, toKey])).toEqual([
    [DULUTH.key, FARGO.key],
    [FARGO.key, DULUTH.key],
  ]);
  expect(laid).toMatchObject({ firmness: 'candidate', note: 'candidate' });
  expect(stringline.clashes).toMatchObject([{ short: '9 h at once', jobIds: [curling.id, final.id] }]);

  const without = await call(road.see, { from: '2026-12-07', days: 14 }, w);
  expect(without.stringline.jobs).toHaveLength(1);
  expect(without.stringline.clashes).toEqual([]);
});

test('an empty Road has the line of home', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const { stringline } = await call(road.see, { from: '2026-12-07', days: 1 }, { context });
  expect(stringline.places.map(({ place }) => place.name)).toEqual(['Duluth']);
  expect(
    (await refusal(call(road.see, { from: '2026-12-07', days: 1, candidate: '01890000-0000-7000-8000-000000000000' }, { context }))).code,
  ).toBe('NOT_FOUND');
});

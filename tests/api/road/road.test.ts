import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { fit } from '../../../electron/api/fit.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { kit } from '../../../electron/api/kit.ts';
import { road } from '../../../electron/api/road.ts';
import { DULUTH, FARGO, refusal, THUNDER_BAY, world, withPapers } from '../world.ts';

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

test('the lanes below, and a candidate as if its days were moved: nothing is saved', async () => {
  const w = withPapers(await world('2026-12-01T15:00:00Z'));
  const { item } = await call(kit.save, { fields: { name: 'Transmitter', owned: 4 } }, w);
  const day = (date: string, kind: 'shoot' | 'edit') => ({ date, kind, call: `${date}T09:00`, wrap: `${date}T17:00` });
  const film = (
    await call(jobs.add, { facts: { title: 'Film', place: DULUTH, days: [day('2026-12-09', 'shoot'), day('2026-12-14', 'edit')] } }, w)
  ).job;
  await call(jobs.pencil, { id: film.id, version: 1 }, w);
  const curling = (await call(jobs.add, { facts: { title: 'Curling', place: THUNDER_BAY, days: [day('2026-12-13', 'shoot')] } }, w)).job;
  await call(kit.setForJob, { jobId: curling.id, needs: [{ item: item.id, count: 2 }] }, w);

  const seen = (shiftDays: number) => call(road.see, { from: '2026-12-07', days: 14, candidate: curling.id, shiftDays }, w);
  const [as, moved] = [await seen(0), await seen(1)];
  expect(as.kit).toMatchObject([{ title: 'Curling', firmness: 'candidate', words: '2 of 4 Transmitter' }]);
  expect(as.edit).toMatchObject({ ceiling: null, days: [{ date: '2026-12-14', hours: 8, lost: false }], lost: '' });
  expect(moved.edit).toMatchObject({ days: [{ lost: true }], lost: '8 h of editing lose their day: Mon 14 December 2026.' });
  expect([as.laidAt, moved.laidAt]).toEqual(['2026-12-13T14:00:00Z', '2026-12-14T14:00:00Z']);
  const block = (answer: typeof as) => answer.stringline.jobs.find((job) => job.jobId === curling.id)?.blocks[0]?.start;
  expect([block(as), block(moved)]).toEqual(['2026-12-13T14:00:00Z', '2026-12-14T14:00:00Z']);
  expect((await call(jobs.get, { id: curling.id }, w)).job.days[0]?.date).toBe('2026-12-13');

  const checked = await call(fit.check, { jobId: curling.id, shiftDays: -4 }, w);
  expect(checked.result.findings[0]?.concerns).toMatchObject([{ jobId: film.id }]);
  expect((await call(fit.check, { jobId: curling.id }, w)).result.findings.filter(({ hardness }) => hardness !== 'know')).toEqual([]);
});

test('a move onto a time that the clock skips is refused in words', async () => {
  const w = await world('2026-02-01T15:00:00Z');
  const days = [{ date: '2026-03-07', kind: 'shoot' as const, call: '2026-03-07T02:30', wrap: '2026-03-07T12:00' }];
  const { job } = await call(jobs.add, { facts: { title: 'Early', place: DULUTH, days } }, w);
  const refused = await refusal(call(road.see, { from: '2026-03-01', days: 14, candidate: job.id, shiftDays: 1 }, w));
  expect(refused).toMatchObject({
    code: 'BAD_INPUT',
    fields: [{ field: 'shiftDays', sentence: expect.stringContaining('Move it a day further') }],
  });
});

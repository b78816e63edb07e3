import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { desk } from '../../../electron/api/desk.ts';
import { fit } from '../../../electron/api/fit.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { kit } from '../../../electron/api/kit.ts';
import { DULUTH, refusal, world } from '../world.ts';

const days = [{ date: '2026-12-12', kind: 'shoot' as const, call: '2026-12-12T09:00', wrap: '2026-12-12T18:00' }];

async function needing() {
  const w = await world('2026-12-01T15:00:00Z');
  const { item: camera } = await call(kit.save, { fields: { name: 'Camera', owned: 2, units: [{ serial: 'A1' }, { serial: 'A2' }] } }, w);
  const { item: battery } = await call(kit.save, { fields: { name: 'Battery', owned: 6 } }, w);
  const { job } = await call(jobs.add, { facts: { title: 'Fair', place: DULUTH, days } }, w);
  const needs = [
    { item: camera.id, count: 2 },
    { item: battery.id, count: 6 },
  ];
  await call(kit.setForJob, { jobId: job.id, needs }, w);
  return { w, job, camera, battery };
}

test('what was packed and not ticked back is a clock on the Desk from the return on, until it is back or missing', async () => {
  const { w, job, camera, battery } = await needing();
  const tick = (item: string, serial: string, out: number, back = 0, missing = 0) => ({ item, serial, out, back, missing });
  expect((await call(kit.packList, { jobId: job.id }, w)).rows.map(({ name, serial, toPack }) => [name, serial, toPack])).toEqual([
    ['Battery', '', 6],
    ['Camera', 'A1', 1],
    ['Camera', 'A2', 1],
  ]);
  const out = [tick(camera.id, 'A1', 1), tick(camera.id, 'A2', 1), tick(battery.id, '', 6)];
  expect((await call(kit.pack, { jobId: job.id, ticks: out }, w)).homeAt).toBe('2026-12-13T00:00:00Z');
  const told = async () => (await call(desk.see, {}, w)).clocks.filter(({ kind }) => kind === 'kit').map(({ sentence }) => sentence);
  w.at('2026-12-12T23:59:59Z');
  expect(await told()).toEqual([]);
  w.at('2026-12-13T00:00:00Z');
  expect(await told()).toEqual(['Fair: 6 × Battery and 2 × Camera not ticked back']);
  await call(kit.pack, { jobId: job.id, ticks: [tick(battery.id, '', 6, 5), tick(camera.id, 'A1', 1, 1)] }, w);
  expect(await told()).toEqual(['Fair: 1 × Battery and 1 × Camera not ticked back']);
  await call(kit.pack, { jobId: job.id, ticks: [tick(battery.id, '', 6, 6), tick(camera.id, 'A2', 1, 0, 1)] }, w);
  expect(await told()).toEqual([]);

  // What is missing is not there for the next job, and is said on its thing.
  const { items } = await call(kit.whereabouts, {}, w);
  expect(items.find(({ id }) => id === camera.id)).toMatchObject({ home: 1, missing: [{ title: 'Fair', count: 1 }] });
  const next = [{ date: '2026-12-20', kind: 'shoot' as const, call: '2026-12-20T09:00', wrap: '2026-12-20T18:00' }];
  const candidate = { title: 'Gala', place: DULUTH, days: next, kit: [{ item: camera.id, count: 2 }] };
  expect((await call(fit.check, { candidate }, w)).result.findings.map(({ kind }) => kind)).toEqual(['kit']);
  await call(kit.pack, { jobId: job.id, ticks: [tick(camera.id, 'A2', 1, 1)] }, w);
  expect((await call(fit.check, { candidate }, w)).result.findings).toEqual([]);
});

test('ticks that cannot be are refused whole', async () => {
  const { w, job, camera, battery } = await needing();
  const wrong = { item: camera.id, serial: 'A1', out: 2, back: 0, missing: 0 };
  const fine = { item: battery.id, out: 6, back: 0, missing: 0 };
  expect(await refusal(call(kit.pack, { jobId: job.id, ticks: [fine, wrong] }, w))).toMatchObject({
    code: 'BAD_INPUT',
    what: 'Camera A1 is one unit; 2 of it cannot be out.',
  });
  expect((await call(kit.packList, { jobId: job.id }, w)).rows.every(({ out }) => out === 0)).toBe(true);
  await call(kit.pack, { jobId: job.id, ticks: [fine] }, w);
  await call(kit.pack, { jobId: job.id, ticks: [{ ...fine, out: 0 }] }, w);
  expect((await call(kit.packList, { jobId: job.id }, w)).rows.every(({ out }) => out === 0)).toBe(true);
});

import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { jobs } from '../../../electron/api/jobs.ts';
import { kit } from '../../../electron/api/kit.ts';
import { DULUTH, refusal, world } from '../world.ts';

const NOW = '2026-12-01T15:00:00Z';
const days = [{ date: '2026-12-12', kind: 'shoot' as const, call: '2026-12-12T09:00', wrap: '2026-12-12T18:00' }];

test('things, presets and what a job needs', async () => {
  const { context } = await world(NOW);
  const { item: camera } = await call(kit.save, { fields: { name: 'Camera', owned: 2 } }, { context });
  expect(camera).toMatchObject({ version: 1, resetMinutes: 120, resetOnRoad: false, services: [] });
  await call(kit.save, { fields: { name: 'Battery', owned: 8, resetMinutes: 360, resetOnRoad: true } }, { context });
  const { preset } = await call(
    kit.savePreset,
    {
      fields: {
        name: 'Two cameras',
        needs: [
          { item: 'camera', count: 2 },
          { item: 'Battery', count: 6 },
        ],
      },
    },
    { context },
  );
  expect(preset.needs.map(({ item }) => item)).toContain(camera.id);

  const { job } = await call(jobs.add, { facts: { title: 'Fair', place: DULUTH, days } }, { context });
  const { needs } = await call(
    kit.setForJob,
    { jobId: job.id, needs: [{ item: 'Battery', count: 8 }], presets: ['two cameras'] },
    { context },
  );
  expect(needs.map(({ name, count }) => `${count} ${name}`)).toEqual(['8 Battery', '2 Camera']);
  expect(await call(kit.forJob, { jobId: job.id }, { context })).toEqual({ needs });

  expect(await refusal(call(kit.drop, { id: camera.id, version: 1 }, { context }))).toMatchObject({
    code: 'REFUSED',
    what: 'Camera is needed by Fair.',
  });
  await call(kit.setForJob, { jobId: job.id, needs: [] }, { context });
  await call(kit.dropPreset, { id: preset.id, version: 1 }, { context });
  await call(kit.drop, { id: camera.id, version: 1 }, { context });
  expect((await call(kit.list, {}, { context })).items.map(({ name }) => name)).toEqual(['Battery']);
});

test('what cannot be is bad input, what is old is stale', async () => {
  const { context } = await world(NOW);
  const { item } = await call(kit.save, { fields: { name: 'Camera', owned: 1 } }, { context });
  expect((await refusal(call(kit.save, { fields: { name: 'Lens', owned: 1, serials: ['A1', 'A2'] } }, { context }))).what).toBe(
    '2 serials for 1 owned: there is one too many.',
  );
  expect(
    (
      await refusal(
        call(kit.save, { fields: { name: 'Lens', owned: 1, services: [{ from: '2026-12-02', to: '2026-12-01', count: 1 }] } }, { context }),
      )
    ).code,
  ).toBe('BAD_INPUT');
  expect(await refusal(call(kit.save, { id: item.id, version: 9, fields: { name: 'Camera', owned: 2 } }, { context }))).toMatchObject({
    code: 'STALE',
    current: { owned: 1 },
  });
  expect((await refusal(call(kit.savePreset, { fields: { name: 'X', needs: [{ item: 'Crane', count: 1 }] } }, { context }))).what).toBe(
    'Crane is not on your kit list. Add it first.',
  );
});

test('a thing that was taken off is put back as it was, with what jobs that are over had of it', async () => {
  const w = await world(NOW);
  const { item } = await call(kit.save, { fields: { name: 'Camera', owned: 2, note: 'blue tape' } }, w);
  const { job } = await call(jobs.add, { facts: { title: 'Fair', place: DULUTH, days } }, w);
  await call(kit.setForJob, { jobId: job.id, needs: [{ item: item.id, count: 2 }] }, w);
  expect((await refusal(call(kit.putBack, { id: item.id }, w))).code).toBe('NOT_FOUND');
  w.at('2026-12-20T15:00:00Z');
  await call(kit.drop, { id: item.id, version: 1 }, w);
  expect((await call(kit.forJob, { jobId: job.id }, w)).needs).toEqual([]);
  expect((await call(kit.putBack, { id: item.id }, w)).item).toEqual({ ...item, version: 2 });
  expect((await call(kit.forJob, { jobId: job.id }, w)).needs).toEqual([{ item: item.id, name: 'Camera', count: 2 }]);
  expect(await refusal(call(kit.putBack, { id: item.id }, w))).toMatchObject({ code: 'REFUSED', what: 'Camera is on the list already.' });
});

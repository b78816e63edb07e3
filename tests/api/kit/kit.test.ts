import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { jobs } from '../../../electron/api/jobs.ts';
import { fit } from '../../../electron/api/fit.ts';
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
  expect(
    (await refusal(call(kit.save, { fields: { name: 'Lens', owned: 1, units: [{ serial: 'A1' }, { serial: 'A2' }] } }, { context }))).what,
  ).toBe('2 units with a serial for 1 owned: count them all.');
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

test('a thing that was kept with bare serials has them as its units', async () => {
  const w = await world(NOW);
  const { item } = await call(kit.save, { fields: { name: 'Camera', owned: 2 } }, w);
  const { id: _id, version: _version, units: _units, ...fields } = item;
  const old = JSON.stringify({ ...fields, serials: ['A1', '', 'A2'] });
  w.context.store.write((db) => db.$client.prepare('update kit_items set fields = ?').run(old));
  const [camera] = (await call(kit.list, {}, w)).items;
  expect(camera?.units.map(({ serial, owner }) => [serial, owner])).toEqual([
    ['A1', null],
    ['A2', null],
  ]);
});

test('a unit in service is short on the job that needs it, to the last day of its service in the zone of home', async () => {
  const w = await world(NOW);
  const services = [{ from: '2026-12-10', to: '2026-12-12' }];
  const units = [{ serial: 'A1', services }, { serial: 'A2' }];
  const { item } = await call(kit.save, { fields: { name: 'Camera', owned: 2, units } }, w);
  const needing = async (date: string) => {
    const on = { date, kind: 'shoot' as const, call: `${date}T09:00`, wrap: `${date}T18:00` };
    const candidate = { title: 'Fair', place: DULUTH, days: [on], kit: [{ item: item.id, count: 2 }] };
    return (await call(fit.check, { candidate }, w)).result.findings.map(({ sentence }) => sentence.slice(0, 28));
  };
  expect(await needing('2026-12-12')).toEqual(['Camera: short by 1 from Frid']);
  expect(await needing('2026-12-14')).toEqual([]);
  w.at('2026-12-13T05:59:00Z');
  expect((await call(kit.whereabouts, {}, w)).items[0]).toMatchObject({ home: 1, service: [{ count: 1, to: '2026-12-12' }] });
  w.at('2026-12-13T06:00:00Z');
  expect((await call(kit.whereabouts, {}, w)).items[0]).toMatchObject({ home: 2, service: [] });
});

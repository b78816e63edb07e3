import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { jobs } from '../../../electron/api/jobs.ts';
import { kit } from '../../../electron/api/kit.ts';
import { makeQuote } from '../jobs/made-quote.ts';
import { DULUTH, refusal, world } from '../world.ts';

const days = [{ date: '2026-12-12', kind: 'shoot' as const, call: '2026-12-12T09:00', wrap: '2026-12-12T18:00' }];

test('units are at home, out with ink from twelve hours before the call, or in service to its last day', async () => {
  const { context, at } = await world('2026-12-01T15:00:00Z');
  const service = { from: '2026-12-11', to: '2026-12-12', count: 1 };
  const { item } = await call(kit.save, { fields: { name: 'Camera', owned: 4, services: [service] } }, { context });
  const { job } = await call(jobs.add, { facts: { title: 'Fair', place: DULUTH, days } }, { context });
  await call(kit.setForJob, { jobId: job.id, needs: [{ item: item.id, count: 2 }] }, { context });
  const now = async (instant: string) => {
    at(instant);
    const [camera] = (await call(kit.whereabouts, {}, { context })).items;
    return camera;
  };
  // 09:00 in Duluth is 15:00 UTC.
  expect(await now('2026-12-12T16:00:00Z')).toEqual({
    id: item.id,
    home: 3,
    out: [],
    service: [{ count: 1, to: '2026-12-12' }],
    missing: [],
  });
  at('2026-12-01T15:00:00Z');
  makeQuote(context, job.id);
  const { version } = (await call(jobs.get, { id: job.id }, { context })).job;
  await call(jobs.ink, { id: job.id, version, who: 'Ada', how: 'mail' }, { context });
  expect(await now('2026-12-12T02:59:00Z')).toMatchObject({ home: 3, out: [] });
  expect(await now('2026-12-12T03:00:00Z')).toMatchObject({
    home: 1,
    out: [{ jobId: job.id, title: 'Fair', count: 2, until: '2026-12-13T00:00:00Z' }],
  });
  expect(await now('2026-12-13T06:00:00Z')).toEqual({ id: item.id, home: 4, out: [], service: [], missing: [] });
});

test('before the first set-up everything is at home', async () => {
  const { context } = await world('2026-12-01T15:00:00Z', null);
  await call(kit.save, { fields: { name: 'Camera', owned: 2 } }, { context });
  expect((await call(kit.whereabouts, {}, { context })).items).toMatchObject([{ home: 2, out: [], service: [] }]);
});

test('a file is tried first, then brought in; a second time nothing is new', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const text = 'Name,Count,Wh\nBattery,8,98\nCamera,2,\nTripod,many,\n';
  const tried = await call(kit.bring, { text, try: true }, { context });
  expect(tried).toMatchObject({ added: 0, rows: [{ fate: 'new' }, { fate: 'new' }, { fate: 'refused' }] });
  expect((await call(kit.list, {}, { context })).items).toEqual([]);
  expect(await call(kit.bring, { text, try: false }, { context })).toMatchObject({ added: 2 });
  expect(await call(kit.bring, { text, try: false }, { context })).toMatchObject({ added: 0, rows: [{ fate: 'same as' }, {}, {}] });
  expect(await refusal(call(kit.bring, { text: 'a,b\n1,2\n', try: true }, { context }))).toMatchObject({ code: 'BAD_INPUT' });
});

import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { router } from '../../../electron/api/router.ts';
import { THUNDER_BAY, withPapers, world, type World } from '../world.ts';

const { desk, documents, jobs } = router;
const NOW = '2026-11-25T15:00:00Z';
const DAY = { date: '2026-12-09', kind: 'half' as const, call: '2026-12-09T12:00', wrap: '2026-12-09T18:00' };
const kinds = async (w: World) =>
  (await call(desk.see, {}, w)).clocks.flatMap(({ kind, sentence }) =>
    ['document', 'papers', 'certificate'].includes(kind) ? [sentence] : [],
  );

async function pencilled(w: World) {
  const { job } = await call(jobs.add, { facts: { title: 'Curling', place: THUNDER_BAY, days: [DAY] } }, w);
  return (await call(jobs.pencil, { id: job.id, version: 1 }, w)).job;
}

test('a booked trip over the border is a clock until its papers are on file, and an inquiry is none', async () => {
  const w = await world(NOW);
  await call(jobs.add, { facts: { title: 'Asked', place: THUNDER_BAY, days: [DAY] } }, w);
  expect(await kinds(w)).toEqual([]);
  await pencilled(w);
  expect(await kinds(w)).toEqual(['Curling: passport and right to work not settled']);
  withPapers(w);
  expect(await kinds(w)).toEqual([]);
});

test('a certificate is a clock from being asked for until it is sent', async () => {
  const w = withPapers(await world(NOW));
  const job = await pencilled(w);
  const insurance = { ...job.knows.insurance, asked: true, due: '2026-12-04' };
  const { job: asked } = await call(jobs.saveKnows, { id: job.id, version: job.version, knows: { ...job.knows, insurance } }, w);
  expect(await kinds(w)).toEqual([
    'Curling: insurance certificate due by the end of Fri 4 Dec',
    'Curling: liability insurance not settled',
  ]);
  const sent = { ...job.knows, insurance: { ...insurance, sentOn: '2026-11-25' } };
  await call(jobs.saveKnows, { id: job.id, version: asked.version, knows: sent }, w);
  expect(await kinds(w)).toEqual([]);
});

test('a document that runs out soon is a clock of its own, without a job', async () => {
  const w = await world(NOW);
  await call(documents.save, { fields: { kind: 'liability insurance', until: '2026-12-31' } }, w);
  const { clocks } = await call(desk.see, {}, w);
  expect(clocks).toMatchObject([{ kind: 'document', jobId: null, sentence: 'Liability insurance runs out at the end of Thu 31 Dec' }]);
});

/**
 * Loading the sample is all or nothing, goes into an empty store only, and can be left.
 */
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { holdsNothing } from '../../../db/whole-store.ts';
import { callProcedure } from '../../../electron/api/serve.ts';
import { loadSample } from '../../../electron/sample/load.ts';
import { openStore } from '../../../db/open.ts';
import { useSnapshot } from '../../../db/recover.ts';
import { temporaryFolder, temporaryStore } from '../../store.ts';
import { refusal, world } from '../world.ts';
import { contextOn } from '../../context.ts';
import { told } from './told.ts';

const INSTANT = '2026-11-26T15:00:00Z';
const NOW = Temporal.Instant.from(INSTANT).epochMilliseconds;

test('a store that holds anything is refused with a sentence, and keeps what it has', async () => {
  const { context } = await world(INSTANT);
  const refused = await refusal(callProcedure(context, 'sample.load', {}));
  expect(refused).toMatchObject({
    code: 'REFUSED',
    what: 'The sample year goes into an empty store only, and this one holds something already.',
    kept: 'Nothing was changed.',
  });
  expect(refused.todo).toContain('--sample --data DIR');
  expect(await callProcedure(context, 'jobs.list', {})).toEqual({ jobs: [] });
  expect(await callProcedure(context, 'sample.state', {})).toEqual({ empty: false, loadedAt: null, loading: null });
});

test('a load that fails in the middle leaves the store empty and nothing beside it', async () => {
  const store = await temporaryStore(() => NOW);
  const context = contextOn(store, NOW);
  const failing = loadSample(context, ({ done }) => {
    if (done === 90) throw new RangeError('as if the ninetieth step failed');
  });
  await expect(failing).rejects.toThrow('ninetieth');
  expect(store.read(holdsNothing)).toBe(true);
  expect(readdirSync(store.papers)).toEqual([]);
  expect(existsSync(join(store.folder, 'in-the-making'))).toBe(false);
  expect(await callProcedure(context, 'sample.state', {})).toEqual({ empty: true, loadedAt: null, loading: null });
});

test('while it is being loaded it says how far, takes no second load, and what was saved meanwhile is kept', async () => {
  const store = await temporaryStore(() => NOW);
  const context = contextOn(store, NOW);
  let asked: Promise<unknown>[] = [];
  const loading = loadSample(context, ({ done }) => {
    if (done !== 20) return;
    asked = [callProcedure(context, 'sample.state', {}), refusal(callProcedure(context, 'sample.load', {}))];
    asked.push(callProcedure(context, 'jobs.add', { facts: { title: 'My own' } }));
  });
  const refused = await refusal(loading);
  const [state, second] = await Promise.all(asked);
  expect(state).toMatchObject({ empty: true, loading: { done: 20 } });
  expect(second).toMatchObject({ code: 'REFUSED', what: 'The sample year is being loaded already.' });
  expect(refused).toMatchObject({ code: 'REFUSED', what: expect.stringContaining('empty store only') });
  expect(await callProcedure(context, 'jobs.list', {})).toMatchObject({ jobs: [{ title: 'My own' }] });
});

test('the same day tells the same year', async () => {
  const said: string[] = [];
  for (const folder of [temporaryFolder(), temporaryFolder()]) {
    const { store, call } = await told(INSTANT, folder);
    const all = [await call('jobs.list'), await call('kit.list'), await call('rates.list'), await call('desk.see')];
    said.push(JSON.stringify(all).replaceAll(/[0-9a-f]{8}-[0-9a-f-]{27}/g, 'id'));
    store.close();
  }
  expect(said[1]).toBe(said[0]);
});

test('it is left whole: the store is empty, and the snapshot brings it back', async () => {
  const folder = temporaryFolder();
  const { store, context, call } = await told(INSTANT, folder);
  expect(await call('sample.state')).toEqual({ empty: false, loadedAt: INSTANT, loading: null });
  const { snapshot } = await call<{ snapshot: { name: string } }>('sample.leave');
  expect(store.read(holdsNothing)).toBe(true);
  expect(await call('sample.state')).toEqual({ empty: true, loadedAt: null, loading: null });
  expect(await refusal(callProcedure(context, 'sample.leave', {}))).toMatchObject({ code: 'REFUSED' });
  // What is frozen is guarded again.
  await call('jobs.add', { facts: { title: 'My own' } });
  expect(() => store.write((db) => db.$client.exec("update history set sentence = ''"))).toThrow();
  store.close();

  useSnapshot({ folder, name: snapshot.name, now: NOW });
  const again = await openStore({ folder, now: () => NOW });
  try {
    const rows = await callProcedure(contextOn(again, NOW), 'jobs.list', {});
    expect((rows as { jobs: unknown[] }).jobs.length).toBeGreaterThan(50);
  } finally {
    again.close();
  }
});

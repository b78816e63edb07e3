import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Snapshot } from '../../../core/contract/store.ts';
import { readMigrations, MIGRATIONS_FOLDER } from '../../../db/migrate.ts';
import { callProcedure } from '../../../electron/api/serve.ts';
import { refusal, world } from '../world.ts';

test('the state of the store, before and after a snapshot', async () => {
  const { context, at } = await world('2026-12-01T15:00:00Z');
  const state = () => callProcedure(context, 'store.state', {});
  const still = {
    folder: context.store.folder,
    schema: readMigrations(MIGRATIONS_FOLDER).length,
    sqlite: context.store.sqlite,
    version: '0.0.0',
  };
  expect(await state()).toEqual({ ...still, lastSnapshot: null, snapshots: 0 });
  const { snapshot: first } = (await callProcedure(context, 'store.snapshot', {})) as { snapshot: Snapshot };
  at('2026-12-01T16:00:00Z');
  const { snapshot: second } = (await callProcedure(context, 'store.snapshot', {})) as { snapshot: Snapshot };
  expect(second).toMatchObject({ takenAt: '2026-12-01T16:00:00.000Z', why: 'asked' });
  expect(await state()).toEqual({ ...still, lastSnapshot: second, snapshots: 2 });
  expect(await callProcedure(context, 'store.snapshots', {})).toEqual({ snapshots: [second, first] });
});

test('trouble of the disk comes in its own words', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const snapshots = join(context.store.folder, 'snapshots');
  rmSync(snapshots, { recursive: true });
  writeFileSync(snapshots, '');
  expect(await refusal(callProcedure(context, 'store.snapshot', {}))).toMatchObject({
    code: 'STORE_TROUBLE',
    what: 'The data folder cannot be written to.',
    todo: 'Make the folder writable, or start with another data folder.',
  });
});

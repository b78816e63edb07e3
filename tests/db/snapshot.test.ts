import { existsSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { writeHistory } from '../../db/keeping.ts';
import { openStore } from '../../db/open.ts';
import type { Store } from '../../db/store.ts';
import { dump } from '../dump.ts';
import { refusalOf } from '../refusal.ts';
import { NOW, temporaryFolder, temporaryStore } from '../store.ts';

const DAY = 86_400_000;
const note = (store: Store, times = 1) =>
  store.write((db) => {
    for (let row = 0; row < times; row += 1)
      writeHistory(db, { subject: 'job', subjectId: 'a', deed: 'note', sentence: 'x'.repeat(500), at: NOW });
  });
const inSnapshot = (store: Store, name: string) => {
  const client = new Database(join(store.folder, 'snapshots', name), { readonly: true });
  const said = dump(client);
  client.close();
  return said;
};

test('a snapshot says what the store says, in one file of its own', async () => {
  const store = await temporaryStore();
  note(store);
  const snapshot = await store.snapshot('asked', NOW);
  expect(snapshot).toEqual({
    name: '2026-12-01T15-00-00-000Z.asked.sqlite',
    takenAt: '2026-12-01T15:00:00.000Z',
    bytes: expect.any(Number),
    why: 'asked',
  });
  expect(readdirSync(join(store.folder, 'snapshots'))).toEqual([snapshot.name]);
  expect(inSnapshot(store, snapshot.name)).toEqual(store.read((db) => dump(db.$client)));
  expect(store.snapshots()).toEqual([snapshot]);
});

test('two asked for at once come one after the other and do not overwrite each other', async () => {
  const store = await temporaryStore();
  const [first, second] = await Promise.all([store.snapshot('asked', NOW), store.snapshot('asked', NOW)]);
  expect(second.name).toBe('2026-12-01T15-00-00-000Z.asked.2.sqlite');
  expect(store.snapshots()).toEqual([second, first]);
});

test('saving goes on meanwhile, and the snapshot is of one moment', async () => {
  const store = await temporaryStore();
  note(store, 2000);
  const taking = store.snapshot('asked', NOW);
  let saved = 2000;
  for (let step = 0; step < 60; step += 1) {
    store.write((db) => {
      for (const half of ['a', 'b']) writeHistory(db, { subject: 'pair', subjectId: half, deed: 'note', sentence: 'x', at: NOW });
    });
    saved += 2;
    await new Promise((resolve) => setImmediate(resolve));
  }
  const { history } = inSnapshot(store, (await taking).name);
  expect(history?.length).toBeGreaterThanOrEqual(2000);
  expect(history?.length).toBeLessThanOrEqual(saved);
  expect((history?.length ?? 1) % 2).toBe(0);
});

test('closing meanwhile ends it and leaves nothing behind', async () => {
  const store = await temporaryStore();
  note(store, 2000);
  const taking = refusalOf(() => store.snapshot('asked', NOW));
  await new Promise((resolve) => setImmediate(resolve));
  store.close();
  expect((await taking).kind).toBe('closed');
  expect(readdirSync(join(store.folder, 'snapshots'))).toEqual([]);
  expect(existsSync(join(store.folder, 'kitbound.sqlite-wal'))).toBe(false);
});

test('the first start of a day writes one, a second start of that day none, and a new store none', async () => {
  const folder = temporaryFolder();
  const startAt = async (now: number) => {
    const store = await openStore({ folder, now: () => now });
    const names = store.snapshots().map(({ name }) => name);
    store.close();
    return names;
  };
  expect(await startAt(NOW)).toEqual([]);
  expect(await startAt(NOW)).toEqual(['2026-12-01T15-00-00-000Z.daily.sqlite']);
  expect(await startAt(NOW + 1000)).toHaveLength(1);
  expect(await startAt(NOW + DAY)).toHaveLength(2);
});

test('old ones are thinned when a new one is whole', async () => {
  const store = await temporaryStore();
  const old = await store.snapshot('asked', NOW - 40 * DAY);
  const older = await store.snapshot('asked', NOW - 41 * DAY);
  const newest = await store.snapshot('asked', NOW);
  expect(store.snapshots().map(({ name }) => name)).toEqual([newest.name, old.name]);
  expect(older.name).toBe('2026-10-21T15-00-00-000Z.asked.sqlite');
});

test('what a snapshot that was cut short left behind goes at the next start; other files stay', async () => {
  const store = await temporaryStore();
  const snapshots = join(store.folder, 'snapshots');
  store.close();
  writeFileSync(join(snapshots, '2026-12-01T15-00-00-000Z.asked.sqlite.partial'), 'half');
  writeFileSync(join(snapshots, '2026-12-01T15-00-00-000Z.asked.sqlite.partial-journal'), 'half');
  writeFileSync(join(snapshots, 'mine.txt'), 'kept');
  const again = await temporaryStore(undefined, store.folder);
  expect(readdirSync(snapshots).filter((name) => !name.endsWith('.daily.sqlite'))).toEqual(['mine.txt']);
  expect(again.snapshots()).toHaveLength(1);
  expect(statSync(join(snapshots, 'mine.txt')).size).toBe(4);
});

/**
 * A store filled from another and emptied again: all of it or nothing.
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { historyOf, writeHistory } from '../../db/keeping.ts';
import { openStore } from '../../db/open.ts';
import { holdsNothing } from '../../db/whole-store.ts';
import { dump } from '../dump.ts';
import { refusalOf } from '../refusal.ts';
import { NOW, temporaryFolder, temporaryStore } from '../store.ts';

const row = { subject: 'job', subjectId: 'a', deed: 'note', sentence: 'One.', at: NOW };

/** A closed store with one row. */
async function filled(): Promise<string> {
  const folder = temporaryFolder();
  const store = await openStore({ folder, now: () => NOW });
  store.write((db) => writeHistory(db, row));
  store.close();
  return folder;
}
const dumpOf = (folder: string) => {
  const client = new Database(join(folder, 'kitbound.sqlite'), { readonly: true });
  try {
    return dump(client);
  } finally {
    client.close();
  }
};

test('what another store holds is taken over whole', async () => {
  const folder = await filled();
  const store = await temporaryStore();
  expect(store.read(holdsNothing)).toBe(true);
  store.takeOver(folder);
  expect(store.read(holdsNothing)).toBe(false);
  const { folder: own } = store;
  store.close();
  expect(dumpOf(own)).toEqual(dumpOf(folder));
});

test('nothing is taken over into a store that holds something', async () => {
  const folder = await filled();
  const store = await temporaryStore();
  store.write((db) => writeHistory(db, { ...row, sentence: 'Mine.' }));
  expect((await refusalOf(() => store.takeOver(folder))).kind).toBe('not empty');
  expect(store.read((db) => historyOf(db, 'job', 'a').map(({ sentence }) => sentence))).toEqual(['Mine.']);
});

test('a store of another schema is refused, and nothing of it is put in', async () => {
  const folder = await filled();
  const other = new Database(join(folder, 'kitbound.sqlite'));
  other.exec("update applied_migrations set checksum = 'other' where number = 1");
  other.close();
  const store = await temporaryStore();
  expect((await refusalOf(() => store.takeOver(folder))).kind).toBe('migrations differ');
  expect(store.read(holdsNothing)).toBe(true);
});

test('emptied it is as a fresh one, guards included, and the snapshot has what was there', async () => {
  const store = await temporaryStore();
  const fresh = store.read((db) => dump(db.$client));
  store.write((db) => writeHistory(db, row));
  const { name } = await store.emptyOut(NOW);
  expect(store.read((db) => dump(db.$client))).toEqual(fresh);
  expect(readdirSync(join(store.folder, 'snapshots'))).toEqual([name]);
  const kept = new Database(join(store.folder, 'snapshots', name), { readonly: true });
  expect(kept.prepare('select sentence from history').pluck().all()).toEqual(['One.']);
  kept.close();
  store.write((db) => writeHistory(db, row));
  expect(() => store.write((db) => db.run('delete from history'))).toThrow();
  expect(store.read((db) => historyOf(db, 'job', 'a').length)).toBe(1);
});

test('where no snapshot can be written nothing is taken out', async () => {
  const store = await temporaryStore();
  store.write((db) => writeHistory(db, row));
  await expect(store.emptyOut(Number.NaN)).rejects.toThrow();
  expect(store.read((db) => historyOf(db, 'job', 'a').length)).toBe(1);
});

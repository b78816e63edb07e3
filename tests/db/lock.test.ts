import { existsSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readAnnouncement } from '../../db/lock.ts';
import { openStore } from '../../db/open.ts';
import { StoreBusy } from '../../db/trouble.ts';
import { refusalOf } from '../refusal.ts';
import { NOW, temporaryFolder, temporaryStore } from '../store.ts';

test('a second opening is refused until the first is closed', async () => {
  const store = await temporaryStore();
  expect(await refusalOf(() => openStore({ folder: store.folder, now: () => NOW }))).toBeInstanceOf(StoreBusy);
  store.close();
  (await temporaryStore(undefined, store.folder)).close();
});

test('what the first leaves word of can be read by the second, by this user alone, and goes with the first', async () => {
  const store = await temporaryStore();
  expect(readAnnouncement(store.folder)).toBeUndefined();
  store.announce({ pid: 7, address: 'http://127.0.0.1:1' });
  expect(readAnnouncement(store.folder)).toEqual({ pid: 7, address: 'http://127.0.0.1:1' });
  if (process.platform !== 'win32') expect(statSync(join(store.folder, 'running.json')).mode & 0o777).toBe(0o600);
  store.close();
  expect(existsSync(join(store.folder, 'running.json'))).toBe(false);
});

test.each(['', '{', '[]', 'null', '{"pid":"7"}'])('a word that is not whole (%s) is no word', (text) => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'running.json'), text);
  expect(readAnnouncement(folder)).toBeUndefined();
});

test('word of a process that was killed is gone once the next one holds the folder', async () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'running.json'), '{"pid":1}');
  await temporaryStore(undefined, folder);
  expect(readAnnouncement(folder)).toBeUndefined();
});

test('a lock file that is something else is refused', async () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'writer.lock'), 'x'.repeat(5000));
  expect((await refusalOf(() => openStore({ folder, now: () => NOW }))).kind).toBe('cannot write');
});

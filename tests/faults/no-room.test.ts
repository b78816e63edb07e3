/**
 * A disk that is really full, and one that is really read-only.
 */
import { readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { historyOf, writeHistory } from '../../db/keeping.ts';
import { openStore } from '../../db/open.ts';
import type { Store } from '../../db/store.ts';
import { StoreError } from '../../db/trouble.ts';
import { refusalOf } from '../refusal.ts';
import { NOW } from '../store.ts';
import { makeReadOnly, smallDisk } from './small-disk.ts';

const open = (folder: string) => openStore({ folder, now: () => NOW });
const save = (store: Store) =>
  store.write((db) => writeHistory(db, { subject: 'job', subjectId: 'a', deed: 'note', sentence: 'x'.repeat(20_000), at: NOW }));
const count = (store: Store) => store.read((db) => historyOf(db, 'job', 'a').length);

function saveUntilRefused(store: Store): { saved: number; error: unknown } {
  for (let saved = 0; ; saved += 1) {
    try {
      save(store);
    } catch (error) {
      return { saved, error };
    }
  }
}

test('a full disk: what was acknowledged is there, and it goes on once there is room', async ({ skip }) => {
  const disk = smallDisk(4, skip);
  const ballast = join(disk, 'ballast');
  writeFileSync(ballast, Buffer.alloc(1_000_000));
  const store = await open(join(disk, 'data'));
  const { saved, error } = saveUntilRefused(store);
  expect(error).toBeInstanceOf(StoreError);
  expect(error).toMatchObject({ kind: 'disk full', what: 'The disk is full.' });
  expect(saved).toBeGreaterThan(10);
  expect(count(store)).toBe(saved);
  expect((await refusalOf(() => store.snapshot('asked', NOW))).kind).toBe('disk full');
  expect(readdirSync(join(disk, 'data', 'snapshots'))).toEqual([]);
  rmSync(ballast);
  save(store);
  expect(count(store)).toBe(saved + 1);
  store.close();
  const again = await open(join(disk, 'data'));
  expect(count(again)).toBe(saved + 1);
  again.close();
});

test('a disk that is full at the start: refused in words, or open without its daily snapshot', async ({ skip }) => {
  const disk = smallDisk(2, skip);
  const folder = join(disk, 'data');
  const store = await open(folder);
  save(store);
  store.close();
  expect(() => writeFileSync(join(disk, 'ballast'), Buffer.alloc(4_000_000))).toThrow(/ENOSPC/);
  expect((await refusalOf(() => open(folder))).kind).toBe('disk full');
  rmSync(join(disk, 'ballast'));
  const again = await open(folder);
  expect(count(again)).toBe(1);
  again.close();
});

test('a read-only folder is refused in words, and so is a new one on it', async ({ skip }) => {
  const disk = smallDisk(2, skip);
  const folder = join(disk, 'data');
  (await open(folder)).close();
  makeReadOnly(disk);
  expect((await refusalOf(() => open(folder))).kind).toBe('cannot write');
  expect((await refusalOf(() => open(join(disk, 'other')))).kind).toBe('cannot write');
});

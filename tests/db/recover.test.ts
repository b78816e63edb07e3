import { existsSync, readFileSync, readdirSync, renameSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { historyOf, writeHistory } from '../../db/keeping.ts';
import { openStore } from '../../db/open.ts';
import { beginAnew, useSnapshot } from '../../db/recover.ts';
import { refusalOf } from '../refusal.ts';
import { NOW, temporaryFolder } from '../store.ts';

const STAMP = '2026-12-01T15-00-00-000Z';
const open = (folder: string) => openStore({ folder, now: () => NOW });
const say = { subject: 'job', subjectId: 'a', deed: 'note', at: NOW };

/** A folder whose store says "before" and, after its snapshot, "after". */
async function folderWithSnapshot(): Promise<{ folder: string; name: string }> {
  const folder = temporaryFolder();
  const store = await open(folder);
  store.write((db) => writeHistory(db, { ...say, sentence: 'before' }));
  const { name } = await store.snapshot('asked', NOW);
  store.write((db) => writeHistory(db, { ...say, sentence: 'after' }));
  store.close();
  return { folder, name };
}
async function said(folder: string): Promise<string[]> {
  const store = await open(folder);
  try {
    return store.read((db) => historyOf(db, 'job', 'a').map(({ sentence }) => sentence));
  } finally {
    store.close();
  }
}

describe('going on with a snapshot', () => {
  test('puts it in place and sets what was there aside', async () => {
    const { folder, name } = await folderWithSnapshot();
    useSnapshot({ folder, name, now: NOW });
    expect(await said(folder)).toEqual(['before']);
    const old = new Database(join(folder, 'set-aside', STAMP, 'kitbound.sqlite'), { readonly: true });
    expect(old.prepare('select count(*) from history').pluck().get()).toBe(2);
    old.close();
  });

  test('twice at the same moment overwrites nothing', async () => {
    const { folder, name } = await folderWithSnapshot();
    useSnapshot({ folder, name, now: NOW });
    useSnapshot({ folder, name, now: NOW });
    expect(readdirSync(join(folder, 'set-aside'))).toEqual([STAMP, `${STAMP}.2`]);
  });

  test('never mixes in the log of the old file', async () => {
    const { folder, name } = await folderWithSnapshot();
    writeFileSync(join(folder, 'kitbound.sqlite-wal'), 'the log of another file');
    writeFileSync(join(folder, 'kitbound.sqlite-shm'), 'and its index');
    useSnapshot({ folder, name, now: NOW });
    expect(await said(folder)).toEqual(['before']);
    expect(readFileSync(join(folder, 'set-aside', STAMP, 'kitbound.sqlite-wal'), 'utf8')).toBe('the log of another file');
  });

  test('is refused while the store is open', async () => {
    const { folder, name } = await folderWithSnapshot();
    const store = await open(folder);
    expect((await refusalOf(() => useSnapshot({ folder, name, now: NOW }))).kind).toBe('busy');
    store.close();
  });

  test.each(['2030-01-01T00-00-00-000Z.asked.sqlite', '../kitbound.sqlite', 'kitbound.sqlite', ''])(
    'is refused for a name that is none: "%s"',
    async (name) => {
      const { folder } = await folderWithSnapshot();
      expect((await refusalOf(() => useSnapshot({ folder, name, now: NOW }))).kind).toBe('no such snapshot');
      expect(await said(folder)).toHaveLength(2);
    },
  );

  const spoilt: [string, string, (file: string) => void][] = [
    ['a text file', 'damaged', (file) => writeFileSync(file, 'not a store\n'.repeat(900))],
    ['a truncated file', 'damaged', (file) => truncateSync(file, 3 * 4096)],
    ['an empty file', 'damaged', (file) => truncateSync(file, 0)],
    [
      "another program's file",
      'not ours',
      (file) => {
        rmSync(file);
        const other = new Database(file);
        other.exec('create table theirs (id)');
        other.close();
      },
    ],
    [
      'a newer file',
      'newer version',
      (file) => {
        const newer = new Database(file);
        newer.exec("insert into applied_migrations values (99, '0099_later', 'x', 1)");
        newer.close();
      },
    ],
  ];
  test.each(spoilt)('is refused for %s, and the store stays', async (_, kind, spoil) => {
    const { folder, name } = await folderWithSnapshot();
    spoil(join(folder, 'snapshots', name));
    expect((await refusalOf(() => useSnapshot({ folder, name, now: NOW }))).kind).toBe(kind);
    expect(await said(folder)).toHaveLength(2);
    expect(existsSync(join(folder, 'set-aside'))).toBe(false);
  });

  test('is finished at the next start when it was cut short', async () => {
    const { folder, name } = await folderWithSnapshot();
    renameSync(join(folder, 'snapshots', name), join(folder, `kitbound.sqlite.incoming-${STAMP}`));
    expect(await said(folder)).toEqual(['before']);
    expect(existsSync(join(folder, 'set-aside', STAMP, 'kitbound.sqlite'))).toBe(true);
  });
});

test('what a replacement left behind that was cut short early goes at the next start', async () => {
  const { folder } = await folderWithSnapshot();
  writeFileSync(join(folder, `kitbound.sqlite.incoming-${STAMP}.partial`), 'half');
  expect(await said(folder)).toHaveLength(2);
  expect(readdirSync(folder).filter((name) => name.includes('incoming'))).toEqual([]);
});

describe('a store that is lost or damaged', () => {
  const lose: [string, string, (file: string) => void][] = [
    ['is missing', 'file missing', (file) => rmSync(file)],
    ['is empty', 'file missing', (file) => truncateSync(file, 0)],
    ['is cut short', 'damaged', (file) => truncateSync(file, 2 * 4096)],
    ['is something else', 'damaged', (file) => writeFileSync(file, 'not a store\n'.repeat(900))],
  ];
  test.each(lose)('that %s is not begun anew; the newest good snapshot is offered', async (_, kind, spoil) => {
    const { folder, name } = await folderWithSnapshot();
    writeFileSync(join(folder, 'snapshots', '2026-12-01T16-00-00-000Z.asked.sqlite'), 'a newer snapshot that is not good');
    spoil(join(folder, 'kitbound.sqlite'));
    const error = await refusalOf(() => open(folder));
    expect(error).toMatchObject({ kind, snapshot: { name } });
    expect(error.todo).toBe('Go on with the snapshot of 2026-12-01 15:00 UTC; what is in the folder now is set aside, not deleted.');
    useSnapshot({ folder, name, now: NOW });
    expect(await said(folder)).toEqual(['before']);
  });

  test('can be set aside for an empty one', async () => {
    const { folder } = await folderWithSnapshot();
    writeFileSync(join(folder, 'kitbound.sqlite'), 'not a store\n'.repeat(900));
    beginAnew({ folder, now: NOW });
    expect(await said(folder)).toEqual([]);
    expect(readFileSync(join(folder, 'set-aside', STAMP, 'kitbound.sqlite'), 'utf8')).toContain('not a store');
  });
});

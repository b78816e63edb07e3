/**
 * Each method of the store against each state that it may be met in.
 */
import { existsSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { historyOf, writeHistory } from '../../db/keeping.ts';
import type { ReadableDb, Store, WritableDb } from '../../db/store.ts';
import { refusalOf } from '../refusal.ts';
import { NOW, temporaryFolder, temporaryStore } from '../store.ts';

const row = { subject: 'job', subjectId: 'a', deed: 'note', sentence: 'One.', at: NOW };
const count = (store: Store) => store.read((db) => historyOf(db, 'job', 'a').length);
const methods: Record<'read' | 'write' | 'snapshot' | 'takeOver' | 'emptyOut', (store: Store) => unknown> = {
  read: count,
  write: (store) => store.write((db) => writeHistory(db, row)),
  snapshot: (store) => store.snapshot('asked', NOW),
  takeOver: (store) => store.takeOver(temporaryFolder()),
  emptyOut: (store) => store.emptyOut(NOW),
};
const names = Object.keys(methods) as (keyof typeof methods)[];

/** Make the file system say that something went wrong, as SQLite hands it on. */
class DiskError extends Error {
  readonly code: string;
  constructor(code: string) {
    super('as the disk would say');
    this.code = code;
  }
}

describe('closed', () => {
  test.each(names)('%s is refused', async (name) => {
    const store = await temporaryStore();
    store.close();
    expect((await refusalOf(() => methods[name](store))).kind).toBe('closed');
  });
  test('announce is refused, snapshots still lists, close does nothing more', async () => {
    const store = await temporaryStore();
    const taken = await store.snapshot('asked', NOW);
    store.close();
    expect((await refusalOf(() => store.announce({ pid: 1 }))).kind).toBe('closed');
    expect(store.snapshots()).toEqual([taken]);
    expect(() => store.close()).not.toThrow();
  });
});

describe('inside a transaction', () => {
  test('read sees what the deed has done so far', async () => {
    const store = await temporaryStore();
    const seen = store.write((db) => {
      writeHistory(db, row);
      return count(store);
    });
    expect(seen).toBe(1);
  });
  test.each(['write', 'snapshot', 'takeOver', 'emptyOut'] as const)('%s is refused, and the deed is undone with it', async (name) => {
    const store = await temporaryStore();
    const error = await refusalOf(async () => {
      let inner: unknown;
      const failed = () =>
        store.write((db) => {
          writeHistory(db, row);
          inner = methods[name](store);
          if (inner instanceof Promise) throw inner;
        });
      try {
        failed();
      } catch (thrown) {
        await thrown;
        throw thrown;
      }
    });
    expect(error.kind).toBe('misuse');
    expect(count(store)).toBe(0);
  });
  test('a deed that throws leaves nothing, and the next one goes through', async () => {
    const store = await temporaryStore();
    const fail = () =>
      store.write((db) => {
        writeHistory(db, row);
        throw new RangeError('no');
      });
    expect(fail).toThrow(RangeError);
    expect(count(store)).toBe(0);
    methods.write(store);
    expect(count(store)).toBe(1);
  });
  test('closing undoes the deed', async () => {
    const store = await temporaryStore();
    expect(() =>
      store.write((db) => {
        writeHistory(db, row);
        store.close();
      }),
    ).toThrow();
    expect(count(await temporaryStore(undefined, store.folder))).toBe(0);
  });
});

describe('read-only', () => {
  test('a read that writes is refused by its handle', async () => {
    const store = await temporaryStore();
    expect((await refusalOf(() => store.read((db) => writeHistory(db as WritableDb, row)))).kind).toBe('misuse');
    expect(count(store)).toBe(0);
  });
  test('a deed begun inside a read is refused', async () => {
    const store = await temporaryStore();
    expect((await refusalOf(() => store.read(() => methods.write(store)))).kind).toBe('misuse');
  });
  test('the handle of a deed writes nothing once the deed is over', async () => {
    const store = await temporaryStore();
    let kept: WritableDb | undefined;
    store.write((db) => {
      kept = db;
    });
    expect(() => writeHistory(kept as WritableDb, row)).toThrow(/for deeds only/);
  });
});

describe('disk error', () => {
  const codes = [
    ['SQLITE_FULL', 'disk full'],
    ['ENOSPC', 'disk full'],
    ['SQLITE_IOERR_FSYNC', 'disk error'],
    ['EIO', 'disk error'],
    ['SQLITE_READONLY_DBMOVED', 'cannot write'],
    ['EACCES', 'cannot write'],
    ['SQLITE_BUSY_SNAPSHOT', 'busy'],
    ['SQLITE_CORRUPT_INDEX', 'damaged'],
    ['SQLITE_NOTADB', 'damaged'],
  ] as const;
  test.each(codes)('%s is told as "%s", by read and write, through a wrapping as well', async (code, kind) => {
    const fail = () => {
      throw new Error('wrapped', { cause: new DiskError(code) });
    };
    const reading = await temporaryStore();
    expect((await refusalOf(() => reading.read(fail))).kind).toBe(kind);
    const writing = await temporaryStore();
    const error = await refusalOf(() => writing.write(fail));
    expect(error.kind).toBe(kind);
    for (const sentence of [error.what, error.kept, error.todo]) expect(sentence).toMatch(/^[A-Z].*\.$/);
    expect(count(writing)).toBe(0);
  });
  test('after damage nothing more is written, and reading goes on', async () => {
    const store = await temporaryStore();
    methods.write(store);
    const fail = () => {
      throw new DiskError('SQLITE_CORRUPT');
    };
    await refusalOf(() => store.read(fail));
    expect((await refusalOf(() => methods.write(store))).kind).toBe('damaged');
    expect(count(store)).toBe(1);
  });
  test('a snapshot that has nowhere to go is told of, and the store goes on', async () => {
    const store = await temporaryStore();
    const snapshots = join(store.folder, 'snapshots');
    rmSync(snapshots, { recursive: true });
    writeFileSync(snapshots, '');
    expect((await refusalOf(() => methods.snapshot(store))).kind).toBe('cannot write');
    expect((await refusalOf(() => store.snapshots())).kind).toBe('cannot write');
    methods.write(store);
    expect(count(store)).toBe(1);
  });
});

describe('wrong type', () => {
  test.each(['read', 'write'] as const)('%s refuses to wait, and nothing is saved', async (name) => {
    const store = await temporaryStore();
    const waits = (db: ReadableDb) => {
      if (name === 'write') writeHistory(db as WritableDb, row);
      return Promise.resolve();
    };
    expect(() => (store[name] as Store['write'])(waits)).toThrow('Nothing may wait inside a transaction.');
    expect(count(store)).toBe(0);
  });
  test.each([undefined, null, 7, 'deed'])('read and write refuse %s', async (nothing) => {
    const store = await temporaryStore();
    expect(() => store.read(nothing as never)).toThrow(TypeError);
    expect(() => store.write(nothing as never)).toThrow(TypeError);
    methods.write(store);
    expect(count(store)).toBe(1);
  });
  test.each([undefined, Number.NaN, 'now', 1.5])('snapshot refuses %s for a moment and leaves no file', async (moment) => {
    const store = await temporaryStore();
    await expect(store.snapshot('asked', moment as never)).rejects.toThrow();
    expect(readdirSync(join(store.folder, 'snapshots'))).toEqual([]);
  });
  test('a value of the wrong type is refused by the strict table', async () => {
    const store = await temporaryStore();
    expect(() => store.write((db) => writeHistory(db, { ...row, at: 'noon' as never }))).toThrow(
      /cannot store TEXT value in INTEGER column/,
    );
    expect(() => store.write((db) => writeHistory(db, { ...row, sentence: null as never }))).toThrow(/NOT NULL/);
    expect(count(store)).toBe(0);
  });
});

test('a clean close leaves no log behind', async () => {
  const store = await temporaryStore();
  methods.write(store);
  store.close();
  expect(existsSync(join(store.folder, 'kitbound.sqlite-wal'))).toBe(false);
});

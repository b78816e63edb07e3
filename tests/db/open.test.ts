import { mkdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { requireSqlite } from '../../db/connect.ts';
import { APPLICATION_ID } from '../../db/migrate.ts';
import { openStore } from '../../db/open.ts';
import { refusalOf } from '../refusal.ts';
import { NOW, temporaryFolder, temporaryStore } from '../store.ts';

const open = (folder: string, onNote?: (sentence: string) => void) => openStore({ folder, now: () => NOW, ...(onNote && { onNote }) });

describe('the connection', () => {
  test('is set as safe as SQLite can be', async () => {
    const store = await temporaryStore();
    const pragmas = store.read((db) =>
      Object.fromEntries(
        [
          'journal_mode',
          'synchronous',
          'foreign_keys',
          'busy_timeout',
          'trusted_schema',
          'cell_size_check',
          'application_id',
          'recursive_triggers',
        ].map((name) => [name, db.$client.pragma(name, { simple: true })]),
      ),
    );
    expect(pragmas).toEqual({
      journal_mode: 'wal',
      synchronous: 2,
      foreign_keys: 1,
      busy_timeout: 5000,
      trusted_schema: 0,
      cell_size_check: 1,
      application_id: APPLICATION_ID,
      recursive_triggers: 1,
    });
  });

  test.each(['3.51.2', '3.50.9', '2.99.99'])('refuses SQLite %s', async (version) => {
    expect(await refusalOf(() => requireSqlite(version))).toMatchObject({ kind: 'old library', what: expect.stringContaining(version) });
  });
  test.each(['3.51.3', '3.51.10', '3.54.1', '4.0.0'])('takes SQLite %s', (version) => {
    expect(() => requireSqlite(version)).not.toThrow();
  });
});

describe('the folder', () => {
  test('is made, and told of, when only it is missing', async () => {
    const folder = join(temporaryFolder(), 'kitbound');
    const notes: string[] = [];
    const store = await open(folder, (note) => notes.push(note));
    store.close();
    expect(notes).toEqual(['The data folder was not there; a new one was made.']);
    if (process.platform !== 'win32') {
      expect(statSync(folder).mode & 0o777).toBe(0o700);
      expect(statSync(join(folder, 'kitbound.sqlite')).mode & 0o777).toBe(0o600);
    }
  });

  test('is not made when what it lies in is missing too', async () => {
    expect((await refusalOf(() => open(join(temporaryFolder(), 'unplugged', 'kitbound')))).kind).toBe('folder missing');
  });

  test('is refused when it is a file', async () => {
    const file = join(temporaryFolder(), 'file');
    writeFileSync(file, '');
    expect((await refusalOf(() => open(file))).kind).toBe('cannot write');
  });

  test('is refused when something lies where the store should', async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'kitbound.sqlite'));
    expect((await refusalOf(() => open(folder))).kind).toBe('cannot write');
  });
});

describe('a file that is not our store', () => {
  test("another program's database is refused and not touched", async () => {
    const folder = temporaryFolder();
    const file = join(folder, 'kitbound.sqlite');
    const other = new Database(file);
    other.exec('create table theirs (id)');
    other.close();
    const before = statSync(file).mtimeMs;
    expect((await refusalOf(() => open(folder))).kind).toBe('not ours');
    const after = new Database(file, { readonly: true });
    expect([after.pragma('journal_mode', { simple: true }), after.pragma('application_id', { simple: true })]).toEqual(['delete', 0]);
    after.close();
    expect(statSync(file).mtimeMs).toBe(before);
  });

  test('a text file is refused as damaged and kept', async () => {
    const folder = temporaryFolder();
    const text = 'A list of things to buy.\n'.repeat(400);
    writeFileSync(join(folder, 'kitbound.sqlite'), text);
    const error = await refusalOf(() => open(folder));
    expect(error).toMatchObject({ kind: 'damaged', snapshot: null });
    expect(error.todo).toContain('There is no good snapshot');
    expect(statSync(join(folder, 'kitbound.sqlite')).size).toBe(text.length);
  });
});

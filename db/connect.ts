/**
 * Opens the file of a store, with everything that SQLite leaves weaker than we want it set right.
 */
import { closeSync, existsSync, openSync } from 'node:fs';
import Database from 'better-sqlite3';
import { APPLICATION_ID } from './migrate.ts';
import { StoreError } from './trouble.ts';

/** Older libraries can lose a write when a checkpoint and a reset of the write-ahead log meet. */
const OLDEST_SQLITE = [3, 51, 3] as const;
const BUSY_TIMEOUT_MS = 5000;

/**
 * Connect to a file for reading and writing; made when it is missing, readable by this user alone.
 * @throws StoreError `not ours` for another program's database; SQLite's own errors otherwise
 */
export function connect(file: string): Database.Database {
  if (!existsSync(file)) closeSync(openSync(file, 'wx', 0o600));
  const client = new Database(file, { timeout: BUSY_TIMEOUT_MS });
  try {
    requireOurs(client);
    client.pragma('journal_mode = wal');
    client.pragma('synchronous = full');
    client.pragma('fullfsync = on');
    client.pragma('checkpoint_fullfsync = on');
    client.pragma('foreign_keys = on');
    // Without it INSERT OR REPLACE takes a frozen row away past its trigger.
    client.pragma('recursive_triggers = on');
    client.pragma('trusted_schema = off');
    client.pragma('cell_size_check = on');
    return client;
  } catch (error) {
    client.close();
    throw error;
  }
}

/** A file without our mark is ours only while it is empty, which is how a start that was cut short leaves it. */
export function requireOurs(client: Database.Database): void {
  const mark = client.pragma('application_id', { simple: true });
  if (mark === APPLICATION_ID) return;
  const tables = client.prepare('select count(*) from sqlite_schema').pluck().get();
  if (mark === 0 && tables === 0) return;
  throw new StoreError('not ours', {
    what: "The store file in the data folder is another program's database.",
    kept: 'It was not touched.',
    todo: 'Move it away, or start with another data folder.',
  });
}

/** Version of the SQLite library that is linked in. */
export function sqliteVersion(): string {
  const client = new Database(':memory:');
  try {
    return String(client.prepare('select sqlite_version()').pluck().get());
  } finally {
    client.close();
  }
}

/**
 * Refuse a library that is known to lose writes.
 * @throws StoreError `old library`
 */
export function requireSqlite(version: string): void {
  const parts = version.split('.').map(Number);
  const at = OLDEST_SQLITE.findIndex((part, index) => parts[index] !== part);
  if (at < 0 || (parts[at] ?? 0) > (OLDEST_SQLITE[at] ?? 0)) return;
  throw new StoreError('old library', {
    what: `The SQLite library is ${version}; Kitbound needs ${OLDEST_SQLITE.join('.')} or newer, because older ones can lose a save.`,
    kept: 'The store was not touched.',
    todo: 'Install the packages of this version anew.',
  });
}

/**
 * Runs the SQL that drizzle-kit makes. Its own migrator is not used: it opens a transaction before foreign keys are off, so that rebuilding
 * a parent table deletes its children, and it does not notice edited, missing or later files.
 */
import { createHash } from 'node:crypto';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type Database from 'better-sqlite3';
import { StoreError, storeTroubleBehind } from './trouble.ts';

/** "Kitb" in ASCII: marks the file as ours. */
export const APPLICATION_ID = 0x4b697462;

/** Where the migrations lie, unless the program was bundled. */
export const MIGRATIONS_FOLDER = fileURLToPath(new URL('../migrations', import.meta.url));

export type Migration = { number: number; name: string; checksum: string; sql: string };

/**
 * The migrations of this program, in order. Files are named `0000_name.sql`, `0001_name.sql` and so on without a gap.
 * @throws StoreError `migrations differ` when the folder itself has a gap or a number twice
 */
export function readMigrations(folder: string): Migration[] {
  const files = readdirSync(folder)
    .filter((file) => /^\d{4}_\w+\.sql$/.test(file))
    .toSorted();
  return files.map((file, number) => {
    if (Number(file.slice(0, 4)) !== number) throw differ('This copy of Kitbound is not whole: the steps that build the store have a gap.');
    // A checkout may have changed the ends of lines; that is no change of meaning.
    const sql = readFileSync(join(folder, file), 'utf8').replaceAll('\r\n', '\n');
    return { number, name: file.slice(0, -'.sql'.length), checksum: createHash('sha256').update(sql).digest('hex'), sql };
  });
}

/**
 * The migrations that this file still needs.
 * @throws StoreError `newer version` when a newer program wrote it, `migrations differ` when what was applied is not what we know
 */
export function pendingMigrations(client: Database.Database, known: Migration[]): Migration[] {
  const applied = appliedMigrations(client);
  const newest = applied.at(-1)?.number ?? -1;
  if (newest >= known.length)
    throw new StoreError('newer version', {
      what: `The store was written by a newer Kitbound: its schema is ${newest + 1}, this one knows up to ${known.length}.`,
      kept: 'The store was not touched.',
      todo: 'Start the newer Kitbound, or update this one.',
    });
  for (const [number, row] of applied.entries()) {
    const file = known[number];
    if (row.number !== number || !file) throw differ(`The store lacks step ${number} of ${newest}, which came before what it has.`);
    if (row.name !== file.name)
      throw differ(`Step ${number} of the store is "${row.name}", this Kitbound has "${file.name}" in its place.`);
    if (row.checksum !== file.checksum) throw differ(`Step ${number} ("${file.name}") is not the one that built this store.`);
  }
  return known.slice(applied.length);
}

/**
 * Apply migrations in one transaction: all of them or none. Foreign keys are off meanwhile, because a rebuilt table is dropped and would
 * take its children along, and every reference is checked before the commit.
 * @param at epoch milliseconds
 * @throws StoreError `migration failed`, or trouble of the disk; the data is untouched then
 */
export function migrate(client: Database.Database, pending: Migration[], at: number): void {
  if (pending.length === 0) return;
  client.pragma('foreign_keys = off');
  try {
    const ending = pending.find(({ sql }) => TRANSACTION_CONTROL.test(sql));
    if (ending) throw new Error(`Migration ${ending.name} ends the transaction that it would run in.`);
    client.transaction(() => applyAll(client, pending, at)).exclusive();
  } catch (error) {
    throw storeTroubleBehind(error) ?? failed(error);
  } finally {
    client.pragma('foreign_keys = on');
  }
}

// A trigger's own BEGIN and END are not meant.
const TRANSACTION_CONTROL = /^\s*(commit|rollback|end transaction|vacuum|attach|detach)\b/im;

function applyAll(client: Database.Database, pending: Migration[], at: number): void {
  client.pragma(`application_id = ${APPLICATION_ID}`);
  client.exec(
    'create table if not exists applied_migrations (number integer primary key, name text not null, checksum text not null, applied_at integer not null) strict',
  );
  const note = client.prepare('insert into applied_migrations (number, name, checksum, applied_at) values (?, ?, ?, ?)');
  for (const { number, name, checksum, sql } of pending) {
    client.exec(sql);
    note.run(number, name, checksum, at);
  }
  const broken = client.pragma('foreign_key_check') as { table: string }[];
  const [first] = broken;
  if (first) throw new Error(`${broken.length} references are broken, the first in ${first.table}.`);
}

function appliedMigrations(client: Database.Database): { number: number; name: string; checksum: string }[] {
  const ledger = client.prepare("select 1 from sqlite_schema where type = 'table' and name = 'applied_migrations'").get();
  if (!ledger) return [];
  return client
    .prepare<[], { number: number; name: string; checksum: string }>(
      'select number, name, checksum from applied_migrations order by number',
    )
    .all();
}

function differ(what: string): StoreError {
  return new StoreError('migrations differ', {
    what,
    kept: 'The store was not touched.',
    todo: 'Start the Kitbound that wrote it last, or update this one.',
  });
}

function failed(cause: unknown): StoreError {
  return new StoreError(
    'migration failed',
    {
      what: 'The store could not be brought up to this version.',
      kept: 'Everything is as it was before; a snapshot was written first.',
      todo: 'Go back to the Kitbound that you had, and keep the data folder.',
    },
    { cause },
  );
}

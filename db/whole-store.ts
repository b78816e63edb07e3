/**
 * A store filled from another one, or emptied, in one transaction: all of it or nothing.
 */
import type Database from 'better-sqlite3';
import { layout } from './folder.ts';
import type { ReadableDb } from './store.ts';
import { StoreError } from './trouble.ts';

const LEDGER = 'applied_migrations';
/** The ledger of migrations and the edition of the zone data belong to the file, not to what a person put in it. */
const OF_THE_FILE = new Set([LEDGER, 'zone_data']);

/** What the find box is kept by is not among them: triggers make it from the others. */
function tablesOf(client: Database.Database): string[] {
  return client
    .prepare<[], string>(
      "select name from sqlite_schema where type = 'table' and name not like 'sqlite_%' and name not like 'find@_%' escape '@' order by name",
    )
    .pluck()
    .all()
    .filter((name) => !OF_THE_FILE.has(name));
}

const hasRows = (client: Database.Database, table: string): boolean =>
  client.prepare(`select exists (select 1 from "${table}")`).pluck().get() === 1;

/** True while nothing at all was put on the books. */
export function holdsNothing({ $client }: ReadableDb): boolean {
  return !tablesOf($client).some((table) => hasRows($client, table));
}

/**
 * Put every row of another store into this one, which must hold nothing. Papers are files and do not come along.
 * @param folder data folder of the other store, which must be closed and of the same schema
 * @throws StoreError `not empty`, `migrations differ`; nothing was put in then
 */
export function takeOver(client: Database.Database, folder: string): void {
  client.prepare('attach database ? as other').run(layout(folder).store);
  try {
    client
      .transaction(() => {
        const tables = tablesOf(client);
        if (tables.some((table) => hasRows(client, table))) throw new StoreError('not empty', NOT_EMPTY);
        const steps = (of: string) => JSON.stringify(client.prepare(`select number, checksum from ${of}.${LEDGER} order by number`).all());
        if (steps('main') !== steps('other')) throw new StoreError('migrations differ', OTHER_SCHEMA);
        // Tables come in order of their names, so that a row may arrive before the one that it refers to; the commit checks them all.
        client.pragma('defer_foreign_keys = on');
        for (const table of tables) client.exec(`insert into main."${table}" select * from other."${table}" order by rowid`);
      })
      .immediate();
  } finally {
    client.exec('detach database other');
  }
}

/** Take every row out. Frozen rows are guarded by triggers, which step aside inside this one transaction only; those of the find box stay. */
export function emptyOut(client: Database.Database): void {
  client.pragma('foreign_keys = off');
  try {
    client
      .transaction(() => {
        const guards = client
          .prepare<[], { name: string; sql: string }>(
            "select name, sql from sqlite_schema where type = 'trigger' and name not like 'find@_%' escape '@'",
          )
          .all();
        for (const { name } of guards) client.exec(`drop trigger "${name}"`);
        for (const table of tablesOf(client)) client.exec(`delete from "${table}"`);
        for (const { sql } of guards) client.exec(sql);
      })
      .immediate();
  } finally {
    client.pragma('foreign_keys = on');
  }
}

const NOT_EMPTY = {
  what: 'The store holds something already.',
  kept: 'All of it is kept; nothing was put in.',
  todo: 'Start with an empty data folder: npm start -- --data DIR.',
};
const OTHER_SCHEMA = {
  what: 'What was to be put in is of another version of the store.',
  kept: 'Nothing was put in.',
  todo: 'Start Kitbound again and try once more.',
};

/**
 * Looks whether a file is a whole store. SQLite's quick check misses most damage, so a file that is to be relied on gets the full one.
 */
import Database from 'better-sqlite3';
import { requireOurs } from './connect.ts';
import { APPLICATION_ID } from './migrate.ts';
import { LOOK_THROUGH_LIMIT_BYTES } from './seal.ts';
import { storeError } from './trouble.ts';

/** Rows in each table, by its name; what the find box is kept by is made from them and not counted. */
export type Counts = Record<string, number>;

export function countRows(client: Database.Database): Counts {
  const tables = client
    .prepare<[], string>(
      "select name from sqlite_schema where type = 'table' and name not like 'sqlite_%' and name not like 'find@_%' escape '@' order by name",
    )
    .pluck()
    .all();
  return Object.fromEntries(tables.map((table) => [table, Number(client.prepare(`select count(*) from "${table}"`).pluck().get())]));
}

/**
 * Full integrity and foreign-key check.
 * @throws StoreError `damaged`, `not ours`
 */
export function requireWhole(client: Database.Database): void {
  requireOurs(client);
  if (client.pragma('application_id', { simple: true }) !== APPLICATION_ID) throw storeError('damaged', new Error('The file is empty.'));
  client.pragma('cell_size_check = on');
  const findings = client.pragma('integrity_check(1)', { simple: true });
  if (findings !== 'ok') throw storeError('damaged', new Error(String(findings)));
  const broken = client.pragma('foreign_key_check') as unknown[];
  if (broken.length > 0) throw storeError('damaged', new Error(`${broken.length} broken references`));
}

/** Notice damage at start, within a budget. @throws StoreError `damaged` */
export function requireSound(client: Database.Database): void {
  const bytes = Number(client.pragma('page_count', { simple: true })) * Number(client.pragma('page_size', { simple: true }));
  if (bytes > LOOK_THROUGH_LIMIT_BYTES) return;
  const findings = client.pragma('quick_check(1)', { simple: true });
  if (findings !== 'ok') throw storeError('damaged', new Error(String(findings)));
}

/**
 * Why migrations run through a runner of our own: the library's migrator loses the children of a rebuilt table, without a word.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { drizzle } from 'drizzle-orm/better-sqlite3';
import { migrate as drizzleMigrate } from 'drizzle-orm/better-sqlite3/migrator';
import { expect, test } from 'vitest';
import { migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { temporaryFolder } from '../store.ts';

const BREAK = '\n--> statement-breakpoint\n';
const begin = [
  'CREATE TABLE `parents` (`id` integer PRIMARY KEY NOT NULL) STRICT;',
  'CREATE TABLE `children` (`id` integer PRIMARY KEY NOT NULL, `parent` integer NOT NULL REFERENCES `parents`(`id`) ON DELETE CASCADE) STRICT;',
].join(BREAK);
// As drizzle-kit writes it when a column of a parent changes.
const rebuild = [
  'PRAGMA foreign_keys=OFF;',
  'CREATE TABLE `__new_parents` (`id` integer PRIMARY KEY NOT NULL, `name` text) STRICT;',
  'INSERT INTO `__new_parents`("id") SELECT "id" FROM `parents`;',
  'DROP TABLE `parents`;',
  'ALTER TABLE `__new_parents` RENAME TO `parents`;',
  'PRAGMA foreign_keys=ON;',
].join(BREAK);

function folderOf(...migrations: string[]): string {
  const folder = temporaryFolder();
  mkdirSync(join(folder, 'meta'));
  const entries = migrations.map((sql, idx) => {
    const tag = `000${idx}_step`;
    writeFileSync(join(folder, `${tag}.sql`), sql);
    return { idx, version: '6', when: 1000 * (idx + 1), tag, breakpoints: true };
  });
  writeFileSync(join(folder, 'meta', '_journal.json'), JSON.stringify({ version: '7', dialect: 'sqlite', entries }));
  return folder;
}

function fill(client: Database.Database): void {
  client.exec('insert into parents (id) values (1), (2); insert into children (id, parent) values (1, 1), (2, 1), (3, 2)');
}
const children = (client: Database.Database) => client.prepare('select count(*) from children').pluck().get();

test("the library's migrator loses every child of a rebuilt parent", () => {
  const client = new Database(':memory:');
  drizzleMigrate(drizzle({ client }), { migrationsFolder: folderOf(begin) });
  fill(client);
  drizzleMigrate(drizzle({ client }), { migrationsFolder: folderOf(begin, rebuild) });
  expect(children(client)).toBe(0);
});

test('ours keeps them, and foreign keys are on afterwards', () => {
  const client = new Database(':memory:');
  migrate(client, readMigrations(folderOf(begin)), 0);
  fill(client);
  migrate(client, pendingMigrations(client, readMigrations(folderOf(begin, rebuild))), 0);
  expect(children(client)).toBe(3);
  expect(client.pragma('foreign_keys', { simple: true })).toBe(1);
  expect(() => client.exec('insert into children (id, parent) values (4, 9)')).toThrow(/FOREIGN KEY/);
});

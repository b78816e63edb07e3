/**
 * Rows of the migration of packs: what was packed lives through every later one, goes with its job, and no more comes back than went out.
 */
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { NOW } from '../store.ts';

const rows = `
  insert into jobs (id, title, stage, role, questions, spans, received_at, received_zone, deliverables, created_at, updated_at)
    values ('j', 'Curling', 'pencilled', 'shoot', '[]', '[]', 1, 'America/Chicago', '[]', 1, 1);
  insert into kit_items (id, name, fields, created_at, updated_at) values ('i', 'Camera', '{}', 1, 1);
  insert into job_packs (job_id, item_id, serial, out, back, missing, updated_at) values ('j', 'i', 'A1', 1, 0, 1, 5), ('j', 'i', '', 6, 4, 0, 5);
`;

function packed(): Database.Database {
  const client = new Database(':memory:');
  const known = readMigrations(MIGRATIONS_FOLDER);
  migrate(client, known.slice(0, known.findIndex(({ name }) => name.endsWith('_packs')) + 1), NOW);
  client.pragma('foreign_keys = on');
  client.exec(rows);
  return client;
}
const kept = (client: Database.Database) => client.prepare('select serial, out, back, missing from job_packs order by serial').all();

test('they live through every later migration', () => {
  const client = packed();
  migrate(client, pendingMigrations(client, readMigrations(MIGRATIONS_FOLDER)), NOW);
  expect(kept(client)).toEqual([
    { serial: '', out: 6, back: 4, missing: 0 },
    { serial: 'A1', out: 1, back: 0, missing: 1 },
  ]);
});

test('they go with their job', () => {
  const client = packed();
  client.exec("delete from jobs where id = 'j'");
  expect(kept(client)).toEqual([]);
});

test.each([
  ['more back than went out', 'update job_packs set back = 7', /job_packs_counts/],
  ['one that is back and missing at once', "update job_packs set back = 1 where serial = 'A1'", /job_packs_counts/],
  ['two of one serial', "update job_packs set out = 2 where serial = 'A1'", /job_packs_unit/],
  ['nothing that went out', 'update job_packs set out = 0, back = 0, missing = 0', /job_packs_counts/],
])('%s is refused', (_, sql, why) => {
  expect(() => packed().exec(sql)).toThrow(why);
});

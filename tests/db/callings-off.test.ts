/**
 * Rows of the sixth migration: a calling off lives through every later one, goes with its job, and is not told after it was written down.
 */
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { NOW } from '../store.ts';

const rows = `
  insert into jobs (id, title, stage, role, questions, spans, received_at, received_zone, deliverables, created_at, updated_at)
    values ('j', 'Curling', 'cancelled', 'shoot', '[]', '[]', 1, 'America/Chicago', '[]', 1, 1);
  insert into callings_off (id, job_id, at, told_at, quote_version, days_before, owes) values ('c', 'j', 5, 4, 1, '[]', '{}');
`;

function sixth(): Database.Database {
  const client = new Database(':memory:');
  migrate(client, readMigrations(MIGRATIONS_FOLDER).slice(0, 6), NOW);
  client.pragma('foreign_keys = on');
  client.exec(rows);
  return client;
}
const kept = (client: Database.Database) => client.prepare('select id, told_at, postponed_to from callings_off').all();

test('it lives through every later migration', () => {
  const client = sixth();
  migrate(client, pendingMigrations(client, readMigrations(MIGRATIONS_FOLDER)), NOW);
  expect(kept(client)).toEqual([{ id: 'c', told_at: 4, postponed_to: null }]);
});

test('it goes with its job', () => {
  const client = sixth();
  client.exec("delete from jobs where id = 'j'");
  expect(kept(client)).toEqual([]);
});

test.each([
  ['one that is told after it was written down', 'update callings_off set told_at = 6', /callings_off_told_by_then/],
  ['figures that are no document', "update callings_off set owes = 'x'", /callings_off_json/],
  ['one of no job', "update callings_off set job_id = 'x'", /FOREIGN KEY/],
])('%s is refused', (_, sql, why) => {
  expect(() => sixth().exec(sql)).toThrow(why);
});

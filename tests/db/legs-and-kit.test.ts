/**
 * Rows of the fourth migration: legs, kit, own time and challenges live through every later one, go with their job, and keep to their bounds.
 */
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { NOW } from '../store.ts';

const TABLES = ['legs', 'kit_items', 'kit_presets', 'job_kit', 'personal_times', 'challenges'];
const rows = `
  insert into jobs (id, title, stage, role, questions, spans, received_at, received_zone, deliverables, created_at, updated_at)
    values ('j', 'Curling', 'pencilled', 'shoot', '[]', '[]', 1, 'America/Chicago', '[]', 1, 1);
  insert into pencils (id, job_id, pencilled_at, expires_wall, expires_zone, expires_at, state)
    values ('p', 'j', 1, '2026-12-03T09:00', 'America/Chicago', 2, 'held');
  insert into legs (id, job_id, depart_at, arrive_at, fields, updated_at) values ('l', 'j', 1, 2, '{}', 1);
  insert into kit_items (id, name, fields, created_at, updated_at) values ('i', 'Camera', '{}', 1, 1);
  insert into kit_presets (id, name, needs, updated_at) values ('s', 'Two cameras', '[]', 1);
  insert into job_kit (job_id, item_id, count) values ('j', 'i', 2);
  insert into personal_times (id, title, from_wall, to_wall, zone, start_at, end_at, hardness, updated_at)
    values ('t', 'Choir', '2026-12-03T18:00', '2026-12-03T20:00', 'America/Chicago', 1, 2, 'never', 1);
  insert into challenges (id, pencil_id, asked_at, until_at, until_zone) values ('c', 'p', 1, 2, 'America/Chicago');
`;

function fourth(): Database.Database {
  const client = new Database(':memory:');
  migrate(client, readMigrations(MIGRATIONS_FOLDER).slice(0, 4), NOW);
  client.pragma('foreign_keys = on');
  client.exec(rows);
  return client;
}
const count = (client: Database.Database, table: string) => client.prepare<[], number>(`select count(*) from ${table}`).pluck().get();

test('they live through every later migration', () => {
  const client = fourth();
  migrate(client, pendingMigrations(client, readMigrations(MIGRATIONS_FOLDER)), NOW);
  for (const table of TABLES) expect([table, count(client, table)]).toEqual([table, 1]);
});

test('what hangs on a job goes with it; what I own and my own time stay', () => {
  const client = fourth();
  client.exec("delete from jobs where id = 'j'");
  expect(TABLES.filter((table) => count(client, table) === 1)).toEqual(['kit_items', 'kit_presets', 'personal_times']);
});

test.each([
  ['a leg that arrives before it leaves', 'update legs set arrive_at = 1', /legs_arrive_after_depart/],
  ['a need of nothing', 'update job_kit set count = 0', /job_kit_count/],
  ['a thing that a job needs', "delete from kit_items where id = 'i'", /FOREIGN KEY/],
  ['own time that ends before it begins', 'update personal_times set end_at = 0', /personal_times_end_after_start/],
  ['a challenge that is over before it is asked', 'update challenges set until_at = 1', /challenges_until_after_asked/],
])('%s is refused', (_, sql, why) => {
  expect(() => fourth().exec(sql)).toThrow(why);
});

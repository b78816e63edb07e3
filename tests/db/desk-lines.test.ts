/**
 * Rows of the seventh migration: a pencil from before it has no end, one that ended keeps its moment, and a line put away stays away.
 */
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { NOW } from '../store.ts';

const pencil = (id: string, state: string, more = '') => `
  insert into jobs (id, title, stage, role, questions, spans, received_at, received_zone, deliverables, created_at, updated_at)
    values ('j${id}', 'Curling', 'let go', 'shoot', '[]', '[]', 1, 'America/Chicago', '[]', 1, 1);
  insert into pencils (id, job_id, pencilled_at, expires_wall, expires_zone, expires_at, state${more ? ', ended_at' : ''})
    values ('${id}', 'j${id}', 1, '2026-12-03T09:00', 'America/Chicago', 2, '${state}'${more});`;

function built(steps: number): Database.Database {
  const client = new Database(':memory:');
  migrate(client, readMigrations(MIGRATIONS_FOLDER).slice(0, steps), NOW);
  client.pragma('foreign_keys = on');
  return client;
}
const ends = (client: Database.Database) => client.prepare('select id, ended_at from pencils order by id').all();

test('a pencil that was let go before has no end, and lives on', () => {
  const client = built(6);
  client.exec(pencil('p', 'let go'));
  migrate(client, pendingMigrations(client, readMigrations(MIGRATIONS_FOLDER)), NOW);
  expect(ends(client)).toEqual([{ id: 'p', ended_at: null }]);
});

test('an end and a line that was put away live through every later migration', () => {
  const client = built(7);
  client.exec(pencil('p', 'let go', ', 7'));
  client.exec("insert into put_away_lines (line, at) values ('moved-up:p:q', 8)");
  migrate(client, pendingMigrations(client, readMigrations(MIGRATIONS_FOLDER)), NOW);
  expect(ends(client)).toEqual([{ id: 'p', ended_at: 7 }]);
  expect(client.prepare('select * from put_away_lines').all()).toEqual([{ line: 'moved-up:p:q', at: 8 }]);
});

test('a line is put away once', () => {
  const client = built(7);
  client.exec("insert into put_away_lines (line, at) values ('a', 8)");
  expect(() => client.exec("insert into put_away_lines (line, at) values ('a', 9)")).toThrow(/UNIQUE/);
});

/**
 * Rows of the migration of hands' dates: they live through every later one, go with their job, and each date is kept once.
 */
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { NOW } from '../store.ts';

const rows = `
  insert into jobs (id, title, stage, role, questions, spans, received_at, received_zone, deliverables, created_at, updated_at)
    values ('j', 'Curling', 'pencilled', 'shoot', '[]', '[]', 1, 'America/Chicago', '[]', 1, 1);
  insert into hands (id, name, fields, created_at, updated_at) values ('h', 'Bo', '{}', 1, 1);
  insert into hand_dates (id, job_id, hand_id, date, state, asked_at, at, how, created_at, updated_at)
    values ('a', 'j', 'h', '2026-12-12', 'said yes', 1, 2, 'by phone', 1, 2);
`;

function asked(): Database.Database {
  const client = new Database(':memory:');
  const known = readMigrations(MIGRATIONS_FOLDER);
  migrate(client, known.slice(0, known.findIndex(({ name }) => name.endsWith('_hand_dates')) + 1), NOW);
  client.pragma('foreign_keys = on');
  client.exec(rows);
  return client;
}
const kept = (client: Database.Database) => client.prepare('select date, state, how from hand_dates').all();

test('they live through every later migration', () => {
  const client = asked();
  migrate(client, pendingMigrations(client, readMigrations(MIGRATIONS_FOLDER)), NOW);
  expect(kept(client)).toEqual([{ date: '2026-12-12', state: 'said yes', how: 'by phone' }]);
});

test('they go with their job', () => {
  const client = asked();
  client.exec("delete from jobs where id = 'j'");
  expect(kept(client)).toEqual([]);
});

test.each([
  ['a state that is none', "update hand_dates set state = 'perhaps'", /hand_dates_state/],
  ['a date that is none', "update hand_dates set date = '12 December'", /hand_dates_date/],
  [
    'a date twice',
    "insert into hand_dates (id, job_id, hand_id, date, state, asked_at, at, created_at, updated_at) values ('b', 'j', 'h', '2026-12-12', 'asked', 1, 1, 1, 1)",
    /UNIQUE/,
  ],
  ['a hand who is still named', "delete from hands where id = 'h'", /FOREIGN KEY/],
])('%s is refused', (_, sql, why) => {
  expect(() => asked().exec(sql)).toThrow(why);
});

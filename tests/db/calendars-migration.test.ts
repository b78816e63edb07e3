/**
 * Rows of the migration of calendars: they live through every later one, and what cannot be is refused.
 */
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { NOW } from '../store.ts';

const rows = `
  insert into calendars (id, name, path, zone, hardness, is_on, updated_at, read_at, stamp, read_from, events)
    values ('c', 'Family', '/home/me/family.ics', 'America/Chicago', 'never', 1, 1, 2, 'family.ics 10 1', 0, 1);
  insert into imported_events (calendar_id, number, uid, title, start_at, end_at, is_all_day, is_tentative)
    values ('c', 0, 'choir@example.invalid', 'Choir', 10, 20, 0, 0);
  insert into calendar_out (id, folder, is_on, feed_port, feed_key, updated_at) values (1, '/home/me/out', 1, 4242, 'abc', 1);
  insert into exported_events (uid, sequence, event, changed_at) values ('j-1@kitbound', 3, '{"status":"CANCELLED"}', 5);
`;

function ofThen(): Database.Database {
  const client = new Database(':memory:');
  migrate(client, readMigrations(MIGRATIONS_FOLDER).slice(0, 21), NOW);
  client.pragma('foreign_keys = on');
  client.exec(rows);
  return client;
}
const count = (client: Database.Database, table: string) => client.prepare(`select count(*) from ${table}`).pluck().get();

test('they live through every later migration', () => {
  const client = ofThen();
  migrate(client, pendingMigrations(client, readMigrations(MIGRATIONS_FOLDER)), NOW);
  expect(client.prepare('select name, hardness, left_out, trouble from calendars').all()).toEqual([
    { name: 'Family', hardness: 'never', left_out: '[]', trouble: null },
  ]);
  expect(client.prepare('select title, start_at, end_at from imported_events').all()).toEqual([
    { title: 'Choir', start_at: 10, end_at: 20 },
  ]);
  expect(client.prepare('select feed_port, feed_key from calendar_out').all()).toEqual([{ feed_port: 4242, feed_key: 'abc' }]);
  expect(client.prepare('select sequence from exported_events').all()).toEqual([{ sequence: 3 }]);
});

test('what a calendar takes goes with it', () => {
  const client = ofThen();
  client.exec("delete from calendars where id = 'c'");
  expect(count(client, 'imported_events')).toBe(0);
});

test.each([
  ['a hardness that is none', "update calendars set hardness = 'hard'", /calendars_hardness/],
  ['a reading without its stamp', 'update calendars set stamp = null', /calendars_read_whole/],
  ['trouble without its time', "update calendars set trouble = '{}'", /calendars_trouble_whole/],
  ['an end before its beginning', 'update imported_events set end_at = 10', /imported_events_end_after_start/],
  ['a stretch of more than 100 days', 'update imported_events set end_at = 8640000011', /imported_events_longest/],
  ['a second place to write to', "insert into calendar_out (id, folder, is_on, updated_at) values (2, '/', 1, 1)", /calendar_out_one/],
  ['a feed without a port', 'update calendar_out set feed_port = null', /calendar_out_feed/],
  ['a port of the system', 'update calendar_out set feed_port = 80', /calendar_out_port/],
  ['a sequence below zero', 'update exported_events set sequence = -1', /exported_events_sequence/],
])('%s is refused', (_, sql, why) => {
  expect(() => ofThen().exec(sql)).toThrow(why);
});

/**
 * Rows of the migration that brought edits and clock rules: they live through every later one, and there is one row of zone data.
 */
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { NOW } from '../store.ts';

const rows = `
  insert into jobs (id, title, stage, role, questions, spans, received_at, received_zone, deliverables, edits, created_at, updated_at)
    values ('j', 'Curling', 'quoted', 'shoot', '[]', '[]', 1, 'America/Chicago', '["a film"]', '[{"what":"a film","due":null,"hours":"6"}]', 1, 1);
  insert into zone_data (id, version, at) values (1, '2026b', 1);
  insert into clock_notes (id, at, job_id, sentence) values ('n', 1, 'j', 'Call is now an hour later.');
`;

function eleventh(): Database.Database {
  const client = new Database(':memory:');
  migrate(client, readMigrations(MIGRATIONS_FOLDER).slice(0, 11), NOW);
  client.exec(rows);
  return client;
}

test('they live through every later migration', () => {
  const client = eleventh();
  migrate(client, pendingMigrations(client, readMigrations(MIGRATIONS_FOLDER)), NOW);
  expect(client.prepare('select edits from jobs').pluck().get()).toBe('[{"what":"a film","due":null,"hours":"6"}]');
  expect(client.prepare('select version from zone_data').pluck().all()).toEqual(['2026b']);
  expect(client.prepare('select sentence, put_away_at from clock_notes').all()).toEqual([
    { sentence: 'Call is now an hour later.', put_away_at: null },
  ]);
});

test('a second row of zone data is refused', () => {
  expect(() => eleventh().exec("insert into zone_data (id, version, at) values (2, '2026c', 1)")).toThrow(/zone_data_one_row/);
});

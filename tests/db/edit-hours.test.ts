/**
 * Rows of the time before a deliverable could have hours in place of minutes: they keep their numbers and have no such hours.
 */
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { NOW } from '../store.ts';

const rows = `
  insert into jobs (id, title, stage, role, questions, spans, received_at, received_zone, deliverables, created_at, updated_at)
    values ('j', 'Curling', 'inquiry', 'shoot', '[]', '[]', 1, 'America/Chicago', '[]', 1, 1);
  insert into deliverables (id, job_id, position, name, finished_minutes, edit_hours_per_minute, ingest_hours, rounds, hours_per_round,
    window_days, internal_days, format, same_day, created_at, updated_at) values ('d', 'j', 1, 'Highlight', '3', '4', '2', 2, '2.5', 3, 1, '{}', 0, 1, 1);
`;

test('what was there has its numbers and no hours in their place; hours can be put there', () => {
  const client = new Database(':memory:');
  const known = readMigrations(MIGRATIONS_FOLDER);
  migrate(
    client,
    known.slice(
      0,
      known.findIndex(({ name }) => name.endsWith('_edit_hours')),
    ),
    NOW,
  );
  client.exec(rows);
  migrate(client, pendingMigrations(client, known), NOW);
  const kept = () => client.prepare('select finished_minutes, edit_hours_per_minute, edit_hours from deliverables').get();
  expect(kept()).toEqual({ finished_minutes: '3', edit_hours_per_minute: '4', edit_hours: null });
  client.exec("update deliverables set edit_hours = '12.5'");
  expect(kept()).toMatchObject({ edit_hours: '12.5' });
});

/**
 * The migration of round moves: a round from before it moved no date, and what moves one since is kept.
 */
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { NOW } from '../store.ts';

const NUMBERS =
  'finished_minutes, edit_hours_per_minute, ingest_hours, rounds, hours_per_round, window_days, internal_days, format, same_day';
const rows = `
  insert into jobs (id, title, stage, role, questions, spans, received_at, received_zone, deliverables, created_at, updated_at)
    values ('j', 'Curling', 'inquiry', 'shoot', '[]', '[]', 1, 'America/Chicago', '[]', 1, 1);
  insert into deliverables (id, job_id, position, name, ${NUMBERS}, due_date, created_at, updated_at)
    values ('d', 'j', 1, 'Highlight', '3', '4', '2', 2, '2.5', 3, 1, '{}', 0, '2026-12-18', 1, 1);
  insert into rounds (id, deliverable_id, number, what, sent_at, window_days, due_back, included)
    values ('r', 'd', 1, 'Rough cut', 5, 3, '2026-12-08', 1);`;

test('a round from before moved no date; one that does keeps what it moved', () => {
  const client = new Database(':memory:');
  const known = readMigrations(MIGRATIONS_FOLDER);
  migrate(
    client,
    known.slice(
      0,
      known.findIndex(({ name }) => name.endsWith('_round_moves')),
    ),
    NOW,
  );
  client.exec(rows);
  migrate(client, pendingMigrations(client, readMigrations(MIGRATIONS_FOLDER)), NOW);
  expect(client.prepare('select id, what, moved from rounds').all()).toEqual([{ id: 'r', what: 'Rough cut', moved: null }]);
  const moved = '{"lost":3,"from":"2026-12-18","to":"2026-12-23","internalFrom":null,"internalTo":null}';
  client.prepare('update rounds set moved = ?').run(moved);
  expect(client.prepare('select moved from rounds').pluck().get()).toBe(moved);
});

/**
 * The migration of a hand-over's words: one from before has no message and stands; since then it can be taken back with a reason.
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
  insert into hand_overs (id, deliverable_id, how, where_to, at, originals, originals_until, hash_kind, files)
    values ('h', 'd', 'disk', 'Disk 4', 5, 'kept until', '2027-03-01', 'xxh128', '[]');`;

test('a hand-over from before stands as it was, and can be taken back', () => {
  const client = new Database(':memory:');
  const known = readMigrations(MIGRATIONS_FOLDER);
  migrate(
    client,
    known.slice(
      0,
      known.findIndex(({ name }) => name.endsWith('_hand_over_words')),
    ),
    NOW,
  );
  client.exec(rows);
  migrate(client, pendingMigrations(client, readMigrations(MIGRATIONS_FOLDER)), NOW);
  const words = 'message_subject, message_text, originals_gone_why, taken_back_at, taken_back_why';
  expect(client.prepare(`select where_to, originals_until, ${words} from hand_overs`).get()).toEqual({
    where_to: 'Disk 4',
    originals_until: '2027-03-01',
    message_subject: '',
    message_text: '',
    originals_gone_why: '',
    taken_back_at: null,
    taken_back_why: '',
  });
  client.exec("update hand_overs set taken_back_at = 9, taken_back_why = 'the wrong disk'");
  expect(client.prepare('select taken_back_at, taken_back_why from hand_overs').raw().get()).toEqual([9, 'the wrong disk']);
});

/**
 * Rows of the migration of deliverables: they live through every later one and go with their job; what must never be is refused.
 */
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { NOW } from '../store.ts';

const numbers =
  'finished_minutes, edit_hours_per_minute, ingest_hours, rounds, hours_per_round, window_days, internal_days, format, same_day';
const values = `'3', '4', '2', 2, '2.5', 3, 1, '{"codec":"ProRes"}', 0`;
const rows = `
  insert into jobs (id, title, stage, role, questions, spans, received_at, received_zone, deliverables, created_at, updated_at)
    values ('j', 'Curling', 'inquiry', 'shoot', '[]', '[]', 1, 'America/Chicago', '[]', 1, 1);
  insert into templates (id, name, ${numbers}, due, created_at, updated_at)
    values ('t', 'Highlight', ${values}, '{"days":10,"count":"business","from":"last wrap"}', 1, 1);
  insert into deliverables (id, job_id, template_id, position, name, made_from, ${numbers}, due_date, agreed_due_date, internal_date, created_at, updated_at)
    values ('d', 'j', 't', 1, 'Three minute highlight', 'line/0', ${values}, '2026-12-18', '2026-12-16', '2026-12-17', 1, 1);
  insert into stages (id, deliverable_id, position, kind, half_hours, release_date, done_at) values
    ('s1', 'd', 1, 'ingest', 4, null, 9), ('s2', 'd', 2, 'fine cut', 24, '2026-12-03', null), ('s3', 'd', 3, 'delivered', 0, null, null);
  insert into pinned_blocks (id, stage_id, start_at, end_at) values ('p', 's2', 100, 200);
  insert into rounds (id, deliverable_id, stage_id, number, what, sent_at, window_days, due_back, notes_at, notes, included, price)
    values ('r', 'd', 's2', 1, 'Fine cut', 5, 3, '2026-12-08', 6, '00:10 shorter', 0, '{"minor":15000,"currency":"USD"}');
  insert into note_items (id, round_id, position, timecode, frame, to_frame, text) values ('n', 'r', 1, '00:00:10;00', 300, 330, 'shorter');
  insert into time_spent (id, deliverable_id, stage_id, start_at, end_at, typed) values ('w', 'd', 's2', 10, 20, 1), ('w2', 'd', 's2', 30, null, 0);
  insert into hand_overs (id, deliverable_id, how, where_to, at, originals, originals_until, hash_kind, files)
    values ('h', 'd', 'disk', 'Disk 4', 50, 'kept until', '2027-06-30', 'SHA-256', '[{"name":"a.mov","bytes":3,"hash":"ff"}]');
`;
const TABLES = ['deliverables', 'stages', 'pinned_blocks', 'rounds', 'note_items', 'time_spent', 'hand_overs'];

function promised(): Database.Database {
  const client = new Database(':memory:');
  const known = readMigrations(MIGRATIONS_FOLDER);
  migrate(client, known.slice(0, known.findIndex(({ name }) => name.endsWith('_deliverables')) + 1), NOW);
  client.pragma('foreign_keys = on');
  client.exec(rows);
  return client;
}
const all = (client: Database.Database) =>
  ['templates', ...TABLES].map((table) => client.prepare<[], object>(`select * from ${table} order by id`).all());

test('they live through every later migration', () => {
  const client = promised();
  const before = all(client);
  migrate(client, pendingMigrations(client, readMigrations(MIGRATIONS_FOLDER)), NOW);
  // A later migration may add columns.
  expect(all(client)).toEqual(before.map((table) => table.map((row) => expect.objectContaining(row))));
  expect(before.map((table) => table.length)).toEqual([1, 1, 3, 1, 1, 1, 2, 1]);
});

test('they go with their job; the template stays', () => {
  const client = promised();
  client.exec("delete from jobs where id = 'j'");
  expect(all(client).map((table) => table.length)).toEqual([1, 0, 0, 0, 0, 0, 0, 0]);
});

test('a template that goes leaves what was made from it', () => {
  const client = promised();
  client.exec("delete from templates where id = 't'");
  expect(client.prepare('select name, template_id from deliverables').all()).toEqual([
    { name: 'Three minute highlight', template_id: null },
  ]);
});

test('a stage that goes takes its pins along, and leaves its round and the time that it took', () => {
  const client = promised();
  client.exec("delete from stages where id = 's2'");
  expect(client.prepare('select count(*) from pinned_blocks').pluck().get()).toBe(0);
  expect(client.prepare('select stage_id from rounds union all select stage_id from time_spent').pluck().all()).toEqual([null, null, null]);
});

test.each([
  ['a second running clock', "insert into time_spent (id, deliverable_id, start_at, typed) values ('x', 'd', 40, 0)", /UNIQUE/],
  [
    'typed time without an end',
    "insert into time_spent (id, deliverable_id, start_at, typed) values ('x', 'd', 40, 1)",
    /time_spent_typed_ends|UNIQUE/,
  ],
  ['time that ends as it begins', 'update time_spent set end_at = start_at', /time_spent_end_after_start/],
  ['an internal date after the promised one', "update deliverables set internal_date = '2026-12-19'", /deliverables_internal_first/],
  ['a number of rounds below zero', 'update deliverables set rounds = -1', /deliverables_counts/],
  [
    'one line made twice',
    `insert into deliverables select 'e', job_id, template_id, 2, name, made_from, ${numbers}, due_date, agreed_due_date, internal_date, hand_id, off_at, 1, 1, 1 from deliverables`,
    /UNIQUE/,
  ],
  ['hours on a mark', "update stages set half_hours = 2 where id = 's3'", /stages_marks/],
  ['an unknown stage', "update stages set kind = 'colour'", /stages_kind/],
  ['two stages in one place', "update stages set position = 1 where id = 's2'", /UNIQUE/],
  ['a pin that ends as it begins', 'update pinned_blocks set end_at = 100', /pinned_blocks_end_after_start/],
  ['notes before the cut was sent', 'update rounds set notes_at = 4', /rounds_notes_after_sending/],
  ['a stretch of frames that runs backwards', 'update note_items set to_frame = 299', /note_items_frames/],
  ['a date for originals that are not kept', "update hand_overs set originals = 'never kept'", /hand_overs_until/],
  ['files that are no list', "update hand_overs set files = 'a.mov'", /hand_overs_files_json/],
])('%s is refused', (_, sql, why) => {
  expect(() => promised().exec(sql)).toThrow(why);
});

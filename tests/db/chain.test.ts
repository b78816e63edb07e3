/**
 * Rows of an older schema live through every later migration.
 */
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { NOW } from '../store.ts';

const job = "'[]', '[]', 1, 'America/Chicago', '[]', 1, 1";
/** Every table as it was with the first two migrations, a row in each. */
const firstRows = `
  insert into jobs (id, title, stage, role, questions, spans, received_at, received_zone, deliverables, created_at, updated_at)
    values ('j', 'Curling', 'quoted', 'shoot', ${job}), ('k', 'Bakers', 'inquiry', 'photo', ${job});
  insert into job_days (id, job_id, date, kind, call, wrap, zone, call_at, wrap_at)
    values ('d', 'j', '2026-12-12', 'shoot', '2026-12-12T08:00', '2026-12-12T18:00', 'America/Toronto', 1, 2);
  insert into stays (id, job_id, start_at, end_at) values ('s', 'j', 1, 2);
  insert into pencils (id, job_id, pencilled_at, expires_wall, expires_zone, expires_at, state)
    values ('p', 'j', 1, '2026-12-03T09:00', 'America/Chicago', 2, 'held');
  insert into papers (id, job_id, kind, name, type, hash, bytes, made_at) values ('q', 'j', 'quote', 'Quote 1', 'application/pdf', '${'a'.repeat(64)}', 9, 1);
  insert into quote_drafts (job_id, changes, updated_at) values ('j', '[]', 1);
  insert into quote_versions (id, job_id, number, made_at, currency, gross_minor, valid_until_at, draft, reply_subject, reply_text, paper_id)
    values ('v', 'j', 1, 1, 'USD', 100, 2, '{}', 's', 't', 'q');
  insert into quote_sendings (version_id, sent_at) values ('v', 3);
  insert into rate_cards (id, name, role, currency, valid_from, fields, created_at, updated_at) values ('r', 'Shoot', 'shoot', 'USD', '2026-01-01', '{}', 1, 1);
  insert into setup (id, fields, updated_at) values (1, '{}', 1);
  insert into ways (id, low_key, high_key, from_place, to_place, mode, minutes, updated_at) values ('w', 'a', 'b', '{}', '{}', 'drive', 210, 1);
  insert into history (id, at, subject, subject_id, deed, sentence) values ('h', 1, 'job', 'j', 'take', 'Taken.');
  insert into deeds (key, procedure, at, input_hash, result) values ('e', 'jobs.take', 1, 'x', '{}');
`;

type Rows = Record<string, Record<string, unknown>[]>;

function rowsOf(client: Database.Database): Rows {
  const tables = client
    .prepare<[], string>(
      "select name from sqlite_schema where type = 'table' and name not like 'sqlite_%' and name not like 'find@_%' escape '@' and name <> 'applied_migrations'",
    )
    .pluck()
    .all();
  return Object.fromEntries(
    tables.map((table) => [table, client.prepare<[], Record<string, unknown>>(`select * from "${table}" order by rowid`).all()]),
  );
}

test('every row of the first schema is there after all of the later ones, with what it said', () => {
  const known = readMigrations(MIGRATIONS_FOLDER);
  const client = new Database(':memory:');
  migrate(client, known.slice(0, 2), NOW);
  client.exec(firstRows);
  const before = rowsOf(client);
  expect(Object.entries(before).filter(([, rows]) => rows.length === 0)).toEqual([]);
  migrate(client, pendingMigrations(client, known), NOW);
  const after = rowsOf(client);
  for (const [table, rows] of Object.entries(before)) {
    expect(after[table]).toHaveLength(rows.length);
    for (const [index, row] of rows.entries()) expect(after[table]?.[index]).toMatchObject(row);
  }
});

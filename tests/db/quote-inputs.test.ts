import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { NOW } from '../store.ts';

test('a version from before inputs were kept has none, and still never changes', () => {
  const known = readMigrations(MIGRATIONS_FOLDER);
  const client = new Database(':memory:');
  migrate(client, known.slice(0, 12), NOW);
  client.exec(`
    insert into jobs (id, title, stage, role, questions, spans, received_at, received_zone, deliverables, created_at, updated_at)
      values ('j', 'Curling', 'quoted', 'shoot', '[]', '[]', 1, 'America/Chicago', '[]', 1, 1);
    insert into papers (id, job_id, kind, name, type, hash, bytes, made_at) values ('p', 'j', 'quote', 'Quote 1', 'application/pdf', '${'a'.repeat(64)}', 9, 1);
    insert into quote_versions (id, job_id, number, made_at, currency, gross_minor, valid_until_at, draft, reply_subject, reply_text, paper_id)
      values ('v', 'j', 1, 1, 'USD', 100, 2, '{}', 's', 't', 'p');`);
  migrate(client, pendingMigrations(client, known), NOW);
  expect(client.prepare('select gross_minor, inputs from quote_versions').get()).toEqual({ gross_minor: 100, inputs: null });
  expect(() => client.exec("update quote_versions set inputs = '{}'")).toThrow(/never changes/);
});

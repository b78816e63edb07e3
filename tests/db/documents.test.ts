/**
 * Rows of the migration of documents: they live through every later one, a kind that is not known and a scan that is not there are refused.
 */
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { NOW } from '../store.ts';

const rows = `
  insert into papers (id, kind, name, type, hash, bytes, made_at) values ('p', 'scan', 'passport.pdf', 'application/pdf', '${'a'.repeat(64)}', 9, 1);
  insert into documents (id, kind, until, fields, scan_id, created_at, updated_at) values
    ('d', 'passport', '2031-04-01', '{"kind":"passport","number":"X1"}', 'p', 1, 1), ('e', 'vehicle', null, '{}', null, 1, 1);
`;

function kept(): Database.Database {
  const client = new Database(':memory:');
  const known = readMigrations(MIGRATIONS_FOLDER);
  migrate(client, known.slice(0, known.findIndex(({ name }) => name.endsWith('_documents')) + 1), NOW);
  client.pragma('foreign_keys = on');
  client.exec(rows);
  return client;
}

test('they live through every later migration', () => {
  const client = kept();
  migrate(client, pendingMigrations(client, readMigrations(MIGRATIONS_FOLDER)), NOW);
  expect(client.prepare('select id, kind, until, scan_id, version from documents order by id').all()).toEqual([
    { id: 'd', kind: 'passport', until: '2031-04-01', scan_id: 'p', version: 1 },
    { id: 'e', kind: 'vehicle', until: null, scan_id: null, version: 1 },
  ]);
});

test.each([
  ['a kind that is not known', "update documents set kind = 'library card'", /documents_kind/],
  ['fields that are not whole', "update documents set fields = '{'", /documents_fields_json/],
  ['a scan that is not among the papers', "update documents set scan_id = 'q'", /FOREIGN KEY/],
  ['a hand that is not there', "update documents set hand_id = 'h'", /FOREIGN KEY/],
])('%s is refused', (_, sql, why) => {
  expect(() => kept().exec(sql)).toThrow(why);
});

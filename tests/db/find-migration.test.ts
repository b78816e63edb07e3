/**
 * Rows of the time before the find box had an index of its own: they are found after the migration, and what was put away is not.
 */
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { NOW } from '../store.ts';

const rows = `
  insert into jobs (id, title, organisation, stage, role, place, message, questions, spans, received_at, received_zone, deliverables, knows, created_at, updated_at)
    values ('j', 'Curling', 'Société des Pierres', 'inquiry', 'shoot', '{"name":"Thunder Bay"}', 'We need a vision mixer.', '[]', '[]', 1,
      'America/Chicago', '["a highlight"]', '{"names":"Zoë Fenn"}', 1, 7);
  insert into clients (id, name, fields, created_at, updated_at) values ('c', 'Reading Club', '{"contacts":[{"name":"Ilse Marrow"}]}', 1, 1);
  insert into clients (id, name, fields, away_at, created_at, updated_at) values ('away', 'Reading Circle', '{}', 2, 1, 1);
  insert into hands (id, name, fields, created_at, updated_at) values ('h', 'Cy Ek', '{"rates":[{"role":"audio"}]}', 1, 1);
  insert into kit_items (id, name, fields, created_at, updated_at) values ('i', 'Long lens', '{"serials":["LL-77"],"note":"worn strap"}', 1, 1);
  insert into kit_presets (id, name, needs, updated_at) values ('p', 'Two cameras', '[]', 1);
  insert into rate_cards (id, name, role, currency, valid_from, fields, created_at, updated_at) values ('r', 'Stage days', 'shoot', 'USD', '2026-01-01', '{}', 1, 1);
  insert into papers (id, job_id, kind, name, type, hash, bytes, made_at) values ('q', 'j', 'quote', 'Quote.pdf', 'application/pdf', '${'a'.repeat(64)}', 1, 5);
`;

function migrated(): Database.Database {
  const client = new Database(':memory:');
  client.pragma('trusted_schema = off');
  const known = readMigrations(MIGRATIONS_FOLDER);
  migrate(
    client,
    known.slice(
      0,
      known.findIndex(({ name }) => name.endsWith('_find')),
    ),
    NOW,
  );
  client.exec(rows);
  migrate(client, pendingMigrations(client, known), NOW);
  return client;
}
const found = (client: Database.Database, words: string) =>
  client
    .prepare(
      'select kind, subject_id as id, away from find_entries where id in (select rowid from find_words where find_words match ?) order by kind, id',
    )
    .all(words);

test.each([
  [
    'a title',
    'curl*',
    [
      { kind: 'job', id: 'j', away: 0 },
      { kind: 'paper', id: 'q', away: 0 },
    ],
  ],
  [
    'an organisation without its accents',
    'societe',
    [
      { kind: 'job', id: 'j', away: 0 },
      { kind: 'paper', id: 'q', away: 0 },
    ],
  ],
  ['a word of the message', 'mixer', [{ kind: 'job', id: 'j', away: 0 }]],
  ['a deliverable', 'highlight', [{ kind: 'job', id: 'j', away: 0 }]],
  ['what the job knows', 'zoe', [{ kind: 'job', id: 'j', away: 0 }]],
  [
    'a contact; who was put away is marked so',
    'marrow OR circle',
    [
      { kind: 'client', id: 'away', away: 1 },
      { kind: 'client', id: 'c', away: 0 },
    ],
  ],
  ['a role of a hand', 'audio', [{ kind: 'hand', id: 'h', away: 0 }]],
  ['a serial', '"ll 77"', [{ kind: 'thing', id: 'i', away: 0 }]],
  ['a preset', 'cameras', [{ kind: 'preset', id: 'p', away: 0 }]],
  ['a rate card', 'stage', [{ kind: 'rate card', id: 'r', away: 0 }]],
])('%s', (_, words, expected) => {
  expect(found(migrated(), words)).toEqual(expected);
});

test('what is changed or taken away afterwards is followed, and the index agrees with its entries', () => {
  const client = migrated();
  client.exec(
    "update jobs set title = 'Bonspiel', updated_at = 9 where id = 'j'; delete from kit_items; update clients set away_at = 3 where id = 'c'",
  );
  expect(found(client, 'curling OR lens')).toEqual([]);
  expect(found(client, 'bonspiel')).toEqual([
    { kind: 'job', id: 'j', away: 0 },
    { kind: 'paper', id: 'q', away: 0 },
  ]);
  expect(found(client, 'marrow')).toEqual([{ kind: 'client', id: 'c', away: 1 }]);
  // A rank above 0 makes the check compare the index with the entries themselves.
  for (const table of ['find_words', 'find_parts'])
    expect(() => client.exec(`insert into ${table} (${table}, rank) values ('integrity-check', 1)`)).not.toThrow();
});

test('every table that is looked through has its triggers: a later migration that rebuilds one must make them again', () => {
  const client = migrated();
  const triggers = client
    .prepare("select name from sqlite_schema where type = 'trigger' and name like 'find@_%' escape '@' order by name")
    .pluck()
    .all();
  const changing = ['clients', 'hands', 'jobs', 'kit_items', 'kit_presets', 'rate_cards'].flatMap((table) =>
    ['delete', 'insert', 'update'].map((deed) => `find_${table}_${deed}`),
  );
  expect(triggers).toEqual(
    [
      ...changing,
      'find_entries_delete',
      'find_entries_insert',
      'find_entries_update',
      'find_papers_delete',
      'find_papers_insert',
    ].toSorted(),
  );
});

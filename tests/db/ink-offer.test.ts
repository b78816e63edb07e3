/**
 * Rows of the eighth migration: ink from before it names no offer and keeps its version; an offer that was inked lives on.
 */
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from '../../db/migrate.ts';
import { NOW } from '../store.ts';

const inked = (id: string, offer = '') => `
  insert into jobs (id, title, stage, role, questions, spans, received_at, received_zone, deliverables, created_at, updated_at,
    inked_who, inked_how, inked_at, inked_quote${offer ? ', inked_offer' : ''})
    values ('${id}', 'Curling', 'inked', 'shoot', '[]', '[]', 1, 'America/Chicago', '[]', 1, 1, 'Ada', 'mail', 2, 3${offer});`;

function built(steps: number): Database.Database {
  const client = new Database(':memory:');
  migrate(client, readMigrations(MIGRATIONS_FOLDER).slice(0, steps), NOW);
  client.pragma('foreign_keys = on');
  return client;
}
const ink = (client: Database.Database) => client.prepare('select id, inked_quote, inked_offer from jobs order by id').all();

test('ink from before keeps its version and names no offer', () => {
  const client = built(7);
  client.exec(inked('a'));
  migrate(client, pendingMigrations(client, readMigrations(MIGRATIONS_FOLDER)), NOW);
  expect(ink(client)).toEqual([{ id: 'a', inked_quote: 3, inked_offer: null }]);
});

test('an offer that was inked lives through every later migration', () => {
  const client = built(8);
  client.exec(inked('a', ', 2'));
  migrate(client, pendingMigrations(client, readMigrations(MIGRATIONS_FOLDER)), NOW);
  expect(ink(client)).toEqual([{ id: 'a', inked_quote: 3, inked_offer: 2 }]);
});

/**
 * Clients and hands. Both tables have one shape, so one set of queries serves them.
 */
import { desc, eq, isNotNull, isNull, sql } from 'drizzle-orm';
import type { Client, ClientFields, Hand, HandFields } from '../core/contract/people.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { clients, hands } from './schema/people.ts';
import type { ReadableDb, WritableDb } from './store.ts';

const reading = perStore((db) => ({
  clients: db
    .select()
    .from(clients)
    .where(isNull(clients.awayAt))
    .orderBy(sql`${clients.name} collate nocase`, clients.id)
    .prepare(),
  client: db
    .select()
    .from(clients)
    .where(eq(clients.id, sql.placeholder('id')))
    .prepare(),
  hands: db
    .select()
    .from(hands)
    .where(isNull(hands.awayAt))
    .orderBy(sql`${hands.name} collate nocase`, hands.id)
    .prepare(),
  hand: db
    .select()
    .from(hands)
    .where(eq(hands.id, sql.placeholder('id')))
    .prepare(),
  clientsAway: db.select().from(clients).where(isNotNull(clients.awayAt)).orderBy(desc(clients.awayAt)).prepare(),
  handsAway: db.select().from(hands).where(isNotNull(hands.awayAt)).orderBy(desc(hands.awayAt)).prepare(),
}));

const clientOf = (row: typeof clients.$inferSelect): Client => ({ ...row.fields, id: row.id, version: row.version });
const handOf = (row: typeof hands.$inferSelect): Hand => ({ ...row.fields, id: row.id, version: row.version });

/** Clients that are not put away, by name. */
export function allClients(db: ReadableDb): Client[] {
  return reading(db).clients.all().map(clientOf);
}

/** Hands that are not put away, by name. */
export function allHands(db: ReadableDb): Hand[] {
  return reading(db).hands.all().map(handOf);
}

/** One client, put away or not. */
export function clientById(db: ReadableDb, id: string): Client | undefined {
  const row = reading(db).client.get({ id });
  return row && clientOf(row);
}

/** One hand, put away or not. */
export function handById(db: ReadableDb, id: string): Hand | undefined {
  const row = reading(db).hand.get({ id });
  return row && handOf(row);
}

export type Away = { kind: 'client' | 'hand'; id: string; name: string; awayAt: number };

/** Everybody that was put away, newest first. */
export function allAway(db: ReadableDb): Away[] {
  const of = (kind: Away['kind']) => (row: { id: string; name: string; awayAt: number | null }) => ({
    kind,
    id: row.id,
    name: row.name,
    awayAt: row.awayAt ?? 0,
  });
  return [...reading(db).clientsAway.all().map(of('client')), ...reading(db).handsAway.all().map(of('hand'))].sort(
    (a, b) => b.awayAt - a.awayAt,
  );
}

/** Keep a new client. `now` in epoch milliseconds. */
export function insertClient(db: WritableDb, fields: ClientFields, now: number): Client {
  const id = newId();
  db.insert(clients).values({ id, name: fields.name, fields, createdAt: now, updatedAt: now }).run();
  return { ...fields, id, version: 1 };
}

/** Change a client. The caller has compared versions in the same transaction. */
export function updateClient(db: WritableDb, before: Client, fields: ClientFields, now: number): Client {
  const version = before.version + 1;
  db.update(clients).set({ name: fields.name, fields, version, updatedAt: now }).where(eq(clients.id, before.id)).run();
  return { ...fields, id: before.id, version };
}

/** Keep a new hand. `now` in epoch milliseconds. */
export function insertHand(db: WritableDb, fields: HandFields, now: number): Hand {
  const id = newId();
  db.insert(hands).values({ id, name: fields.name, fields, createdAt: now, updatedAt: now }).run();
  return { ...fields, id, version: 1 };
}

/** Change a hand. The caller has compared versions in the same transaction. */
export function updateHand(db: WritableDb, before: Hand, fields: HandFields, now: number): Hand {
  const version = before.version + 1;
  db.update(hands).set({ name: fields.name, fields, version, updatedAt: now }).where(eq(hands.id, before.id)).run();
  return { ...fields, id: before.id, version };
}

/** Put somebody away (`awayAt` epoch milliseconds) or take them out again (null). Their version rises. */
export function setAway(db: WritableDb, kind: 'client' | 'hand', id: string, awayAt: number | null, now: number): void {
  const table = kind === 'client' ? clients : hands;
  db.update(table)
    .set({ awayAt, version: sql`${table.version} + 1`, updatedAt: now })
    .where(eq(table.id, id))
    .run();
}

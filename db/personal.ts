/**
 * Time of my own.
 */
import { and, asc, eq, gt, lt, sql } from 'drizzle-orm';
import type { Personal, PersonalFields } from '../core/contract/personal.ts';
import type { PersonalTime } from '../core/fit/book.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { personalTimes } from './schema/personal.ts';
import type { ReadableDb, WritableDb } from './store.ts';

const reading = perStore((db) => ({
  all: db.select().from(personalTimes).orderBy(asc(personalTimes.startAt), asc(personalTimes.id)).prepare(),
  one: db
    .select()
    .from(personalTimes)
    .where(eq(personalTimes.id, sql.placeholder('id')))
    .prepare(),
  near: db
    .select()
    .from(personalTimes)
    .where(and(gt(personalTimes.endAt, sql.placeholder('from')), lt(personalTimes.startAt, sql.placeholder('to'))))
    .orderBy(asc(personalTimes.startAt), asc(personalTimes.id))
    .prepare(),
}));

type Row = typeof personalTimes.$inferSelect;
const personalOf = ({ id, title, fromWall, toWall, zone, hardness, note, version }: Row): Personal => ({
  id,
  title,
  from: fromWall,
  to: toWall,
  zone,
  hardness,
  note,
  version,
});

export function allPersonal(db: ReadableDb): Personal[] {
  return reading(db).all.all().map(personalOf);
}

export function personalById(db: ReadableDb, id: string): Personal | undefined {
  const row = reading(db).one.get({ id });
  return row && personalOf(row);
}

/** What lies in [from, to), epoch ms, as the check takes it. */
export function personalNear(db: ReadableDb, span: { from: number; to: number }): PersonalTime[] {
  return reading(db)
    .near.all(span)
    .map(({ id, title, startAt, endAt, hardness }) => ({ id, title, startAt, endAt, hardness }));
}

/** Save time of my own: new, or the next version of `before`. Instants and `now` in epoch ms. */
export function keepPersonal(
  db: WritableDb,
  before: Personal | undefined,
  fields: PersonalFields,
  at: { startAt: number; endAt: number; now: number },
): Personal {
  const { title, from, to, zone, hardness, note } = fields;
  const { startAt, endAt, now } = at;
  const kept = { title, fromWall: from, toWall: to, zone, startAt, endAt, hardness, note };
  const row = { id: before?.id ?? newId(), ...kept, version: (before?.version ?? 0) + 1, updatedAt: now };
  db.insert(personalTimes).values(row).onConflictDoUpdate({ target: personalTimes.id, set: row }).run();
  return personalOf(row);
}

export function dropPersonal(db: WritableDb, id: string): void {
  db.delete(personalTimes).where(eq(personalTimes.id, id)).run();
}

/**
 * What every deed leaves behind: its result under its key, and a row of history.
 */
import { and, desc, eq, lt, sql } from 'drizzle-orm';
import { newId } from './ids.ts';
import { insertRow, perStore } from './prepared.ts';
import { deeds, history } from './schema/keeping.ts';
import type { ReadableDb, WritableDb } from './store.ts';

export type KeptDeed = typeof deeds.$inferSelect;
export type HistoryRow = typeof history.$inferSelect;

const reading = perStore((db) => ({
  deed: db
    .select()
    .from(deeds)
    .where(eq(deeds.key, sql.placeholder('key')))
    .prepare(),
  history: db
    .select()
    .from(history)
    .where(and(eq(history.subject, sql.placeholder('subject')), eq(history.subjectId, sql.placeholder('id'))))
    .orderBy(desc(history.at), desc(history.id))
    .prepare(),
}));

/** The deed that was done under an idempotency key, if it was. */
export function deedByKey(db: ReadableDb, key: string): KeptDeed | undefined {
  return reading(db).deed.get({ key });
}

/** Keep a deed's result under its key, in the deed's own transaction. `at` in epoch milliseconds. */
export function keepDeed(db: WritableDb, deed: KeptDeed): void {
  insertRow(db, deeds, deed);
}

/** Forget the results of deeds done before an instant (epoch milliseconds); nobody repeats a save after that long. */
export function forgetDeedsBefore(db: WritableDb, at: number): void {
  db.delete(deeds).where(lt(deeds.at, at)).run();
}

/**
 * Write one row of history. `before` is the row as it was, so that the deed can be undone; leave it out where there was none.
 * `at` in epoch milliseconds.
 */
export function writeHistory(db: WritableDb, row: Omit<HistoryRow, 'id' | 'before'> & { before?: unknown }): void {
  insertRow(db, history, { ...row, id: newId(), before: row.before ?? null });
}

/** What was done to a thing, newest first. */
export function historyOf(db: ReadableDb, subject: string, id: string): HistoryRow[] {
  return reading(db).history.all({ subject, id });
}

/**
 * Ink that was called off. Rows are only added and marked as taken back.
 */
import { and, desc, eq, isNull, sql } from 'drizzle-orm';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { callingsOff, jobs } from './schema/jobs.ts';
import type { ReadableDb, WritableDb } from './store.ts';

export type CallingRow = typeof callingsOff.$inferSelect;

const reading = perStore((db) => ({
  standing: db
    .select()
    .from(callingsOff)
    .where(and(eq(callingsOff.jobId, sql.placeholder('jobId')), isNull(callingsOff.takenBackAt)))
    .orderBy(desc(callingsOff.at), desc(callingsOff.id))
    .prepare(),
}));

/** What was called off of a job and not taken back, newest first. */
export function callingsOf(db: ReadableDb, jobId: string): CallingRow[] {
  return reading(db).standing.all({ jobId });
}

/** Instants in epoch milliseconds. */
export function addCalling(db: WritableDb, row: Omit<CallingRow, 'id' | 'takenBackAt'>): CallingRow {
  const whole = { id: newId(), takenBackAt: null, ...row };
  db.insert(callingsOff).values(whole).run();
  return whole;
}

/** Mark one as taken back at `now`, epoch milliseconds. */
export function takeCallingBack(db: WritableDb, id: string, now: number): void {
  db.update(callingsOff).set({ takenBackAt: now }).where(eq(callingsOff.id, id)).run();
}

/** A cancelled job is in ink again, with the yes that it had. `now` in epoch milliseconds. */
export function inkAgain(db: WritableDb, jobId: string, now: number): void {
  db.update(jobs)
    .set({ stage: 'inked', version: sql`${jobs.version} + 1`, updatedAt: now })
    .where(eq(jobs.id, jobId))
    .run();
}

/**
 * Paid dates of a job and the stays that follow from them.
 */
import { asc, eq, sql } from 'drizzle-orm';
import type { BookDay } from '../core/fit/book.ts';
import type { DayKind } from '../core/contract/parts.ts';
import { spellsOf } from '../core/trips/stays.ts';
import { newId } from './ids.ts';
import { insertRow, perStore, perStoreWrites } from './prepared.ts';
import { jobDays, LONGEST_STAY_MS, stays } from './schema/jobs.ts';
import type { ReadableDb, WritableDb } from './store.ts';

const reading = perStore((db) => ({
  days: db
    .select()
    .from(jobDays)
    .where(eq(jobDays.jobId, sql.placeholder('jobId')))
    .orderBy(asc(jobDays.callAt))
    .prepare(),
}));

const writing = perStoreWrites((db) => ({
  dropDays: db
    .delete(jobDays)
    .where(eq(jobDays.jobId, sql.placeholder('jobId')))
    .prepare(),
  dropStays: db
    .delete(stays)
    .where(eq(stays.jobId, sql.placeholder('jobId')))
    .prepare(),
}));

/** The paid dates of a job with their instants, in order of their calls. */
export function daysOf(db: ReadableDb, jobId: string): BookDay[] {
  return reading(db)
    .days.all({ jobId })
    .map(({ date, kind, call, wrap, callAt, wrapAt }) => ({ date, kind: kind as DayKind, call, wrap, callAt, wrapAt }));
}

/** Put these dates in the place of those that a job has, and make the spells anew by which it is found. `zone` is the one that the wall times are in. */
export function replaceDays(db: WritableDb, jobId: string, days: readonly BookDay[], zone: string): void {
  writing(db).dropDays.run({ jobId });
  writing(db).dropStays.run({ jobId });
  for (const { date, kind, call, wrap, callAt, wrapAt } of days)
    insertRow(db, jobDays, { date, kind, call, wrap, callAt, wrapAt, id: newId(), jobId, zone });
  for (const { startAt, endAt } of spellsOf(days)) {
    // The overlap query looks back only so far, so a longer stay is kept as pieces that touch.
    for (let from = startAt; from < endAt; from += LONGEST_STAY_MS)
      insertRow(db, stays, { id: newId(), jobId, startAt: from, endAt: Math.min(from + LONGEST_STAY_MS, endAt) });
  }
}

/**
 * Paid dates of a job and the stays that follow from them.
 */
import { asc, eq, sql } from 'drizzle-orm';
import type { BookDay } from '../core/fit/book.ts';
import type { DayKind } from '../core/contract/parts.ts';
import { spellsOf } from '../core/trips/stays.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
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

/** The paid dates of a job with their instants, in order of their calls. */
export function daysOf(db: ReadableDb, jobId: string): BookDay[] {
  return reading(db)
    .days.all({ jobId })
    .map(({ date, kind, call, wrap, callAt, wrapAt }) => ({ date, kind: kind as DayKind, call, wrap, callAt, wrapAt }));
}

/** Put these dates in the place of those that a job has, and make the spells anew by which it is found. `zone` is the one that the wall times are in. */
export function replaceDays(db: WritableDb, jobId: string, days: readonly BookDay[], zone: string): void {
  db.delete(jobDays).where(eq(jobDays.jobId, jobId)).run();
  db.delete(stays).where(eq(stays.jobId, jobId)).run();
  for (const day of days)
    db.insert(jobDays)
      .values({ ...day, id: newId(), jobId, zone })
      .run();
  for (const { startAt, endAt } of spellsOf(days)) {
    // The overlap query looks back only so far, so a longer stay is kept as pieces that touch.
    for (let from = startAt; from < endAt; from += LONGEST_STAY_MS)
      db.insert(stays)
        .values({ id: newId(), jobId, startAt: from, endAt: Math.min(from + LONGEST_STAY_MS, endAt) })
        .run();
  }
}

/**
 * Who gave a job, and what the job knows beside dates and money.
 */
import { eq, sql } from 'drizzle-orm';
import type { Knows } from '../core/contract/knows.ts';
import { jobs } from './schema/jobs.ts';
import type { WritableDb } from './store.ts';

/** Name the client of a job, or none, with what the job knows from then on. `now` in epoch milliseconds. */
export function setClient(db: WritableDb, jobId: string, clientId: string | null, knows: Knows, now: number): void {
  db.update(jobs)
    .set({ clientId, knows, version: sql`${jobs.version} + 1`, updatedAt: now })
    .where(eq(jobs.id, jobId))
    .run();
}

/** Move every job of one client to another. */
export function moveJobs(db: WritableDb, fromId: string, toId: string, now: number): void {
  db.update(jobs)
    .set({ clientId: toId, version: sql`${jobs.version} + 1`, updatedAt: now })
    .where(eq(jobs.clientId, fromId))
    .run();
}

/** Save what a job knows. */
export function saveKnows(db: WritableDb, jobId: string, knows: Knows, now: number): void {
  db.update(jobs)
    .set({ knows, version: sql`${jobs.version} + 1`, updatedAt: now })
    .where(eq(jobs.id, jobId))
    .run();
}

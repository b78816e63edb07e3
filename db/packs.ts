/**
 * What was packed for jobs, and what became of it.
 */
import { and, asc, eq, sql } from 'drizzle-orm';
import type { Packed } from '../core/kit/pack.ts';
import { perStore } from './prepared.ts';
import { jobs } from './schema/jobs.ts';
import { jobPacks, kitItems } from './schema/kit.ts';
import type { ReadableDb, WritableDb } from './store.ts';

const row = { item: jobPacks.itemId, serial: jobPacks.serial, out: jobPacks.out, back: jobPacks.back, missing: jobPacks.missing };
const reading = perStore((db) => ({
  ofJob: db
    .select({ ...row, name: kitItems.name })
    .from(jobPacks)
    .innerJoin(kitItems, eq(kitItems.id, jobPacks.itemId))
    .where(eq(jobPacks.jobId, sql.placeholder('jobId')))
    .orderBy(sql`${kitItems.name} collate nocase`, asc(jobPacks.serial))
    .prepare(),
  stillOut: db
    .selectDistinct({ jobId: jobPacks.jobId })
    .from(jobPacks)
    .where(sql`${jobPacks.out} > ${jobPacks.back} + ${jobPacks.missing}`)
    .prepare(),
  missing: db
    .select({ item: jobPacks.itemId, jobId: jobPacks.jobId, title: jobs.title, count: sql<number>`sum(${jobPacks.missing})` })
    .from(jobPacks)
    .innerJoin(jobs, eq(jobs.id, jobPacks.jobId))
    .where(sql`${jobPacks.missing} > 0`)
    .groupBy(jobPacks.itemId, jobPacks.jobId)
    .prepare(),
}));

/** What was packed for a job, by name and serial. */
export function packsOf(db: ReadableDb, jobId: string): (Packed & { name: string })[] {
  return reading(db).ofJob.all({ jobId });
}

/** Jobs of which something is neither back nor known to be missing. */
export function jobsStillOut(db: ReadableDb): string[] {
  return reading(db)
    .stillOut.all()
    .map(({ jobId }) => jobId);
}

/** What did not come back, by thing and job. */
export function missingPieces(db: ReadableDb): { item: string; jobId: string; title: string; count: number }[] {
  return reading(db).missing.all();
}

/** How many of each thing did not come back from any job: they are not there for the next. */
export function missingByItem(db: ReadableDb): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { item, count } of missingPieces(db)) counts.set(item, (counts.get(item) ?? 0) + count);
  return counts;
}

/** Keep what became of one row; with nothing out it is not packed. `now` in epoch ms. */
export function keepPacked(db: WritableDb, jobId: string, { item, serial, out, back, missing }: Packed, now: number): void {
  if (out === 0) {
    db.delete(jobPacks)
      .where(and(eq(jobPacks.jobId, jobId), eq(jobPacks.itemId, item), eq(jobPacks.serial, serial)))
      .run();
    return;
  }
  const counts = { out, back, missing, updatedAt: now };
  db.insert(jobPacks)
    .values({ jobId, itemId: item, serial, ...counts })
    .onConflictDoUpdate({ target: [jobPacks.jobId, jobPacks.itemId, jobPacks.serial], set: counts })
    .run();
}

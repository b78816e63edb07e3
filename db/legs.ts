/**
 * Legs of jobs that were ticketed or typed.
 */
import { and, asc, eq, gt, isNotNull, sql } from 'drizzle-orm';
import type { Leg, LegFields, LegNews } from '../core/contract/trips.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { legs } from './schema/trips.ts';
import type { ReadableDb, WritableDb } from './store.ts';

const reading = perStore((db) => ({
  ofJob: db
    .select()
    .from(legs)
    .where(eq(legs.jobId, sql.placeholder('jobId')))
    .orderBy(asc(legs.departAt), asc(legs.id))
    .prepare(),
  withNews: db
    .select()
    .from(legs)
    .where(and(gt(legs.departAt, sql.placeholder('after')), isNotNull(sql`json_extract(${legs.fields}, '$.news.kind')`)))
    .orderBy(asc(legs.departAt), asc(legs.id))
    .prepare(),
  one: db
    .select()
    .from(legs)
    .where(eq(legs.id, sql.placeholder('id')))
    .prepare(),
}));

const legOf = ({ id, jobId, version, fields }: typeof legs.$inferSelect): Leg => ({
  ...fields,
  news: fields.news ?? null,
  id,
  jobId,
  version,
});

/** The legs of a job, by departure. */
export function legsOfJob(db: ReadableDb, jobId: string): Leg[] {
  return reading(db).ofJob.all({ jobId }).map(legOf);
}

export function legById(db: ReadableDb, id: string): Leg | undefined {
  const row = reading(db).one.get({ id });
  return row && legOf(row);
}

/** Save a leg: a new one, or the next version of `before`. Instants and `now` in epoch ms. Typed anew it has no news. */
export function keepLeg(
  db: WritableDb,
  jobId: string,
  before: Leg | undefined,
  fields: LegFields,
  at: { departAt: number; arriveAt: number; now: number },
  news: LegNews | null = null,
): Leg {
  const { departAt, arriveAt, now } = at;
  const told = news ? { ...fields, news } : fields;
  const row = { id: before?.id ?? newId(), jobId, departAt, arriveAt, fields: told, version: (before?.version ?? 0) + 1, updatedAt: now };
  db.insert(legs).values(row).onConflictDoUpdate({ target: legs.id, set: row }).run();
  return legOf(row);
}

/** Legs that leave after an instant (epoch ms) of which there is news, by departure. */
export function legsWithNews(db: ReadableDb, after: number): Leg[] {
  return reading(db).withNews.all({ after }).map(legOf);
}

export function dropLeg(db: WritableDb, id: string): void {
  db.delete(legs).where(eq(legs.id, id)).run();
}

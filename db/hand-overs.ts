/**
 * Deliverables that were handed over: how, with which files, and what becomes of the originals.
 */
import { and, desc, eq, gte, isNotNull, isNull, lte, sql } from 'drizzle-orm';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { deliverables, stages } from './schema/deliverables.ts';
import { handOvers } from './schema/hand-overs.ts';
import { jobs } from './schema/jobs.ts';
import type { ReadableDb, WritableDb } from './store.ts';

/** Instants are epoch milliseconds. */
export type HandOverRow = typeof handOvers.$inferSelect;

const ofJob = {
  handOverId: handOvers.id,
  deliverableId: deliverables.id,
  name: deliverables.name,
  jobId: jobs.id,
  jobVersion: jobs.version,
  title: jobs.title,
  clientId: jobs.clientId,
};

const reading = perStore((db) => ({
  byId: db
    .select()
    .from(handOvers)
    .where(eq(handOvers.id, sql.placeholder('id')))
    .prepare(),
  ofDeliverable: db
    .select()
    .from(handOvers)
    .where(eq(handOvers.deliverableId, sql.placeholder('id')))
    .orderBy(desc(handOvers.at), desc(handOvers.id))
    .prepare(),
  kept: db
    .select({ ...ofJob, until: sql<string>`${handOvers.originalsUntil}` })
    .from(handOvers)
    .innerJoin(deliverables, eq(deliverables.id, handOvers.deliverableId))
    .innerJoin(jobs, eq(jobs.id, deliverables.jobId))
    .where(
      and(
        isNull(handOvers.originalsGoneAt),
        isNull(handOvers.takenBackAt),
        isNotNull(handOvers.originalsUntil),
        lte(handOvers.originalsUntil, sql.placeholder('to')),
      ),
    )
    .prepare(),
  unapproved: db
    .select({ ...ofJob, at: handOvers.at, windowDays: deliverables.windowDays })
    .from(handOvers)
    .innerJoin(deliverables, eq(deliverables.id, handOvers.deliverableId))
    .innerJoin(stages, and(eq(stages.deliverableId, deliverables.id), eq(stages.kind, 'approved'), isNull(stages.doneAt)))
    .innerJoin(jobs, eq(jobs.id, deliverables.jobId))
    .where(and(isNull(handOvers.takenBackAt), isNull(deliverables.offAt), gte(handOvers.at, sql.placeholder('since'))))
    .orderBy(desc(handOvers.at))
    .prepare(),
}));

export function handOverById(db: ReadableDb, id: string): HandOverRow | undefined {
  return reading(db).byId.get({ id });
}

/** How a deliverable was handed over, the newest first; those that were taken back among them. */
export function handOversOf(db: ReadableDb, deliverableId: string): HandOverRow[] {
  return reading(db).ofDeliverable.all({ id: deliverableId });
}

/** Originals that are still there and kept up to a date (YYYY-MM-DD) or one before it. */
export function originalsUntil(db: ReadableDb, to: string) {
  return reading(db).kept.all({ to });
}

/** Deliverables that were handed over since an instant (epoch ms) and not approved, each once, with its newest hand-over. */
export function handedNotApproved(db: ReadableDb, since: number) {
  const rows = reading(db).unapproved.all({ since });
  return rows.filter(({ deliverableId }, at) => rows.findIndex((each) => each.deliverableId === deliverableId) === at);
}

/** Keep a hand-over whose paper is on the books. @returns its id */
export function insertHandOver(
  db: WritableDb,
  row: Omit<HandOverRow, 'id' | 'version' | 'originalsGoneAt' | 'originalsGoneWhy' | 'takenBackAt' | 'takenBackWhy'>,
): string {
  const id = newId();
  db.insert(handOvers)
    .values({ ...row, id })
    .run();
  return id;
}

/** The next version of a hand-over. */
export function changeHandOver(
  db: WritableDb,
  { id, version }: HandOverRow,
  change: Partial<
    Pick<HandOverRow, 'originals' | 'originalsUntil' | 'originalsGoneAt' | 'originalsGoneWhy' | 'takenBackAt' | 'takenBackWhy'>
  >,
): void {
  db.update(handOvers)
    .set({ ...change, version: version + 1 })
    .where(eq(handOvers.id, id))
    .run();
}

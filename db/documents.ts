/**
 * Documents with their dates, mine and those of hands. What the check is given of them never holds their numbers.
 */
import { asc, eq, sql } from 'drizzle-orm';
import type { Document, DocumentFields } from '../core/contract/documents.ts';
import type { BookDocument } from '../core/fit/book.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { documents } from './schema/documents.ts';
import { jobs, pencils, stays } from './schema/jobs.ts';
import { papers } from './schema/quotes.ts';
import type { ReadableDb, WritableDb } from './store.ts';

const reading = perStore((db) => {
  const each = () => db.select({ row: documents, paper: papers }).from(documents).leftJoin(papers, eq(papers.id, documents.scanId));
  return {
    all: each()
      .orderBy(sql`${documents.handId} is not null`, sql`${documents.until} is null`, asc(documents.until), asc(documents.id))
      .prepare(),
    one: each()
      .where(eq(documents.id, sql.placeholder('id')))
      .prepare(),
    toCome: db
      .selectDistinct({ id: jobs.id })
      .from(stays)
      .innerJoin(jobs, eq(jobs.id, stays.jobId))
      .leftJoin(pencils, sql`${pencils.jobId} = ${jobs.id} and ${pencils.state} = 'held'`)
      .where(
        sql`${stays.endAt} > ${sql.placeholder('now')} and ${stays.startAt} < ${sql.placeholder('to')}
          and (${jobs.stage} = 'inked' or ${pencils.expiresAt} > ${sql.placeholder('now')})`,
      )
      .prepare(),
    customsLists: db
      .select({ id: papers.id })
      .from(papers)
      .where(sql`${papers.jobId} = ${sql.placeholder('jobId')} and ${papers.kind} = 'customs list'`)
      .limit(1)
      .prepare(),
  };
});

type Joined = { row: typeof documents.$inferSelect; paper: typeof papers.$inferSelect | null };

function documentOf({ row: { id, version, fields }, paper }: Joined): Document {
  return { ...fields, id, version, scan: paper && { id: paper.id, name: paper.name, type: paper.type, bytes: paper.bytes } };
}

/** Mine first; of each holder those that run out first before others, and those without a last day at the end. */
export function allDocuments(db: ReadableDb): Document[] {
  return reading(db).all.all().map(documentOf);
}

export function documentById(db: ReadableDb, id: string): Document | undefined {
  const row = reading(db).one.get({ id });
  return row && documentOf(row);
}

/** What the check is given. */
export function documentsForBook(db: ReadableDb): BookDocument[] {
  return allDocuments(db).map(({ kind, handId, country, from, until, worldwide, countries, limit, leadDays }) => ({
    kind,
    handId,
    country,
    from,
    until,
    worldwide,
    countries,
    limit,
    leadDays,
  }));
}

/** Save a document: a new one, or the next version of `before`, whose scan stays. `now` in epoch milliseconds. */
export function keepDocument(db: WritableDb, before: Document | undefined, fields: DocumentFields, now: number): string {
  const { kind, handId, until } = fields;
  const kept = { kind, handId, until, fields, updatedAt: now };
  const id = before?.id ?? newId();
  if (before)
    db.update(documents)
      .set({ ...kept, version: before.version + 1 })
      .where(eq(documents.id, id))
      .run();
  else
    db.insert(documents)
      .values({ ...kept, id, createdAt: now })
      .run();
  return id;
}

/** Put a scan with a document, or none. `now` in epoch milliseconds. */
export function setScan(db: WritableDb, { id, version }: Document, scanId: string | null, now: number): void {
  db.update(documents)
    .set({ scanId, version: version + 1, updatedAt: now })
    .where(eq(documents.id, id))
    .run();
}

export function dropDocument(db: WritableDb, id: string): void {
  db.delete(documents).where(eq(documents.id, id)).run();
}

/** Whether a customs list of a job was put on paper. */
export function hasCustomsList(db: ReadableDb, jobId: string): boolean {
  return reading(db).customsLists.get({ jobId }) !== undefined;
}

/** Ids of jobs in ink or in live pencil with a stay in (now, to), epoch milliseconds. */
export function jobsToCome(db: ReadableDb, now: number, to: number): string[] {
  return reading(db)
    .toCome.all({ now, to })
    .map(({ id }) => id);
}

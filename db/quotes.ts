/**
 * Quotes: what was changed by hand on a draft, the versions that were made, and when they were sent. A made version is never changed.
 */
import { desc, eq, getTableColumns, sql } from 'drizzle-orm';
import type { DraftChange, QuoteDraft, QuoteVersion, Reply } from '../core/contract/quotes.ts';
import type { z } from 'zod';
import type { FrozenInputs } from '../core/quotes/frozen.ts';
import { epochOf, instantText } from '../core/time/read.ts';
import { newId } from './ids.ts';
import { paperAsShown } from './papers.ts';
import { perStore } from './prepared.ts';
import { papers, quoteDrafts, quoteSendings, quoteVersions } from './schema/quotes.ts';
import type { ReadableDb, WritableDb } from './store.ts';

/** The changes of a draft in batches, oldest first; a draft that nobody changed has version 0. */
export type KeptChanges = { batches: readonly DraftChange[][]; draftVersion: number };

// One row a job: with a single max(), SQLite takes the other columns from the row that holds it.
const LATEST = `
  select job_id as jobId, max(number) as number, made_at as madeAt, currency from quote_versions
  where json_extract(draft, '$.cardId') = ? group by job_id order by made_at desc limit ?`;

const reading = perStore((db) => {
  const versions = () =>
    db
      .select({ version: getTableColumns(quoteVersions), paper: getTableColumns(papers), sentAt: quoteSendings.sentAt })
      .from(quoteVersions)
      .innerJoin(papers, eq(papers.id, quoteVersions.paperId))
      .leftJoin(quoteSendings, eq(quoteSendings.versionId, quoteVersions.id));
  return {
    draft: db
      .select()
      .from(quoteDrafts)
      .where(eq(quoteDrafts.jobId, sql.placeholder('jobId')))
      .prepare(),
    versions: versions()
      .where(eq(quoteVersions.jobId, sql.placeholder('jobId')))
      .orderBy(desc(quoteVersions.number))
      .prepare(),
    version: versions()
      .where(eq(quoteVersions.id, sql.placeholder('id')))
      .prepare(),
    inputs: db
      .select({ inputs: quoteVersions.inputs })
      .from(quoteVersions)
      .where(eq(quoteVersions.id, sql.placeholder('id')))
      .prepare(),
    latest: db.$client.prepare<[string, number], { jobId: string; number: number; madeAt: number; currency: string }>(LATEST),
  };
});

type VersionRow = { version: typeof quoteVersions.$inferSelect; paper: typeof papers.$inferSelect; sentAt: number | null };

/** What was changed by hand on a job's draft. */
export function changesOf(db: ReadableDb, jobId: string): KeptChanges {
  const row = reading(db).draft.get({ jobId });
  return { batches: row?.changes ?? [], draftVersion: row?.draftVersion ?? 0 };
}

/** Keep a draft's changes as its next version. The caller has compared versions in the same transaction. `now` in epoch milliseconds. */
export function saveChanges(db: WritableDb, jobId: string, { batches, draftVersion }: KeptChanges, now: number): void {
  const row = { changes: [...batches], draftVersion, updatedAt: now };
  db.insert(quoteDrafts)
    .values({ ...row, jobId })
    .onConflictDoUpdate({ target: quoteDrafts.jobId, set: row })
    .run();
}

/** Every made version of a job's quote, newest first. */
export function versionsOf(db: ReadableDb, jobId: string): QuoteVersion[] {
  return reading(db).versions.all({ jobId }).map(versionOf);
}

/** One made version, if it is there. */
export function versionById(db: ReadableDb, id: string): QuoteVersion | undefined {
  const row = reading(db).version.get({ id });
  return row && versionOf(row);
}

/** What a made version was priced from; null on versions from before this was kept. */
export function inputsOf(db: ReadableDb, versionId: string): FrozenInputs | null {
  return reading(db).inputs.get({ id: versionId })?.inputs ?? null;
}

export type LatestQuote = { jobId: string; number: number; madeAt: string; currency: string };

/** The newest version of each of the jobs that were quoted last from a card, newest first. */
export function latestQuotes(db: ReadableDb, cardId: string, count: number): LatestQuote[] {
  return reading(db)
    .latest.all(cardId, count)
    .map((row) => ({ ...row, madeAt: instantText(row.madeAt) }));
}

export type NewVersion = {
  jobId: string;
  number: number;
  madeAt: number;
  draft: QuoteDraft;
  reply: z.infer<typeof Reply>;
  paperId: string;
  inputs: FrozenInputs;
};

/** Freeze a version. Answers with its id; the index refuses a number that is taken. */
export function insertVersion(db: WritableDb, { jobId, number, madeAt, draft, reply, paperId, inputs }: NewVersion): string {
  const id = newId();
  db.insert(quoteVersions)
    .values({
      id,
      jobId,
      number,
      madeAt,
      currency: draft.currency,
      grossMinor: draft.totals.gross.minor,
      validUntilAt: epochOf(draft.validUntil.at),
      draft,
      replySubject: reply.subject,
      replyText: reply.text,
      paperId,
      inputs,
    })
    .run();
  return id;
}

/** Note that a version was sent; the first sending stands. `sentAt` in epoch milliseconds. */
export function noteSent(db: WritableDb, versionId: string, sentAt: number): void {
  db.insert(quoteSendings).values({ versionId, sentAt }).onConflictDoNothing().run();
}

function versionOf({ version, paper, sentAt }: VersionRow): QuoteVersion {
  return {
    id: version.id,
    jobId: version.jobId,
    number: version.number,
    madeAt: instantText(version.madeAt),
    draft: version.draft,
    sentAt: sentAt === null ? null : instantText(sentAt),
    paper: paperAsShown(paper),
    reply: { subject: version.replySubject, text: version.replyText },
  };
}

/**
 * Jobs, from inquiry to ink. Every change here bumps the row version; the caller has compared versions in the same transaction.
 */
import { desc, eq, sql } from 'drizzle-orm';
import type { Question, Remembered, Span } from '../core/contract/inquiries.ts';
import type { Job } from '../core/contract/jobs.ts';
import type { Moment, Role } from '../core/contract/parts.ts';
import type { BookDay } from '../core/fit/book.ts';
import type { Facts } from '../core/jobs/facts.ts';
import { knownEdits } from '../core/jobs/edits.ts';
import { wholeKnows } from '../core/jobs/knows.ts';
import { ranOut, type Stage, stateOf } from '../core/jobs/state.ts';
import { epochOf, exactInstantText, instantText, wallAt } from '../core/time/read.ts';
import { newId } from './ids.ts';
import { daysOf, replaceDays } from './job-days.ts';
import { newestPencil, type PencilRow } from './pencils.ts';
import { clientById } from './people.ts';
import { insertRow, perStore } from './prepared.ts';
import { jobs } from './schema/jobs.ts';
import { papers, quoteVersions } from './schema/quotes.ts';
import type { ReadableDb, WritableDb } from './store.ts';

export { holdPencil } from './pencils.ts';

type JobRecord = typeof jobs.$inferSelect;
/** Paid dates with their instants, and the zone of their wall times. */
export type PlacedDays = { days: readonly BookDay[]; zone: string };

const reading = perStore((db) => ({
  job: db
    .select()
    .from(jobs)
    .where(eq(jobs.id, sql.placeholder('id')))
    .prepare(),
  papers: db
    .select()
    .from(papers)
    .where(eq(papers.jobId, sql.placeholder('id')))
    .orderBy(desc(papers.madeAt), desc(papers.id))
    .prepare(),
  newestQuote: db
    .select({
      number: quoteVersions.number,
      currency: quoteVersions.currency,
      minor: quoteVersions.grossMinor,
      validUntilAt: quoteVersions.validUntilAt,
    })
    .from(quoteVersions)
    .where(eq(quoteVersions.jobId, sql.placeholder('id')))
    .orderBy(desc(quoteVersions.number))
    .limit(1)
    .prepare(),
  agreed: db
    .select({ currency: quoteVersions.currency, minor: agreedMinor })
    .from(jobs)
    .innerJoin(quoteVersions, sql`${quoteVersions.jobId} = ${jobs.id} and ${quoteVersions.number} = ${jobs.inkedQuote}`)
    .where(eq(jobs.id, sql.placeholder('id')))
    .prepare(),
}));

/** Gross of the offer that was inked, else of the version as it counts for money; read in a row that joins a job and its version. */
export const agreedMinor = sql<number>`coalesce(json_extract(${quoteVersions.draft}, '$.offers[' || (${jobs.inkedOffer} - 1) || '].totals.gross.minor'), ${quoteVersions.grossMinor})`;

/** Number, gross and validity of the newest made quote version of a job. */
export function newestQuote(
  db: ReadableDb,
  jobId: string,
): { number: number; currency: string; minor: number; validUntilAt: number } | undefined {
  return reading(db).newestQuote.get({ id: jobId });
}

/** One job, whole, as it stands at `now` (epoch milliseconds). */
export function jobById(db: ReadableDb, id: string, now: number): Job | undefined {
  const row = reading(db).job.get({ id });
  if (!row) return undefined;
  const pencil = newestPencil(db, id);
  const ink = inkOf(row);
  const quote = (ink ? reading(db).agreed.get({ id }) : undefined) ?? newestQuote(db, id);
  const made = reading(db).papers.all({ id });
  const client = row.clientId === null ? undefined : clientById(db, row.clientId);
  return {
    id,
    version: row.version,
    state: stateOf(row.stage, pencil?.state === 'held' ? pencil.expiresAt : null, now),
    title: row.title,
    organisation: row.organisation,
    contact: { name: row.contactName, email: row.contactEmail, phone: row.contactPhone },
    role: row.role as Role,
    place: row.place,
    days: daysOf(db, id).map(({ date, kind, call, wrap }) => ({ date, kind, call, wrap })),
    replyBy: replyByOf(row),
    budget: row.budget,
    notes: row.notes,
    deliverables: row.deliverables,
    ...(row.edits && row.edits.length > 0 ? { edits: row.edits } : {}),
    message: row.message,
    received: momentAt(row.receivedAt, row.receivedZone),
    questions: row.questions,
    spans: row.spans,
    ...(row.remembered ? { remembered: row.remembered } : {}),
    pencil: pencil ? pencilAsMet(pencil, now) : null,
    ink,
    papers: made.map((paper) => ({
      id: paper.id,
      kind: paper.kind,
      name: paper.name,
      hash: paper.hash,
      bytes: paper.bytes,
      madeAt: instantText(paper.madeAt),
    })),
    total: quote ? { minor: quote.minor, currency: quote.currency } : null,
    client: client ? { id: client.id, name: client.name } : null,
    knows: wholeKnows(row.knows),
    updatedAt: instantText(row.updatedAt),
  };
}

/** A moment on the clock of a zone; `at` in epoch milliseconds. */
export function momentAt(at: number, zone: string): Moment {
  return { wall: wallAt(at, zone), zone, at: instantText(at) };
}

function replyByOf(row: Pick<JobRecord, 'replyByAt' | 'replyByWall' | 'replyByZone'>): Moment | null {
  if (row.replyByAt === null || row.replyByWall === null || row.replyByZone === null) return null;
  return { wall: row.replyByWall, zone: row.replyByZone, at: instantText(row.replyByAt) };
}

/** What was agreed on: version and offer. It stands when ink is cancelled too, since the job then owes what its terms say. */
export function agreedOf(db: ReadableDb, id: string): { quoteVersion: number; offer: number | null } | null {
  const row = reading(db).job.get({ id });
  if (!row || row.inkedQuote === null || (row.stage !== 'inked' && row.stage !== 'cancelled')) return null;
  return { quoteVersion: row.inkedQuote, offer: row.inkedOffer };
}

function inkOf(row: JobRecord): Job['ink'] {
  if (row.stage !== 'inked' || row.inkedAt === null) return null;
  return {
    who: row.inkedWho ?? '',
    how: row.inkedHow ?? '',
    at: instantText(row.inkedAt),
    quoteVersion: row.inkedQuote,
    offer: row.inkedOffer,
  };
}

function pencilAsMet(row: PencilRow, now: number): NonNullable<Job['pencil']> {
  const held = ranOut(row.expiresAt, now) ? 'ran out' : 'live';
  return {
    id: row.id,
    pencilledAt: exactInstantText(row.pencilledAt),
    expires: { wall: row.expiresWall, zone: row.expiresZone, at: instantText(row.expiresAt) },
    state: row.state === 'let go' || row.state === 'inked' ? row.state : held,
  };
}

export type NewJob = {
  facts: Facts;
  placed: PlacedDays;
  message: string | null;
  questions: Question[];
  spans: Span[];
  remembered?: Remembered[] | undefined;
  /** Epoch milliseconds, and the zone of the clock that it was received by. */
  receivedAt: number;
  receivedZone: string;
  now: number;
};

/** Put a job on the books as an inquiry. Answers with its id. */
export function insertJob(db: WritableDb, job: NewJob): string {
  const id = newId();
  const { message, questions, spans, remembered = null, receivedAt, receivedZone, now } = job;
  insertRow(db, jobs, {
    ...factColumns(job.facts),
    id,
    stage: 'inquiry',
    message,
    questions,
    spans,
    remembered,
    receivedAt,
    receivedZone,
    createdAt: now,
    updatedAt: now,
  });
  replaceDays(db, id, job.placed.days, job.placed.zone);
  return id;
}

/** Save all facts of a job and the questions that are still open. `now` in epoch milliseconds; spans stay where none are given. */
export function saveJobFacts(
  db: WritableDb,
  id: string,
  facts: Facts,
  placed: PlacedDays,
  questions: Question[],
  now: number,
  spans?: Span[],
): void {
  db.update(jobs)
    .set({ ...factColumns(facts), questions, ...(spans ? { spans } : {}), version: sql`${jobs.version} + 1`, updatedAt: now })
    .where(eq(jobs.id, id))
    .run();
  replaceDays(db, id, placed.days, placed.zone);
}

/** Note which facts of a job stand as they were corrected before. `now` in epoch milliseconds. */
export function saveRemembered(db: WritableDb, id: string, remembered: Remembered[], now: number): void {
  db.update(jobs)
    .set({ remembered: remembered.length > 0 ? remembered : null, version: sql`${jobs.version} + 1`, updatedAt: now })
    .where(eq(jobs.id, id))
    .run();
}

/** Note what was done last with a job. `now` in epoch milliseconds. */
export function setStage(db: WritableDb, id: string, stage: Exclude<Stage, 'inked'>, now: number): void {
  db.update(jobs)
    .set({ stage, version: sql`${jobs.version} + 1`, updatedAt: now })
    .where(eq(jobs.id, id))
    .run();
}

/** The written yes; `at` in epoch milliseconds, `quote` a version's number, `offer` null on a quote without offers. */
type Yes = { who: string; how: string; at: number; quote: number; offer: number | null };

/** Note the written yes: who said it, how, when, to which offer of which version of the quote. */
export function setInk(db: WritableDb, id: string, ink: Yes, now: number): void {
  db.update(jobs)
    .set({
      stage: 'inked',
      inkedWho: ink.who,
      inkedHow: ink.how,
      inkedAt: ink.at,
      inkedQuote: ink.quote,
      inkedOffer: ink.offer,
      version: sql`${jobs.version} + 1`,
      updatedAt: now,
    })
    .where(eq(jobs.id, id))
    .run();
}

function factColumns(facts: Facts) {
  return {
    title: facts.title,
    organisation: facts.organisation,
    contactName: facts.contact.name,
    contactEmail: facts.contact.email,
    contactPhone: facts.contact.phone,
    role: facts.role,
    placeKey: facts.place?.key ?? null,
    place: facts.place,
    replyByWall: facts.replyBy?.wall ?? null,
    replyByZone: facts.replyBy?.zone ?? null,
    replyByAt: facts.replyBy ? epochOf(facts.replyBy.at) : null,
    budget: facts.budget,
    deliverables: facts.deliverables,
    edits: knownEdits(facts),
    notes: facts.notes,
  };
}

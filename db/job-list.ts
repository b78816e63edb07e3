/**
 * Every job in a row of its own, for the list and the Desk.
 */
import { desc, isNotNull, like, and, sql } from 'drizzle-orm';
import type { Money, Place } from '../core/contract/parts.ts';
import type { Question } from '../core/contract/inquiries.ts';
import type { Stage } from '../core/jobs/state.ts';
import { agreedMinor } from './jobs.ts';
import { perStore } from './prepared.ts';
import { jobDays, jobs, pencils } from './schema/jobs.ts';
import { quoteVersions } from './schema/quotes.ts';
import type { ReadableDb } from './store.ts';

/** What a list needs of a job; instants in epoch milliseconds. */
export type ListedJob = {
  id: string;
  version: number;
  title: string;
  organisation: string;
  clientId: string | null;
  stage: Stage;
  role: string;
  place: Place | null;
  questions: Question[];
  receivedAt: number;
  replyByAt: number | null;
  /** First call and last wrap, with the zone of their wall times. */
  firstCallAt: number | null;
  lastWrapAt: number | null;
  zone: string | null;
  heldUntil: number | null;
  heldZone: string | null;
  /** Gross of what was inked, else of the newest made quote. */
  total: Money | null;
};

/** Whether a version was agreed on and still counts. */
const inked = sql`(${jobs.stage} in ('inked', 'cancelled') and ${jobs.inkedQuote} is not null)`;

const reading = perStore((db) => {
  const span = db
    .select({
      jobId: jobDays.jobId,
      firstCallAt: sql<number>`min(${jobDays.callAt})`.as('first_call_at'),
      lastWrapAt: sql<number>`max(${jobDays.wrapAt})`.as('last_wrap_at'),
      zone: sql<string>`min(${jobDays.zone})`.as('day_zone'),
    })
    .from(jobDays)
    .groupBy(jobDays.jobId)
    .as('span');
  const newest = db
    .select({ jobId: quoteVersions.jobId, number: sql<number>`max(${quoteVersions.number})`.as('newest_number') })
    .from(quoteVersions)
    .groupBy(quoteVersions.jobId)
    .as('newest');
  return {
    all: db
      .select({
        id: jobs.id,
        version: jobs.version,
        title: jobs.title,
        organisation: jobs.organisation,
        clientId: jobs.clientId,
        stage: jobs.stage,
        role: jobs.role,
        place: jobs.place,
        questions: jobs.questions,
        receivedAt: jobs.receivedAt,
        replyByAt: jobs.replyByAt,
        firstCallAt: span.firstCallAt,
        lastWrapAt: span.lastWrapAt,
        zone: span.zone,
        heldUntil: pencils.expiresAt,
        heldZone: pencils.expiresZone,
        currency: quoteVersions.currency,
        minor: sql<number | null>`case when ${inked} then ${agreedMinor} else ${quoteVersions.grossMinor} end`,
      })
      .from(jobs)
      .leftJoin(span, sql`${span.jobId} = ${jobs.id}`)
      .leftJoin(pencils, sql`${pencils.jobId} = ${jobs.id} and ${pencils.state} = 'held'`)
      .leftJoin(newest, sql`${newest.jobId} = ${jobs.id}`)
      .leftJoin(
        quoteVersions,
        sql`${quoteVersions.jobId} = ${jobs.id} and ${quoteVersions.number} = case when ${inked} then ${jobs.inkedQuote} else ${newest.number} end`,
      )
      .orderBy(desc(jobs.receivedAt), desc(jobs.id))
      .prepare(),
    own: db
      .select({ key: jobs.placeKey, place: jobs.place })
      .from(jobs)
      .where(and(like(jobs.placeKey, 'own:%'), isNotNull(jobs.place)))
      .groupBy(jobs.placeKey)
      .prepare(),
  };
});

/** Every job on the books, last received first. */
export function listedJobs(db: ReadableDb): ListedJob[] {
  return reading(db)
    .all.all()
    .map(({ currency, minor, ...job }) => ({ ...job, total: currency === null || minor === null ? null : { minor, currency } }));
}

/** Places that were typed by hand for earlier jobs, each once. */
export function ownPlaces(db: ReadableDb): Place[] {
  return reading(db)
    .own.all()
    .flatMap(({ place }) => (place ? [place] : []));
}

import { sql } from 'drizzle-orm';
import { check, index, integer, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import type { Question, Remembered, Span } from '../../core/contract/inquiries.ts';
import type { Edit, JobDay } from '../../core/contract/jobs.ts';
import type { Knows } from '../../core/contract/knows.ts';
import type { Place } from '../../core/contract/parts.ts';
import type { Cancellation } from '../../core/contract/quotes.ts';
import { createdAt, id, updatedAt, version } from './columns.ts';
import { clients } from './people.ts';

/** The longest stay that may be stored. The overlap query reads only rows that start this long before the probe, so the bound is a check. */
export const LONGEST_STAY_MS = 100 * 86_400_000;

/** Everything from an inquiry to the last payment. `stage` is what was done; "ran out" is derived from the pencil's expiry. */
export const jobs = sqliteTable(
  'jobs',
  {
    id: id(),
    title: text('title').notNull(),
    organisation: text('organisation').notNull().default(''),
    contactName: text('contact_name').notNull().default(''),
    contactEmail: text('contact_email').notNull().default(''),
    contactPhone: text('contact_phone').notNull().default(''),
    stage: text('stage', { enum: ['inquiry', 'quoted', 'pencilled', 'inked', 'let go', 'declined', 'cancelled'] }).notNull(),
    role: text('role').notNull(),
    placeKey: text('place_key'),
    place: text('place', { mode: 'json' }).$type<Place>(),
    message: text('message'),
    questions: text('questions', { mode: 'json' }).$type<Question[]>().notNull(),
    spans: text('spans', { mode: 'json' }).$type<Span[]>().notNull(),
    receivedAt: integer('received_at').notNull(),
    receivedZone: text('received_zone').notNull(),
    replyByWall: text('reply_by_wall'),
    replyByZone: text('reply_by_zone'),
    replyByAt: integer('reply_by_at'),
    budget: text('budget', { mode: 'json' }).$type<{
      amount: number;
      currency?: string | undefined;
      per?: 'day' | 'job' | 'hour' | undefined;
    }>(),
    deliverables: text('deliverables', { mode: 'json' }).$type<string[]>().notNull(),
    edits: text('edits', { mode: 'json' }).$type<Edit[]>(),
    notes: text('notes').notNull().default(''),
    inkedWho: text('inked_who'),
    inkedHow: text('inked_how'),
    inkedAt: integer('inked_at'),
    inkedQuote: integer('inked_quote'),
    inkedOffer: integer('inked_offer'),
    clientId: text('client_id').references(() => clients.id),
    remembered: text('remembered', { mode: 'json' }).$type<Remembered[]>(),
    knows: text('knows', { mode: 'json' }).$type<Knows>(),
    version: version(),
    createdAt: createdAt(),
    updatedAt: updatedAt(),
  },
  (t) => [
    index('jobs_by_stage').on(t.stage, t.replyByAt),
    index('jobs_by_client').on(t.clientId),
    check('jobs_stage', sql`${t.stage} in ('inquiry', 'quoted', 'pencilled', 'inked', 'let go', 'declined', 'cancelled')`),
    check(
      'jobs_reply_by_whole',
      sql`(${t.replyByWall} is null) = (${t.replyByAt} is null) and (${t.replyByZone} is null) = (${t.replyByAt} is null)`,
    ),
    check(
      'jobs_ink_whole',
      sql`(${t.stage} <> 'inked') or (${t.inkedWho} is not null and ${t.inkedAt} is not null and ${t.inkedHow} is not null)`,
    ),
    check('jobs_place_json', sql`${t.place} is null or json_valid(${t.place})`),
  ],
);

/** Paid dates. Wall times are the truth for the future; instants are derived and may be rebuilt. */
export const jobDays = sqliteTable(
  'job_days',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => jobs.id, { onDelete: 'cascade' }),
    date: text('date').notNull(),
    kind: text('kind').notNull(),
    call: text('call').notNull(),
    wrap: text('wrap').notNull(),
    zone: text('zone').notNull(),
    callAt: integer('call_at').notNull(),
    wrapAt: integer('wrap_at').notNull(),
  },
  (t) => [
    index('job_days_by_job').on(t.jobId, t.callAt),
    check('job_days_end_after_start', sql`${t.wrapAt} > ${t.callAt}`),
    check('job_days_length', sql`${t.wrapAt} - ${t.callAt} <= 172800000`),
    check('job_days_kind', sql`${t.kind} in ('shoot', 'half', 'travel', 'prep', 'standby', 'edit')`),
  ],
);

/** Runs of consecutive paid dates at a place, made anew whenever a job's days change. Half-open [start, end). */
export const stays = sqliteTable(
  'stays',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => jobs.id, { onDelete: 'cascade' }),
    startAt: integer('start_at').notNull(),
    endAt: integer('end_at').notNull(),
  },
  (t) => [
    index('stays_by_time').on(t.startAt, t.endAt, t.jobId),
    index('stays_by_job').on(t.jobId),
    check('stays_end_after_start', sql`${t.endAt} > ${t.startAt}`),
    check('stays_longest', sql`${t.endAt} - ${t.startAt} <= 8640000000`),
  ],
);

/** Tentative holds. One live pencil a job; "ran out" is `expires_at` at or before now. */
export const pencils = sqliteTable(
  'pencils',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => jobs.id, { onDelete: 'cascade' }),
    pencilledAt: integer('pencilled_at').notNull(),
    expiresWall: text('expires_wall').notNull(),
    expiresZone: text('expires_zone').notNull(),
    expiresAt: integer('expires_at').notNull(),
    state: text('state', { enum: ['held', 'let go', 'inked', 'renewed'] }).notNull(),
    endedAt: integer('ended_at'),
  },
  (t) => [
    uniqueIndex('pencils_one_held')
      .on(t.jobId)
      .where(sql`${t.state} = 'held'`),
    index('pencils_by_job').on(t.jobId, t.pencilledAt),
    index('pencils_by_expiry').on(t.expiresAt),
    check('pencils_state', sql`${t.state} in ('held', 'let go', 'inked', 'renewed')`),
  ],
);

/** Ink that was called off: cancelled, or postponed to a date. What it owes is kept as it was shown; taken back, it stays as a trace. */
export const callingsOff = sqliteTable(
  'callings_off',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => jobs.id, { onDelete: 'cascade' }),
    at: integer('at').notNull(),
    toldAt: integer('told_at').notNull(),
    quoteVersion: integer('quote_version').notNull(),
    postponedTo: text('postponed_to'),
    daysBefore: text('days_before', { mode: 'json' }).$type<JobDay[]>().notNull(),
    owes: text('owes', { mode: 'json' }).$type<Cancellation>().notNull(),
    takenBackAt: integer('taken_back_at'),
  },
  (t) => [
    index('callings_off_by_job').on(t.jobId, t.at),
    check('callings_off_told_by_then', sql`${t.toldAt} <= ${t.at}`),
    check('callings_off_json', sql`json_valid(${t.owes}) and json_valid(${t.daysBefore})`),
  ],
);

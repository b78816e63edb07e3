import { sql } from 'drizzle-orm';
import { check, index, integer, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import { createdAt, id, updatedAt, version } from './columns.ts';
import { jobs } from './jobs.ts';
import { hands } from './people.ts';

/** Hours as they were worked, by person and call. The instants are the truth; `wrap_at` is null while the day runs. */
export const workedDays = sqliteTable(
  'worked_days',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => jobs.id, { onDelete: 'cascade' }),
    handId: text('hand_id').references(() => hands.id),
    date: text('date').notNull(),
    kind: text('kind').notNull(),
    zone: text('zone').notNull(),
    call: text('call').notNull(),
    wrap: text('wrap'),
    callAt: integer('call_at').notNull(),
    wrapAt: integer('wrap_at'),
    unpaidBreakMinutes: integer('unpaid_break_minutes').notNull().default(0),
    note: text('note').notNull().default(''),
    version: version(),
    createdAt: createdAt(),
    updatedAt: updatedAt(),
  },
  (t) => [
    index('worked_days_by_job').on(t.jobId, t.callAt),
    uniqueIndex('worked_days_mine')
      .on(t.jobId, t.callAt)
      .where(sql`${t.handId} is null`),
    uniqueIndex('worked_days_of_hands').on(t.jobId, t.handId, t.callAt),
    check('worked_days_wrap_whole', sql`(${t.wrap} is null) = (${t.wrapAt} is null)`),
    check('worked_days_end_after_start', sql`${t.wrapAt} is null or ${t.wrapAt} > ${t.callAt}`),
    check('worked_days_length', sql`${t.wrapAt} is null or ${t.wrapAt} - ${t.callAt} <= 86400000`),
    check('worked_days_breaks', sql`${t.unpaidBreakMinutes} >= 0`),
    check('worked_days_kind', sql`${t.kind} in ('shoot', 'half', 'travel', 'prep', 'standby', 'edit')`),
  ],
);

/** Overtime that was asked for on site, and what was said: who, when, how. */
export const overtimeAsks = sqliteTable(
  'overtime_asks',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => jobs.id, { onDelete: 'cascade' }),
    date: text('date').notNull(),
    minutes: integer('minutes').notNull(),
    askedAt: integer('asked_at').notNull(),
    state: text('state', { enum: ['asked', 'approved', 'refused'] }).notNull(),
    who: text('who').notNull().default(''),
    at: integer('at'),
    how: text('how').notNull().default(''),
  },
  (t) => [
    index('overtime_asks_by_job').on(t.jobId, t.date),
    check('overtime_asks_minutes', sql`${t.minutes} between 1 and 1440`),
    check('overtime_asks_state', sql`${t.state} in ('asked', 'approved', 'refused')`),
    check('overtime_asks_settled', sql`(${t.state} = 'asked') = (${t.at} is null)`),
  ],
);

/** What was paid to a hand for a job. Never changed: a trigger refuses it; a mistake is turned by a row with the other sign. */
export const handPayments = sqliteTable(
  'hand_payments',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => jobs.id),
    handId: text('hand_id')
      .notNull()
      .references(() => hands.id),
    amountMinor: integer('amount_minor').notNull(),
    currency: text('currency').notNull(),
    on: text('on_date').notNull(),
    how: text('how').notNull().default(''),
    madeAt: integer('made_at').notNull(),
  },
  (t) => [
    index('hand_payments_by_job').on(t.jobId, t.handId),
    check('hand_payments_amount', sql`${t.amountMinor} <> 0`),
    check('hand_payments_currency', sql`length(${t.currency}) = 3`),
  ],
);

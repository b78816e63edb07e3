import { sql } from 'drizzle-orm';
import { check, index, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { Tax } from '../../core/money/taxes.ts';
import { createdAt, id, updatedAt, version } from './columns.ts';
import { jobs } from './jobs.ts';
import { papers } from './quotes.ts';

/** What was spent, for a job or not. `rate` is the job's currency for one unit of the expense's, an exact decimal with its date. */
export const expenses = sqliteTable(
  'expenses',
  {
    id: id(),
    jobId: text('job_id').references(() => jobs.id),
    on: text('on_date').notNull(),
    category: text('category').notNull(),
    what: text('what').notNull(),
    amountMinor: integer('amount_minor').notNull(),
    currency: text('currency').notNull(),
    rate: text('rate'),
    rateDate: text('rate_date'),
    markUpPercent: text('mark_up_percent').notNull().default('0'),
    billed: integer('billed', { mode: 'boolean' }).notNull(),
    taxes: text('taxes', { mode: 'json' }).$type<Tax[]>(),
    receiptId: text('receipt_id').references(() => papers.id),
    version: version(),
    createdAt: createdAt(),
    updatedAt: updatedAt(),
  },
  (t) => [
    index('expenses_by_job').on(t.jobId, t.on),
    index('expenses_by_date').on(t.on),
    check('expenses_amount', sql`${t.amountMinor} > 0`),
    check('expenses_currency', sql`length(${t.currency}) = 3`),
    check('expenses_rate_whole', sql`(${t.rate} is null) = (${t.rateDate} is null)`),
    check('expenses_category', sql`${t.category} in ('travel', 'lodging', 'meals', 'parking', 'sub-hire', 'consumables', 'fees', 'other')`),
    check('expenses_billed_for_a_job', sql`${t.billed} = 0 or ${t.jobId} is not null`),
  ],
);

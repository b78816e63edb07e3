import { sql } from 'drizzle-orm';
import { check, index, integer, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import { createdAt, id, updatedAt, version } from './columns.ts';
import { jobs } from './jobs.ts';
import { hands } from './people.ts';

/** Dates of a job that a hand was asked for, and what they said. `at` is when that was; `how` is in words. */
export const handDates = sqliteTable(
  'hand_dates',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => jobs.id, { onDelete: 'cascade' }),
    handId: text('hand_id')
      .notNull()
      .references(() => hands.id),
    date: text('date').notNull(),
    state: text('state', { enum: ['asked', 'pencilled', 'said yes', 'said no', 'let go'] }).notNull(),
    askedAt: integer('asked_at').notNull(),
    at: integer('at').notNull(),
    how: text('how').notNull().default(''),
    version: version(),
    createdAt: createdAt(),
    updatedAt: updatedAt(),
  },
  (t) => [
    uniqueIndex('hand_dates_once').on(t.jobId, t.handId, t.date),
    index('hand_dates_by_hand').on(t.handId, t.date),
    index('hand_dates_open').on(t.state, t.date),
    check('hand_dates_state', sql`${t.state} in ('asked', 'pencilled', 'said yes', 'said no', 'let go')`),
    check('hand_dates_date', sql`${t.date} glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'`),
  ],
);

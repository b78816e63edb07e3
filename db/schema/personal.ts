import { sql } from 'drizzle-orm';
import { check, index, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import { id, updatedAt, version } from './columns.ts';

/** Time of my own. Wall times are the truth, instants follow from them. Half-open. */
export const personalTimes = sqliteTable(
  'personal_times',
  {
    id: id(),
    title: text('title').notNull(),
    fromWall: text('from_wall').notNull(),
    toWall: text('to_wall').notNull(),
    zone: text('zone').notNull(),
    startAt: integer('start_at').notNull(),
    endAt: integer('end_at').notNull(),
    hardness: text('hardness', { enum: ['never', 'settle'] }).notNull(),
    note: text('note').notNull().default(''),
    version: version(),
    updatedAt: updatedAt(),
  },
  (t) => [
    index('personal_times_by_end').on(t.endAt, t.startAt),
    check('personal_times_end_after_start', sql`${t.endAt} > ${t.startAt}`),
    check('personal_times_hardness', sql`${t.hardness} in ('never', 'settle')`),
  ],
);

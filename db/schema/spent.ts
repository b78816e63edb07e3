import { sql } from 'drizzle-orm';
import { check, index, integer, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import { deliverables, stages } from './deliverables.ts';
import { id, version } from './columns.ts';

/** Time that an edit really took, half-open [start, end). `end_at` is null while it runs; at most one runs in all. */
export const timeSpent = sqliteTable(
  'time_spent',
  {
    id: id(),
    deliverableId: text('deliverable_id')
      .notNull()
      .references(() => deliverables.id, { onDelete: 'cascade' }),
    stageId: text('stage_id').references(() => stages.id, { onDelete: 'set null' }),
    startAt: integer('start_at').notNull(),
    endAt: integer('end_at'),
    typed: integer('typed', { mode: 'boolean' }).notNull(),
    note: text('note').notNull().default(''),
    version: version(),
  },
  (t) => [
    index('time_spent_by_deliverable').on(t.deliverableId, t.startAt),
    index('time_spent_by_stage').on(t.stageId),
    uniqueIndex('time_spent_one_runs')
      .on(sql`(${t.endAt} is null)`)
      .where(sql`${t.endAt} is null`),
    check('time_spent_end_after_start', sql`${t.endAt} is null or ${t.endAt} > ${t.startAt}`),
    check('time_spent_typed_ends', sql`${t.typed} = 0 or ${t.endAt} is not null`),
  ],
);

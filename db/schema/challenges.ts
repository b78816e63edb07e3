import { sql } from 'drizzle-orm';
import { check, index, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import { id } from './columns.ts';
import { pencils } from './jobs.ts';

/** The holder of a pencil was asked for a yes or no until a moment; the newest counts. */
export const challenges = sqliteTable(
  'challenges',
  {
    id: id(),
    pencilId: text('pencil_id')
      .notNull()
      .references(() => pencils.id, { onDelete: 'cascade' }),
    askedAt: integer('asked_at').notNull(),
    untilAt: integer('until_at').notNull(),
    untilZone: text('until_zone').notNull(),
  },
  (t) => [index('challenges_by_pencil').on(t.pencilId, t.askedAt), check('challenges_until_after_asked', sql`${t.untilAt} > ${t.askedAt}`)],
);

import { sql } from 'drizzle-orm';
import { check, index, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import { id } from './columns.ts';

/** One row for each deed: what was done, and the row as it was before, so that it can be undone and a dispute answered. */
export const history = sqliteTable(
  'history',
  {
    id: id(),
    at: integer('at').notNull(),
    subject: text('subject').notNull(),
    subjectId: text('subject_id').notNull(),
    deed: text('deed').notNull(),
    sentence: text('sentence').notNull(),
    before: text('before', { mode: 'json' }).$type<unknown>(),
  },
  (t) => [
    index('history_by_subject').on(t.subject, t.subjectId, t.at),
    check('history_json', sql`${t.before} is null or json_valid(${t.before})`),
  ],
);

/** Results of deeds by their idempotency key: a repeated deed answers with the first result. */
export const deeds = sqliteTable(
  'deeds',
  {
    key: text('key').primaryKey(),
    procedure: text('procedure').notNull(),
    at: integer('at').notNull(),
    inputHash: text('input_hash').notNull(),
    result: text('result', { mode: 'json' }).$type<unknown>().notNull(),
  },
  (t) => [index('deeds_by_age').on(t.at), check('deeds_json', sql`json_valid(${t.result})`)],
);

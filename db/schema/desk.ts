import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';

/** Lines of the Desk that were read and put away, by their name. */
export const putAwayLines = sqliteTable('put_away_lines', {
  line: text('line').primaryKey(),
  at: integer('at').notNull(),
});

import { sql } from 'drizzle-orm';
import { check, index, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import { id } from './columns.ts';

/** One row, id 1: the zone data that the instants of wall times were last built with. */
export const zoneData = sqliteTable(
  'zone_data',
  {
    id: integer('id').primaryKey(),
    version: text('version').notNull(),
    at: integer('at').notNull(),
  },
  (t) => [check('zone_data_one_row', sql`${t.id} = 1`)],
);

/** What moved when the instants were built anew, in words, until a person puts it away. */
export const clockNotes = sqliteTable(
  'clock_notes',
  {
    id: id(),
    at: integer('at').notNull(),
    jobId: text('job_id'),
    sentence: text('sentence').notNull(),
    putAwayAt: integer('put_away_at'),
  },
  (t) => [index('clock_notes_by_put_away').on(t.putAwayAt, t.at)],
);

import { sql } from 'drizzle-orm';
import { check, index, integer, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import type { LegFields, LegNews } from '../../core/contract/trips.ts';
import type { Place } from '../../core/contract/parts.ts';
import { id, updatedAt, version } from './columns.ts';
import { jobs } from './jobs.ts';

/** Ways that were typed. The pair is stored with the smaller key first, since a way serves both directions. */
export const ways = sqliteTable(
  'ways',
  {
    id: id(),
    lowKey: text('low_key').notNull(),
    highKey: text('high_key').notNull(),
    from: text('from_place', { mode: 'json' }).$type<Place>().notNull(),
    to: text('to_place', { mode: 'json' }).$type<Place>().notNull(),
    mode: text('mode').notNull(),
    minutes: integer('minutes').notNull(),
    distance: text('distance'),
    note: text('note').notNull().default(''),
    version: version(),
    updatedAt: updatedAt(),
  },
  (t) => [
    uniqueIndex('ways_pair').on(t.lowKey, t.highKey, t.mode),
    check('ways_order', sql`${t.lowKey} < ${t.highKey}`),
    check('ways_minutes', sql`${t.minutes} > 0`),
    check('ways_mode', sql`${t.mode} in ('drive', 'flight', 'rail', 'ferry', 'ride')`),
  ],
);

/** Movements of jobs that were ticketed or typed. The instants of a ticket are the truth. */
export const legs = sqliteTable(
  'legs',
  {
    id: id(),
    jobId: text('job_id')
      .notNull()
      .references(() => jobs.id, { onDelete: 'cascade' }),
    departAt: integer('depart_at').notNull(),
    arriveAt: integer('arrive_at').notNull(),
    fields: text('fields', { mode: 'json' }).$type<LegFields & { news?: LegNews | null }>().notNull(),
    version: version(),
    updatedAt: updatedAt(),
  },
  (t) => [
    index('legs_by_job').on(t.jobId, t.departAt),
    check('legs_arrive_after_depart', sql`${t.arriveAt} > ${t.departAt}`),
    check('legs_fields_json', sql`json_valid(${t.fields})`),
  ],
);

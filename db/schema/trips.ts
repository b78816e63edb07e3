import { sql } from 'drizzle-orm';
import { check, integer, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import type { Place } from '../../core/contract/parts.ts';
import { id, updatedAt, version } from './columns.ts';

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

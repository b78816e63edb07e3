import { sql } from 'drizzle-orm';
import { check, index, integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { CalendarTrouble, LeftOut, OutEvent } from '../../core/contract/calendars.ts';
import { id, updatedAt, version } from './columns.ts';

/** The longest imported stretch that may be stored; longer ones are cut. The query near a span reads only rows that start this long before it. */
export const LONGEST_IMPORTED_MS = 100 * 86_400_000;

/** Calendars of other programs: a file or a folder of files on this computer, and what came of reading it last. */
export const calendars = sqliteTable(
  'calendars',
  {
    id: id(),
    name: text('name').notNull(),
    path: text('path').notNull(),
    zone: text('zone').notNull(),
    hardness: text('hardness', { enum: ['never', 'settle', 'ignore all-day'] }).notNull(),
    isOn: integer('is_on', { mode: 'boolean' }).notNull(),
    version: version(),
    updatedAt: updatedAt(),
    /** When it was last read to the end; null before. */
    readAt: integer('read_at'),
    /** What stood there then: names, sizes and times of the files. */
    stamp: text('stamp'),
    /** First instant that was read for. */
    readFrom: integer('read_from'),
    events: integer('events').notNull().default(0),
    leftOut: text('left_out', { mode: 'json' }).$type<LeftOut[]>().notNull().default([]),
    /** Why it could not be read, since when; what was read before stays. */
    trouble: text('trouble', { mode: 'json' }).$type<CalendarTrouble>(),
    troubleAt: integer('trouble_at'),
  },
  (t) => [
    check('calendars_hardness', sql`${t.hardness} in ('never', 'settle', 'ignore all-day')`),
    check('calendars_read_whole', sql`(${t.readAt} is null) = (${t.stamp} is null) and (${t.readAt} is null) = (${t.readFrom} is null)`),
    check('calendars_trouble_whole', sql`(${t.trouble} is null) = (${t.troubleAt} is null)`),
    check('calendars_json', sql`json_valid(${t.leftOut}) and (${t.trouble} is null or json_valid(${t.trouble}))`),
  ],
);

/** What those calendars take, in a window around the day on which they were read. Made anew with every reading. Half-open. */
export const importedEvents = sqliteTable(
  'imported_events',
  {
    calendarId: text('calendar_id')
      .notNull()
      .references(() => calendars.id, { onDelete: 'cascade' }),
    number: integer('number').notNull(),
    uid: text('uid').notNull(),
    title: text('title').notNull(),
    startAt: integer('start_at').notNull(),
    endAt: integer('end_at').notNull(),
    isAllDay: integer('is_all_day', { mode: 'boolean' }).notNull(),
    isTentative: integer('is_tentative', { mode: 'boolean' }).notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.calendarId, t.number] }),
    index('imported_events_by_time').on(t.startAt, t.endAt),
    check('imported_events_end_after_start', sql`${t.endAt} > ${t.startAt}`),
    check('imported_events_longest', sql`${t.endAt} - ${t.startAt} <= 8640000000`),
  ],
);

/** Where the program's own dates are written for other programs: one row, or none while nobody asked for it. */
export const calendarOut = sqliteTable(
  'calendar_out',
  {
    id: integer('id').primaryKey(),
    folder: text('folder').notNull(),
    isOn: integer('is_on', { mode: 'boolean' }).notNull(),
    /** The feed on this computer: its port stays, its key goes when it is revoked. */
    feedPort: integer('feed_port'),
    feedKey: text('feed_key'),
    writtenAt: integer('written_at'),
    /** SHA-256 of what was written last. */
    writtenHash: text('written_hash'),
    trouble: text('trouble', { mode: 'json' }).$type<CalendarTrouble>(),
    feedTrouble: text('feed_trouble', { mode: 'json' }).$type<CalendarTrouble>(),
    version: version(),
    updatedAt: updatedAt(),
  },
  (t) => [
    check('calendar_out_one', sql`${t.id} = 1`),
    check('calendar_out_feed', sql`${t.feedKey} is null or ${t.feedPort} is not null`),
    check('calendar_out_port', sql`${t.feedPort} is null or ${t.feedPort} between 1024 and 65535`),
    check(
      'calendar_out_json',
      sql`(${t.trouble} is null or json_valid(${t.trouble})) and (${t.feedTrouble} is null or json_valid(${t.feedTrouble}))`,
    ),
  ],
);

/** What stands in that file, so that a change raises the sequence and what is gone is written as cancelled. */
export const exportedEvents = sqliteTable(
  'exported_events',
  {
    uid: text('uid').primaryKey(),
    sequence: integer('sequence').notNull(),
    event: text('event', { mode: 'json' }).$type<OutEvent>().notNull(),
    changedAt: integer('changed_at').notNull(),
  },
  (t) => [check('exported_events_sequence', sql`${t.sequence} >= 0`), check('exported_events_json', sql`json_valid(${t.event})`)],
);

/**
 * Calendars of other programs, and what they take.
 */
import { asc, eq, sql } from 'drizzle-orm';
import type { Busy } from '../core/calendars/expand.ts';
import type { Calendar, CalendarFields, CalendarTrouble, LeftOut } from '../core/contract/calendars.ts';
import type { ImportedTime } from '../core/fit/book.ts';
import { instantText } from '../core/time/read.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { calendars, LONGEST_IMPORTED_MS } from './schema/calendars.ts';
import type { ReadableDb, WritableDb } from './store.ts';

type Row = typeof calendars.$inferSelect;
/** What the reading of a calendar goes by. Instants in epoch milliseconds. */
export type CalendarReadState = Pick<Row, 'stamp' | 'readAt' | 'readFrom' | 'troubleAt'> & { calendar: Calendar };
type NearRow = {
  calendarId: string;
  calendar: string;
  title: string;
  startAt: number;
  endAt: number;
  isAllDay: number;
  isTentative: number;
  hardness: Row['hardness'];
};

// Only the stretch of the index that can reach into the span is read: none is longer than the schema's bound.
export const IMPORTED_NEAR = `
  select calendars.id as calendarId, calendars.name as calendar, imported_events.title, imported_events.start_at as startAt,
    imported_events.end_at as endAt, imported_events.is_all_day as isAllDay, imported_events.is_tentative as isTentative, calendars.hardness
  from imported_events
  join calendars on calendars.id = imported_events.calendar_id
  where imported_events.start_at < :to and imported_events.start_at > :from - ${LONGEST_IMPORTED_MS} and imported_events.end_at > :from
    and calendars.is_on = 1 and not (calendars.hardness = 'ignore all-day' and imported_events.is_all_day = 1)
  order by imported_events.start_at, imported_events.end_at, calendars.id, imported_events.number`;

const reading = perStore((db) => ({
  all: db.select().from(calendars).orderBy(asc(calendars.name), asc(calendars.id)).prepare(),
  one: db
    .select()
    .from(calendars)
    .where(eq(calendars.id, sql.placeholder('id')))
    .prepare(),
  near: db.$client.prepare<[{ from: number; to: number }], NearRow>(IMPORTED_NEAR),
}));
const writing = perStore((db) => ({
  clear: db.$client.prepare<[string]>('delete from imported_events where calendar_id = ?'),
  add: db.$client.prepare<[string, number, string, string, number, number, number, number]>(
    'insert into imported_events (calendar_id, number, uid, title, start_at, end_at, is_all_day, is_tentative) values (?, ?, ?, ?, ?, ?, ?, ?)',
  ),
}));

function calendarOf({ id, name, path, zone, hardness, isOn, version, readAt, events, leftOut, trouble }: Row): Calendar {
  return {
    id,
    name,
    path,
    zone,
    hardness,
    isOn,
    version,
    readAt: readAt === null ? null : instantText(readAt),
    busy: events,
    leftOut,
    trouble,
  };
}

export function allCalendars(db: ReadableDb): Calendar[] {
  return reading(db).all.all().map(calendarOf);
}

export function calendarById(db: ReadableDb, id: string): Calendar | undefined {
  const row = reading(db).one.get({ id });
  return row && calendarOf(row);
}

/** Every calendar with what its reading goes by. */
export function calendarReadStates(db: ReadableDb): CalendarReadState[] {
  return reading(db)
    .all.all()
    .map((row) => ({ calendar: calendarOf(row), stamp: row.stamp, readAt: row.readAt, readFrom: row.readFrom, troubleAt: row.troubleAt }));
}

/** What lies in [from, to), epoch ms, as the check takes it. What is tentative is only good to know. */
export function importedNear(db: ReadableDb, span: { from: number; to: number }): ImportedTime[] {
  return reading(db)
    .near.all(span)
    .map(({ isAllDay, isTentative, hardness, ...time }) => ({
      ...time,
      allDay: isAllDay === 1,
      hardness: isTentative === 1 ? 'know' : hardness === 'never' ? 'never' : 'settle',
    }));
}

/** Save a calendar: new, or the next version of `before`. What was read stays until it is read again. `now` in epoch ms. */
export function keepCalendar(db: WritableDb, before: Calendar | undefined, fields: CalendarFields, now: number): Calendar {
  const row = { id: before?.id ?? newId(), ...fields, version: (before?.version ?? 0) + 1, updatedAt: now };
  db.insert(calendars).values(row).onConflictDoUpdate({ target: calendars.id, set: row }).run();
  // Another file, or another clock: what was read of the old one says nothing.
  if (before && (before.path !== fields.path || before.zone !== fields.zone)) {
    writing(db).clear.run(row.id);
    db.update(calendars)
      .set({ readAt: null, stamp: null, readFrom: null, events: 0, leftOut: [], trouble: null, troubleAt: null })
      .where(eq(calendars.id, row.id))
      .run();
  }
  const kept = calendarById(db, row.id);
  if (!kept) throw new Error('a calendar that was just kept is not there');
  return kept;
}

export function dropCalendar(db: WritableDb, id: string): void {
  db.delete(calendars).where(eq(calendars.id, id)).run();
}

export type CalendarRead = { busy: readonly Busy[]; leftOut: LeftOut[]; stamp: string; readFrom: number };

/** A calendar was read to the end: what it takes is made anew. `now` in epoch ms. */
export function setCalendarRead(db: WritableDb, id: string, { busy, leftOut, stamp, readFrom }: CalendarRead, now: number): void {
  const { clear, add } = writing(db);
  clear.run(id);
  for (const [number, { uid, title, startAt, endAt, allDay, tentative }] of busy.entries())
    add.run(id, number, uid, title, startAt, endAt, Number(allDay), Number(tentative));
  db.update(calendars)
    .set({ readAt: now, stamp, readFrom, events: busy.length, leftOut, trouble: null, troubleAt: null })
    .where(eq(calendars.id, id))
    .run();
}

/** A calendar could not be read. What was read before stays; since when it cannot be read is kept from the first time. `now` in epoch ms. */
export function setCalendarTrouble(db: WritableDb, id: string, trouble: CalendarTrouble, now: number): void {
  db.update(calendars)
    .set({ trouble, troubleAt: sql`coalesce(${calendars.troubleAt}, ${now})` })
    .where(eq(calendars.id, id))
    .run();
}

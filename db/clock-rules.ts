/**
 * Which zone data the instants were built with, what hangs on wall times, and the notes on what moved.
 */
import { and, asc, desc, eq, gt, isNotNull, isNull, sql } from 'drizzle-orm';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { clockNotes, zoneData } from './schema/clock-rules.ts';
import { jobDays, jobs, pencils } from './schema/jobs.ts';
import { personalTimes } from './schema/personal.ts';
import type { ReadableDb, WritableDb } from './store.ts';

const ONLY = 1;
export type ClockNote = typeof clockNotes.$inferSelect;

const reading = perStore((db) => ({
  version: db
    .select({ version: zoneData.version })
    .from(zoneData)
    .where(eq(zoneData.id, sql.placeholder('id')))
    .prepare(),
  jobs: db
    .selectDistinct({ id: jobs.id, title: jobs.title, zone: jobDays.zone })
    .from(jobDays)
    .innerJoin(jobs, eq(jobs.id, jobDays.jobId))
    .where(gt(jobDays.callAt, sql.placeholder('now')))
    .orderBy(asc(jobs.id))
    .prepare(),
  pencils: db
    .select({
      id: pencils.id,
      jobId: pencils.jobId,
      title: jobs.title,
      wall: pencils.expiresWall,
      zone: pencils.expiresZone,
      at: pencils.expiresAt,
    })
    .from(pencils)
    .innerJoin(jobs, eq(jobs.id, pencils.jobId))
    .where(and(eq(pencils.state, 'held'), gt(pencils.expiresAt, sql.placeholder('now'))))
    .orderBy(asc(pencils.id))
    .prepare(),
  replies: db
    .select({ jobId: jobs.id, title: jobs.title, wall: jobs.replyByWall, zone: jobs.replyByZone, at: jobs.replyByAt })
    .from(jobs)
    .where(and(isNotNull(jobs.replyByAt), gt(jobs.replyByAt, sql.placeholder('now'))))
    .orderBy(asc(jobs.id))
    .prepare(),
  personal: db
    .select()
    .from(personalTimes)
    .where(gt(personalTimes.startAt, sql.placeholder('now')))
    .orderBy(asc(personalTimes.id))
    .prepare(),
  notes: db.select().from(clockNotes).where(isNull(clockNotes.putAwayAt)).orderBy(desc(clockNotes.at), asc(clockNotes.id)).prepare(),
}));

/** The zone data that instants were last built with; nothing in a new store. */
export function zoneDataVersion(db: ReadableDb): string | undefined {
  return reading(db).version.get({ id: ONLY })?.version;
}

/** Note the zone data that all instants are built with now. `now` in epoch milliseconds, here and below. */
export function setZoneDataVersion(db: WritableDb, version: string, now: number): void {
  db.insert(zoneData)
    .values({ id: ONLY, version, at: now })
    .onConflictDoUpdate({ target: zoneData.id, set: { version, at: now } })
    .run();
}

/** Jobs that have a call still to come, with the zone of their wall times. */
export function jobsToCome(db: ReadableDb, now: number): { id: string; title: string; zone: string }[] {
  return reading(db).jobs.all({ now });
}

type Hanging = { jobId: string; title: string; wall: string; zone: string; at: number };

/** Held pencils that have not run out. */
export function pencilsToCome(db: ReadableDb, now: number): (Hanging & { id: string })[] {
  return reading(db).pencils.all({ now });
}

/** Replies that are still to be given. */
export function repliesToCome(db: ReadableDb, now: number): Hanging[] {
  return reading(db)
    .replies.all({ now })
    .flatMap(({ wall, zone, at, ...job }) => (wall === null || zone === null || at === null ? [] : [{ ...job, wall, zone, at }]));
}

/** Own time that has not begun. */
export function personalToCome(db: ReadableDb, now: number): (typeof personalTimes.$inferSelect)[] {
  return reading(db).personal.all({ now });
}

export function movePencil(db: WritableDb, id: string, expiresAt: number): void {
  db.update(pencils).set({ expiresAt }).where(eq(pencils.id, id)).run();
}

export function moveReply(db: WritableDb, jobId: string, replyByAt: number): void {
  db.update(jobs)
    .set({ replyByAt, version: sql`${jobs.version} + 1` })
    .where(eq(jobs.id, jobId))
    .run();
}

export function movePersonal(db: WritableDb, id: string, { startAt, endAt }: { startAt: number; endAt: number }): void {
  db.update(personalTimes)
    .set({ startAt, endAt, version: sql`${personalTimes.version} + 1` })
    .where(eq(personalTimes.id, id))
    .run();
}

export function addClockNote(db: WritableDb, note: Pick<ClockNote, 'at' | 'jobId' | 'sentence'>): void {
  db.insert(clockNotes)
    .values({ id: newId(), ...note })
    .run();
}

/** What moved and was not put away, newest first. */
export function clockNotesOf(db: ReadableDb): ClockNote[] {
  return reading(db).notes.all();
}

/** Put a note away at an instant, or bring it back with null. */
export function putClockNoteAway(db: WritableDb, id: string, putAwayAt: number | null): void {
  db.update(clockNotes).set({ putAwayAt }).where(eq(clockNotes.id, id)).run();
}

/**
 * Where the program's own dates are written for other programs, and what stands written there.
 */
import { and, asc, eq, gt, isNotNull, isNull, notExists, or, sql, type SQL } from 'drizzle-orm';
import type { CalendarTrouble, OutEvent } from '../core/contract/calendars.ts';
import type { HeldDay, PromisedEdit } from '../core/calendars/out.ts';
import type { Written } from '../core/calendars/write.ts';
import type { DayKind } from '../core/contract/parts.ts';
import { perStore } from './prepared.ts';
import { calendarOut, exportedEvents } from './schema/calendars.ts';
import { deliverables } from './schema/deliverables.ts';
import { jobDays, jobs, pencils } from './schema/jobs.ts';
import type { ReadableDb, WritableDb } from './store.ts';

const ONLY = 1;
export type OutRow = typeof calendarOut.$inferSelect;

const reading = perStore((db) => ({
  out: db
    .select()
    .from(calendarOut)
    .where(eq(calendarOut.id, sql.placeholder('id')))
    .prepare(),
  exported: db.select().from(exportedEvents).orderBy(asc(exportedEvents.uid)).prepare(),
  count: db
    .select({ count: sql<number>`count(*)` })
    .from(exportedEvents)
    .prepare(),
  days: db
    .select({
      jobId: jobs.id,
      title: jobs.title,
      stage: jobs.stage,
      place: jobs.place,
      kind: jobDays.kind,
      call: jobDays.call,
      wrap: jobDays.wrap,
      zone: jobDays.zone,
      callAt: jobDays.callAt,
      wrapAt: jobDays.wrapAt,
    })
    .from(jobDays)
    .innerJoin(jobs, eq(jobs.id, jobDays.jobId))
    .leftJoin(pencils, and(eq(pencils.jobId, jobs.id), eq(pencils.state, 'held')))
    .where(and(gt(jobDays.wrapAt, sql.placeholder('since')), isHeld()))
    .orderBy(asc(jobDays.jobId), asc(jobDays.callAt))
    .prepare(),
  promised: db
    .select({ jobId: jobs.id, title: jobs.title, stage: jobs.stage, edits: jobs.edits })
    .from(jobs)
    .leftJoin(pencils, and(eq(pencils.jobId, jobs.id), eq(pencils.state, 'held')))
    .where(
      and(
        isNotNull(jobs.edits),
        isHeld(),
        notExists(
          db
            .select({ one: sql`1` })
            .from(deliverables)
            .where(eq(deliverables.jobId, jobs.id)),
        ),
      ),
    )
    .orderBy(asc(jobs.id))
    .prepare(),
  deliverables: db
    .select({ id: deliverables.id, name: deliverables.name, due: deliverables.dueDate, title: jobs.title, stage: jobs.stage })
    .from(deliverables)
    .innerJoin(jobs, eq(jobs.id, deliverables.jobId))
    .where(and(eq(jobs.stage, 'inked'), isNull(deliverables.offAt), isNotNull(deliverables.dueDate)))
    .orderBy(asc(deliverables.id))
    .prepare(),
}));

/** In ink, or in a pencil that has not run out. */
function isHeld(): SQL | undefined {
  return or(eq(jobs.stage, 'inked'), and(eq(jobs.stage, 'pencilled'), gt(pencils.expiresAt, sql.placeholder('now'))));
}

export function outRow(db: ReadableDb): OutRow | undefined {
  return reading(db).out.get({ id: ONLY });
}

/** Change where it is written. `now` in epoch ms. */
export function saveOut(db: WritableDb, change: Partial<Omit<OutRow, 'id'>>, now: number): void {
  const before = outRow(db);
  const fresh = { id: ONLY, folder: '', isOn: false, updatedAt: now };
  db.insert(calendarOut)
    .values({ ...fresh, ...before, ...change, updatedAt: now })
    .onConflictDoUpdate({ target: calendarOut.id, set: { ...change, updatedAt: now } })
    .run();
}

/** What happened to the file or the feed; nothing that a person chose, so the version stays. */
export function setOutState(
  db: WritableDb,
  state: Partial<Pick<OutRow, 'writtenAt' | 'writtenHash' | 'updatedAt'>> & {
    trouble?: CalendarTrouble | null;
    feedTrouble?: CalendarTrouble | null;
  },
): void {
  db.update(calendarOut).set(state).where(eq(calendarOut.id, ONLY)).run();
}

/** Days of jobs that are held, by job and time, as far as they end after `since`. Epoch ms. */
export function heldDays(db: ReadableDb, { since, now }: { since: number; now: number }): HeldDay[] {
  return reading(db)
    .days.all({ since, now })
    .map(({ stage, place, kind, ...day }) => ({
      ...day,
      inked: stage === 'inked',
      place: place ? [place.name, place.region].filter((part) => part !== '').join(', ') : '',
      kind: kind as DayKind,
    }));
}

/** Films that are promised by a date: deliverables of ink, and what a job says of its edits while it has none. `now` in epoch ms. */
export function promisedEdits(db: ReadableDb, now: number): PromisedEdit[] {
  const { promised, deliverables: made } = reading(db);
  const said = promised
    .all({ now })
    .flatMap(({ jobId, title, stage, edits }) =>
      (edits ?? []).flatMap(({ what, due }, index) =>
        due === null ? [] : [{ id: `${jobId}-edit-${index + 1}`, title, what, due, inked: stage === 'inked' }],
      ),
    );
  return [
    ...said,
    ...made.all().flatMap(({ id, name, due, title }) => (due === null ? [] : [{ id, title, what: name, due, inked: true }])),
  ];
}

export function exportedAll(db: ReadableDb): Written[] {
  return reading(db)
    .exported.all()
    .map(({ event, sequence, changedAt }) => ({ ...event, sequence, changedAt }));
}

export function exportedCount(db: ReadableDb): number {
  return reading(db).count.get()?.count ?? 0;
}

/** Note what stands written now. */
export function keepExported(db: WritableDb, changed: readonly Written[]): void {
  for (const { sequence, changedAt, ...event } of changed) {
    const row = { uid: event.uid, sequence, event: event satisfies OutEvent, changedAt };
    db.insert(exportedEvents).values(row).onConflictDoUpdate({ target: exportedEvents.uid, set: row }).run();
  }
}

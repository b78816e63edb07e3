/**
 * What the check and the stringline are given: the book near a span, and one job of it as the rules take it.
 */
import type { Job } from '../../core/contract/jobs.ts';
import type { SetupFields } from '../../core/contract/setup.ts';
import type { Book, BookDay, BookJob, BookWay, JobPapers } from '../../core/fit/book.ts';
import { knownEdits } from '../../core/jobs/edits.ts';
import { halfHoursOf } from '../../core/deliverables/make-stages.ts';
import { movedBy } from '../../core/fit/moved.ts';
import { epochOf, wallAt } from '../../core/time/read.ts';
import { dateLater } from '../../core/time/wall.ts';
import { ticketsAndWays } from '../../core/trips/legs.ts';
import { belongingsOf, loadBook } from '../../db/book.ts';
import { saidYes } from '../../db/hand-dates.ts';
import { documentsForBook, hasCustomsList } from '../../db/documents.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb } from '../../db/store.ts';
import { holidayDates } from './holidays.ts';
import { badInput, refused } from './trouble.ts';

/**
 * My details, which every trip begins with.
 * @throws REFUSED before the first set-up
 */
export function ownSetup(db: ReadableDb): SetupFields {
  const fields = setupRow(db)?.fields;
  if (!fields) throw refused('Your home is not known yet.', 'Fill in Setup first: your name and where you start from.');
  return fields;
}

/** Ink and live pencils near [from, to), epoch ms. */
export function bookNear(db: ReadableDb, span: { from: number; to: number; now: number; leaveOutJob: string | null }): Book {
  const { home, restHours, distance } = ownSetup(db);
  const book = loadBook(db, { ...span, home, restMinutes: Math.round(Number(restHours) * 60), distance });
  return { ...book, documents: documentsForBook(db), holidays: (from, to) => holidayDates(home, from, to) };
}

export type OnBooks = { candidate: BookJob; ways: BookWay[] };

/** A stored job as the rules take it with the ways that its legs typed, or nothing while its place or its days are not known. */
export function jobOnBooks(db: ReadableDb, job: Job): OnBooks | null {
  const { id, title, place, pencil, role } = job;
  const { days, legs, kit } = belongingsOf(db, [id])(id);
  if (!place || days.length === 0) return null;
  const live = pencil?.state === 'live' ? pencil : null;
  const { tickets, ways } = ticketsAndWays(legs);
  const edits = knownEdits(job).flatMap(({ what, due, hours }) => (hours === null ? [] : [{ what, due, halfHours: halfHoursOf(hours) }]));
  const candidate: BookJob = {
    id,
    title,
    firmness: job.state === 'inked' ? 'ink' : live ? 'pencil' : 'candidate',
    pencilledAt: live ? epochOf(live.pencilledAt) : null,
    expiresAt: live ? epochOf(live.expires.at) : null,
    place,
    days,
    legs: tickets,
    kit,
    role,
    covers: saidYes(db, [id])(id),
    ...(edits.length > 0 ? { edits } : {}),
    papers: papersOf(db, job),
  };
  return { candidate, ways };
}

/** A certificate that was sent is settled; until then the insurance is held against what they ask. */
function papersOf(db: ReadableDb, { id, knows }: Job): JobPapers {
  const { asked, sentOn, limit } = knows.insurance;
  return { needs: knows.needs, insurance: asked && sentOn === null ? { limit } : null, customsList: hasCustomsList(db, id) };
}

/**
 * A job with its days moved by whole dates.
 * @throws BAD_INPUT where a call or wrap falls on a wall time that the clock there skips or shows twice
 */
export function asIfMoved(stored: OnBooks, shiftDays: number): OnBooks {
  const moved = shiftDays === 0 ? stored.candidate : movedBy(stored.candidate, shiftDays);
  if (!moved)
    throw badInput([
      { field: 'shiftDays', sentence: 'puts a call or a wrap on a time that the clock there skips or shows twice. Move it a day further.' },
    ]);
  return { ...stored, candidate: moved };
}

/** A stored job as the rules take it, or nothing while its place or its days are not known. */
export function jobForBook(db: ReadableDb, job: Job): BookJob | null {
  return jobOnBooks(db, job)?.candidate ?? null;
}

/** First call to last wrap, epoch ms. */
export function spanOf(days: readonly BookDay[]): { from: number; to: number } {
  return { from: Math.min(...days.map((day) => day.callAt)), to: Math.max(...days.map((day) => day.wrapAt)) };
}

/** The midnights at home that enclose a span with some days around it, epoch ms. */
export function midnightsAround(span: { from: number; to: number }, days: number, zone: string): { from: number; to: number } {
  const first = dateLater(wallAt(span.from, zone).slice(0, 10), -days);
  const last = dateLater(wallAt(span.to, zone).slice(0, 10), days + 1);
  return { from: midnight(first, zone), to: midnight(last, zone) };
}

/** The first instant of a date in a zone, epoch ms. */
export function midnight(date: string, zone: string): number {
  return Temporal.PlainDate.from(date).toZonedDateTime(zone).epochMilliseconds;
}

/**
 * Can this be taken, and when else could it be? For a stored job or a candidate that is not stored.
 */
import type { Candidate, FitResult, Nearest } from '../../core/contract/fit.ts';
import type { Moment } from '../../core/contract/parts.ts';
import type { Stringline } from '../../core/contract/road.ts';
import type { TryOn } from '../../core/contract/try-on.ts';
import type { Book, BookJob } from '../../core/fit/book.ts';
import { checkFit } from '../../core/fit/check.ts';
import { daysMoved } from '../../core/fit/moved.ts';
import { nearestDates } from '../../core/fit/nearest.ts';
import { triedOn } from '../../core/fit/try-on.ts';
import { stringlineOf } from '../../core/road/stringline.ts';
import { epochOf, WallTimeError } from '../../core/time/read.ts';
import { jobById } from '../../db/jobs.ts';
import type { ReadableDb } from '../../db/store.ts';
import { asIfMoved, bookNear, jobOnBooks, midnightsAround, spanOf } from './book.ts';
import type { Context } from './context.ts';
import { editsBeside } from './edit-plan.ts';
import { agreeing, placedDays } from './job-facts.ts';
import { os } from './os.ts';
import { badInput, notFound } from './trouble.ts';
import { booksAsIf, placedLegs, unsavedCandidate } from './unsaved.ts';

type Asked = { jobId?: string | undefined; candidate?: Candidate | undefined; tryOn?: TryOn | undefined; shiftDays?: number | undefined };
type Probe = { book: Book; candidate: BookJob; replyBy: Moment | null };

/** Days that the small stringline shows on each side. */
const AROUND = 4;
const DAY = 86_400_000;

const check = os.fit.check.handler(({ input, context }): { result: FitResult; stringline: Stringline | null } => {
  const now = input.now ? epochOf(input.now) : context.now();
  return context.store.read((db) => {
    const probe = probeOf(db, context, input, now, 0);
    if ('missing' in probe) return unknown(probe.missing);
    const { book, mine } = placeable(() => triedOn(probe.book, probe.candidate, input.tryOn));
    const shown = midnightsAround(spanOf([...probe.candidate.days, ...mine.days]), AROUND, probe.book.home.zone);
    return { result: checkFit({ ...probe, tryOn: input.tryOn, now }), stringline: stringlineOf({ book, candidate: mine, ...shown, now }) };
  });
});

const nearest = os.fit.nearest.handler(({ input, context }): { nearest: Nearest[] } => {
  const now = input.now ? epochOf(input.now) : context.now();
  return context.store.read((db) => {
    const probe = probeOf(db, context, input, now, input.withinDays * DAY);
    if ('missing' in probe) return { nearest: [] };
    const found = placeable(() => nearestDates({ ...probe, tryOn: input.tryOn, now }, input.withinDays, input.limit));
    return {
      nearest: found.map((dates) => ({ ...dates, days: dates.days.map(({ date, kind, call, wrap }) => ({ date, kind, call, wrap })) })),
    };
  });
});

/** @throws BAD_INPUT where a day is tried on at a wall time that its clock skips or shows twice */
function placeable<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof WallTimeError) throw badInput([{ field: 'tryOn', sentence: error.message }]);
    throw error;
  }
}

/** What is asked about, with the books around it. @param margin more of the books on each side, ms */
function probeOf(db: ReadableDb, context: Context, asked: Asked, now: number, margin: number): Probe | { missing: string[] } {
  const probe = placedProbe(db, asked, now, margin);
  if ('missing' in probe) return probe;
  return { ...probe, book: { ...probe.book, ...editsBeside(db, context, now, probe.candidate) } };
}

function placedProbe(
  db: ReadableDb,
  { jobId, candidate, tryOn, shiftDays = 0 }: Asked,
  now: number,
  margin: number,
): Probe | { missing: string[] } {
  if ((jobId === undefined) === (candidate === undefined))
    throw badInput([{ field: 'candidate', sentence: 'or a jobId is needed, one of the two.' }]);
  placedLegs(tryOn?.legs ?? [], 'tryOn.legs');
  if (candidate) {
    const moved = { ...candidate, days: daysMoved(candidate.days, shiftDays) };
    const days = [...placedDays(moved.days, candidate.place, candidate.place.zone).days];
    const book = bookAround(db, days, null, now, margin);
    const { job, ways } = unsavedCandidate(moved, book.kit);
    return {
      book: laidOver(book, tryOn, ways),
      candidate: job,
      replyBy: candidate.replyBy && agreeing('candidate.replyBy', candidate.replyBy),
    };
  }
  const job = jobById(db, jobId ?? '', now);
  if (!job) throw notFound('This job');
  const stored = jobOnBooks(db, job);
  const known = stored && asIfMoved(stored, shiftDays);
  if (!known) return { missing: [...(job.place ? [] : ['place']), ...(job.days.length > 0 ? [] : ['days'])] };
  const book = bookAround(db, known.candidate.days, job.id, now, margin);
  return { book: laidOver(book, tryOn, known.ways), candidate: known.candidate, replyBy: job.state === 'inked' ? null : job.replyBy };
}

function bookAround(db: ReadableDb, days: BookJob['days'], leaveOutJob: string | null, now: number, margin: number): Book {
  const { from, to } = spanOf(days);
  return bookNear(db, { from: from - margin, to: to + margin, now, leaveOutJob });
}

/** Ways that legs of the candidate typed, and jobs as if they were on the books. */
function laidOver(book: Book, tryOn: TryOn | undefined, ways: Book['ways']): Book {
  const asIf = booksAsIf(tryOn, book.kit);
  return {
    ...book,
    jobs: [...book.jobs, ...asIf.map(({ job }) => job)],
    ways: [...ways, ...asIf.flatMap((one) => one.ways), ...book.ways],
  };
}

/** Without place and days there is nothing to lay on the books. */
function unknown(missing: string[]): { result: FitResult; stringline: null } {
  const fine = `Give the ${missing.join(' and the ')}, and the answer stands here.`;
  return { result: { answer: 'free if', findings: [], fine, missing }, stringline: null };
}

export const fit = { check, nearest };

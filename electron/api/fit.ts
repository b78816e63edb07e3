/**
 * Can this be taken? For a stored job or a candidate that is not stored.
 */
import type { Candidate, FitResult, TryOn } from '../../core/contract/fit.ts';
import type { Moment } from '../../core/contract/parts.ts';
import type { Stringline } from '../../core/contract/road.ts';
import type { BookJob } from '../../core/fit/book.ts';
import { checkFit } from '../../core/fit/check.ts';
import { triedOn } from '../../core/fit/try-on.ts';
import { stringlineOf } from '../../core/road/stringline.ts';
import { epochOf } from '../../core/time/read.ts';
import { jobById } from '../../db/jobs.ts';
import type { ReadableDb } from '../../db/store.ts';
import { bookNear, jobForBook, midnightsAround, spanOf } from './book.ts';
import { agreeing, placedDays } from './job-facts.ts';
import { os } from './os.ts';
import { badInput, notFound } from './trouble.ts';

type Checked = { result: FitResult; stringline: Stringline | null };
type Probe = { candidate: BookJob; replyBy: Moment | null };

/** Days that the small stringline shows on each side. */
const AROUND = 4;

const check = os.fit.check.handler(({ input, context }): Checked => {
  const now = input.now ? epochOf(input.now) : context.now();
  return context.store.read((db) => {
    const probe = probeOf(db, input.jobId, input.candidate, now);
    return 'missing' in probe ? unknown(probe.missing) : checked(db, probe, input.tryOn, now);
  });
});

function probeOf(db: ReadableDb, jobId: string | undefined, candidate: Candidate | undefined, now: number): Probe | { missing: string[] } {
  if ((jobId === undefined) === (candidate === undefined))
    throw badInput([{ field: 'candidate', sentence: 'or a jobId is needed, one of the two.' }]);
  if (candidate) return { candidate: unsaved(candidate), replyBy: candidate.replyBy && agreeing('candidate.replyBy', candidate.replyBy) };
  const job = jobById(db, jobId ?? '', now);
  if (!job) throw notFound('This job');
  const known = jobForBook(db, job);
  if (known) return { candidate: known, replyBy: job.state === 'inked' ? null : job.replyBy };
  return { missing: [...(job.place ? [] : ['place']), ...(job.days.length > 0 ? [] : ['days'])] };
}

/** @throws BAD_INPUT for days that cannot be, such as a call at a wall time that the clock skips */
function unsaved({ title, place, days }: Candidate): BookJob {
  const placed = placedDays(days, place, place.zone);
  return { id: null, title, firmness: 'candidate', pencilledAt: null, expiresAt: null, place, days: [...placed.days] };
}

function checked(db: ReadableDb, { candidate, replyBy }: Probe, tryOn: TryOn | undefined, now: number): Checked {
  const span = spanOf(candidate.days);
  const book = bookNear(db, { ...span, now, leaveOutJob: candidate.id });
  const tried = triedOn(book, candidate, tryOn);
  const shown = midnightsAround(span, AROUND, book.home.zone);
  return {
    result: checkFit({ book, candidate, tryOn, now, replyBy }),
    stringline: stringlineOf({ book: tried.book, candidate: tried.candidate, ...shown, now }),
  };
}

/** Without place and days there is nothing to lay on the books. */
function unknown(missing: string[]): Checked {
  const fine = `Give the ${missing.join(' and the ')}, and the answer stands here.`;
  return { result: { answer: 'free if', findings: [], fine, missing }, stringline: null };
}

export const fit = { check };

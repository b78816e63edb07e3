/**
 * Until when a job's pencil is to hold: as asked, or by the default of the house.
 */
import type { Job } from '../../core/contract/jobs.ts';
import type { BookDay } from '../../core/fit/book.ts';
import { defaultExpiry, type PencilExpiry } from '../../core/jobs/pencil.ts';
import { epochOf } from '../../core/time/read.ts';
import { newestQuote } from '../../db/jobs.ts';
import type { ReadableDb } from '../../db/store.ts';
import { badFacts } from './job-facts.ts';
import { tripOf } from './trip-of.ts';

/**
 * An expiry that a person named, in whole minutes.
 * @throws BAD_INPUT when it is past or after the first call
 */
export function askedExpiry(expires: string, days: readonly BookDay[], now: number): PencilExpiry {
  const at = Math.floor(epochOf(expires) / 60_000) * 60_000;
  const firstCall = days[0]?.callAt ?? Infinity;
  if (at <= now) throw badFacts([{ field: 'expires', sentence: 'The pencil would run out before now. Give a later moment.' }]);
  if (at > firstCall) throw badFacts([{ field: 'expires', sentence: 'The pencil would outlast the first call. Give an earlier moment.' }]);
  return { at, caution: null };
}

/** Without set-up there is no home to leave from, and the first call stands for door-out. */
export function usualExpiry(db: ReadableDb, job: Job, days: readonly BookDay[], zone: string, now: number): PencilExpiry {
  return defaultExpiry({
    now,
    validUntil: newestQuote(db, job.id)?.validUntilAt ?? null,
    doorOut: tripOf(db, job)?.doorOutAt ?? days[0]?.callAt ?? null,
    replyBy: job.replyBy ? epochOf(job.replyBy.at) : null,
    zone,
  });
}

/**
 * Ranks of pencils, and challenges.
 */
import type { Challenge, PencilRank } from '../../core/contract/pencils.ts';
import type { Job } from '../../core/contract/jobs.ts';
import type { BookJob } from '../../core/fit/book.ts';
import type { Ground } from '../../core/fit/moves.ts';
import { challengeUntil, ranksOf } from '../../core/fit/ranks.ts';
import { instantText, wallAt } from '../../core/time/read.ts';
import { wayFinder } from '../../core/trips/ways.ts';
import { momentAt } from '../../core/words/moments.ts';
import { addChallenge, newestChallenge, type ChallengeRow } from '../../db/challenges.ts';
import { jobById } from '../../db/jobs.ts';
import { writeHistory } from '../../db/keeping.ts';
import { newestPencil } from '../../db/pencils.ts';
import type { ReadableDb } from '../../db/store.ts';
import { bookNear, jobOnBooks, ownSetup, spanOf } from './book.ts';
import { deed } from './deed.ts';
import { os } from './os.ts';
import { tripOf } from './trip-of.ts';
import { notFound, refused } from './trouble.ts';

const ranks = os.pencils.ranks.handler(({ input, context }) =>
  context.store.read((db) => {
    const now = context.now();
    return standingOf(db, whole(db, input.jobId, now), now);
  }),
);

/** A live pencil with the book around it and the ground that ways between stays are found on; nothing where none is held. */
export function pencilOnBooks(db: ReadableDb, job: Job, now: number): { candidate: BookJob; jobs: BookJob[]; ground: Ground } | null {
  const known = jobOnBooks(db, job);
  if (known?.candidate.firmness !== 'pencil') return null;
  const book = bookNear(db, { ...spanOf(known.candidate.days), now, leaveOutJob: job.id });
  return { candidate: known.candidate, jobs: book.jobs, ground: { ...book, find: wayFinder([...known.ways, ...book.ways]) } };
}

/** The ranks of a job's live pencil, and whether it is challenged. */
export function standingOf(db: ReadableDb, job: Job, now: number): { ranks: PencilRank[]; challenge: Challenge | null } {
  const held = pencilOnBooks(db, job, now);
  if (!held) return { ranks: [], challenge: null };
  const named = (jobs: readonly BookJob[]) => jobs.flatMap(({ id, title }) => (id === null ? [] : [{ jobId: id, title }]));
  const found = ranksOf(held.candidate, held.jobs, held.ground);
  const challenged = job.pencil && newestChallenge(db, job.pencil.id);
  return {
    ranks: found.map(({ date, rank, before, behind }) => ({ date, rank, before: named(before), behind: named(behind) })),
    challenge: challenged ? challengeOf(challenged, now) : null,
  };
}

const challenge = os.pencils.challenge.handler(({ input, context }) =>
  deed(context, 'pencils.challenge', input, (db) => {
    const now = context.now();
    const job = whole(db, input.jobId, now);
    const known = jobOnBooks(db, job);
    const pencil = newestPencil(db, job.id);
    if (!known || known.candidate.firmness !== 'pencil' || !pencil)
      throw refused(`${job.title} holds no pencil.`, 'Only a live pencil can be challenged.');
    const { home } = ownSetup(db);
    const untilAt = challengeUntil(now, input.hours, tripOf(db, job)?.doorOutAt ?? Infinity);
    if (untilAt <= now) throw refused(`Door-out for ${job.title} is past.`, 'There is no time left to ask for a yes or no.');
    const row = addChallenge(db, { pencilId: pencil.id, askedAt: now, untilAt, untilZone: home.zone });
    const sentence = `${job.title} was asked for a yes or no by ${momentAt(untilAt, home, home)}.`;
    writeHistory(db, { at: now, subject: 'job', subjectId: job.id, deed: 'pencils.challenge', sentence });
    return { challenge: challengeOf(row, now) };
  }),
);

function whole(db: ReadableDb, id: string, now: number): Job {
  const job = jobById(db, id, now);
  if (!job) throw notFound('This job');
  return job;
}

function challengeOf({ untilAt, untilZone }: ChallengeRow, now: number): Challenge {
  return { until: { wall: wallAt(untilAt, untilZone), zone: untilZone, at: instantText(untilAt) }, unanswered: untilAt <= now };
}

export const pencils = { ranks, challenge };

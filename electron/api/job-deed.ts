/**
 * How a deed on one job runs: load it, refuse an old version or a deed that is not open to it, act, leave a row of history.
 */
import type { Job } from '../../core/contract/jobs.ts';
import { type JobDeed, refusalOf } from '../../core/jobs/state.ts';
import { jobById } from '../../db/jobs.ts';
import { writeHistory } from '../../db/keeping.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { notFound, refused, stale } from './trouble.ts';

type OneJob = { id: string; version: number; key?: string | undefined };

/** One job, whole, as it stands at `now` (epoch milliseconds). */
export function whole(db: ReadableDb, id: string, now: number): Job {
  const job = jobById(db, id, now);
  if (!job) throw notFound('This job');
  return job;
}

/** Load a job for a deed: refuse an old version with both states, and a deed that is not open to it. */
export function opened(db: ReadableDb, input: OneJob, act: JobDeed, now: number): Job {
  const job = whole(db, input.id, now);
  if (job.version !== input.version) throw stale(job.title, job, { ...input, key: undefined });
  const refusal = refusalOf(act, job.state, job.title);
  if (refusal) throw refused(refusal.what, refusal.todo);
  return job;
}

/** One row of history: the job as it was, without the message, which never changes. */
export function note(db: WritableDb, job: Job, name: string, sentence: string, now: number): void {
  const { message: _message, spans: _spans, papers: _papers, ...before } = job;
  writeHistory(db, { at: now, subject: 'job', subjectId: job.id, deed: name, sentence, before });
}

/** Run a deed on one job; `act` changes it and says in a sentence what was done. */
export function done(
  context: Context,
  name: string,
  open: JobDeed,
  input: OneJob,
  act: (db: WritableDb, job: Job, now: number) => string,
): { job: Job } {
  return deed(context, name, input, (db) => {
    const now = context.now();
    const job = opened(db, input, open, now);
    note(db, job, name, act(db, job, now), now);
    return { job: whole(db, job.id, now) };
  });
}

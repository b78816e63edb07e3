/**
 * How a deed on one deliverable runs: load it, refuse an old version or a job that is not in ink, leave a row of history.
 */
import type { Deliverable } from '../../core/contract/deliverables.ts';
import type { Job } from '../../core/contract/jobs.ts';
import { deliverableById } from '../../db/deliverables.ts';
import { writeHistory } from '../../db/keeping.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import { whole } from './job-deed.ts';
import { notFound, refused, stale } from './trouble.ts';

/** Only a job in ink promises something that takes time. */
export function inked(db: ReadableDb, id: string, now: number): Job {
  const job = whole(db, id, now);
  if (job.state !== 'inked')
    throw refused(
      `${job.title} is not in ink.`,
      'Before the written yes, say what is promised in its facts: it becomes deliverables with the ink.',
    );
  return job;
}

export function ofVersion(db: ReadableDb, input: { id: string; version: number }): Deliverable {
  const found = deliverableById(db, input.id);
  if (!found) throw notFound('This deliverable');
  if (found.version !== input.version) throw stale(found.name, found, { ...input, key: undefined });
  return found;
}

/** The deliverable as it stands now, with a row of history. */
export function told(
  db: WritableDb,
  id: string,
  name: string,
  sentence: string,
  at: number,
  before?: unknown,
): { deliverable: Deliverable } {
  const deliverable = deliverableById(db, id);
  if (!deliverable) throw notFound('This deliverable');
  writeHistory(db, { at, subject: 'deliverable', subjectId: id, deed: name, sentence, before });
  return { deliverable };
}

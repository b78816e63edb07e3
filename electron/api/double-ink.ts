/**
 * Nobody can be in two places at one instant: ink over ink is refused, naming the other.
 */
import type { Job } from '../../core/contract/jobs.ts';
import type { BookDay } from '../../core/fit/book.ts';
import { wallInWords } from '../../core/words/dates.ts';
import { saidYes } from '../../db/hand-dates.ts';
import { inkedOver } from '../../db/double-ink.ts';
import type { ReadableDb } from '../../db/store.ts';
import { refused } from './trouble.ts';

/** @throws REFUSED when paid time of these days lies on paid time in ink of another job; edit work can be moved, and days that a hand does are not mine */
export function refuseDoubleInk(db: ReadableDb, job: Pick<Job, 'id' | 'title'>, days: readonly BookDay[]): void {
  const byHands = (jobId: string): string[] => saidYes(db, [jobId])(jobId).flatMap(({ dates }) => dates);
  const covered = byHands(job.id);
  const mine = days.filter((day) => day.kind !== 'edit' && !covered.includes(day.date));
  const doubled = inkedOver(db, job.id, mine).filter(({ jobId, date }) => !byHands(jobId).includes(date));
  if (doubled.length === 0) return;
  const sentences = doubled.map(
    ({ title, call, wrap, zone }) => `${title} is in ink on ${wallInWords(call)} to ${wallInWords(wrap)} (${zone}).`,
  );
  throw refused(`${job.title} would be in ink over other ink.`, 'Correct the calls and wraps of one, or decline this one.', [
    ...new Set(sentences),
  ]);
}

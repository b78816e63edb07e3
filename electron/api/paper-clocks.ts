/**
 * Documents on the Desk.
 */
import type { Clock } from '../../core/contract/desk.ts';
import type { Finding } from '../../core/contract/fit.ts';
import type { Job } from '../../core/contract/jobs.ts';
import type { SetupFields } from '../../core/contract/setup.ts';
import { certificateClock, documentClocks, papersClock } from '../../core/desk/paper-clocks.ts';
import { papersAlone } from '../../core/fit/papers/findings.ts';
import { allDocuments, documentsForBook, jobsToCome } from '../../db/documents.ts';
import { jobById } from '../../db/jobs.ts';
import { allHands, handById } from '../../db/people.ts';
import type { ReadableDb } from '../../db/store.ts';
import { bookWays } from '../../db/trips.ts';
import { jobOnBooks } from './book.ts';
import { holidayDates } from './holidays.ts';

/** Jobs further off than this have time. */
const AHEAD = 400 * 86_400_000;

/** What runs out, what trips still ask for, and certificates not sent. `now` in epoch ms. */
export function paperClocks(db: ReadableDb, setup: SetupFields, now: number): Clock[] {
  const { zone } = setup.home;
  const toCome = jobsToCome(db, now, now + AHEAD).flatMap((id) => jobById(db, id, now) ?? []);
  return [
    ...documentClocks(allDocuments(db), (id) => handById(db, id)?.name ?? '', now, zone),
    ...toCome.flatMap((job) => clocksOf(db, setup, job, now)),
  ];
}

function clocksOf(db: ReadableDb, setup: SetupFields, job: Job, now: number): Clock[] {
  const { home } = setup;
  const { needs, insurance } = job.knows;
  const known = jobOnBooks(db, job);
  if (!known) return [];
  const callAt = Math.min(...known.candidate.days.map((day) => day.callAt));
  const certificate = certificateClock({ job, insurance, callAt }, now, home.zone) ?? [];
  // At home, with nothing asked for, there is nothing to look at.
  if (job.place?.country === home.country && needs.length === 0 && !insurance.asked) return [certificate].flat();
  const holidays = (from: string, to: string) => holidayDates(home, from, to);
  const book = {
    home,
    jobs: [],
    ways: [...known.ways, ...bookWays(db, setup.distance)],
    restMinutes: Math.round(Number(setup.restHours) * 60),
    documents: documentsForBook(db),
    hands: allHands(db),
    holidays,
  };
  const findings: Finding[] = papersAlone(book, known.candidate, now);
  const papers = papersClock({ job, callAt, findings, holidays }, now, home.zone) ?? [];
  return [certificate, papers].flat();
}

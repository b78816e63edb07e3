/**
 * The trip of a stored job, by its tickets and the ways that were typed.
 */
import type { Job } from '../../core/contract/jobs.ts';
import { planTrip, type TripPlan } from '../../core/trips/plan.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb } from '../../db/store.ts';
import { bookWays } from '../../db/trips.ts';
import { jobOnBooks } from './book.ts';

/** From home to home; nothing while the job's place, its days or my home are not known. */
export function tripOf(db: ReadableDb, job: Job): TripPlan | null {
  const setup = setupRow(db)?.fields;
  const known = jobOnBooks(db, job);
  if (!setup || !known) return null;
  const { place, days, legs } = known.candidate;
  return planTrip({ home: setup.home, place, days, ways: [...known.ways, ...bookWays(db, setup.distance)], tickets: legs ?? [] });
}

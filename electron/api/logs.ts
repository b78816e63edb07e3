/**
 * Logs for the accountant: drives and dates away of jobs in ink.
 */
import type { Job } from '../../core/contract/jobs.ts';
import type { MileageRow, PerDiemRow } from '../../core/contract/expenses.ts';
import { logRates, mileageLog } from '../../core/expenses/mileage-log.ts';
import { awayOf, perDiemLog } from '../../core/expenses/per-diem-log.ts';
import type { BookDay } from '../../core/fit/book.ts';
import { sumsByCurrency } from '../../core/money/sums.ts';
import type { QuotedTrip } from '../../core/quotes/trip.ts';
import { dateLater } from '../../core/time/wall.ts';
import { daysOf } from '../../db/job-days.ts';
import { inkedBetween } from '../../db/desk.ts';
import { jobById } from '../../db/jobs.ts';
import { allCards } from '../../db/rates.ts';
import type { ReadableDb } from '../../db/store.ts';
import { midnight, ownSetup } from './book.ts';
import { os } from './os.ts';
import { tripOf } from './quote-draft.ts';

type Span = { from: string; to: string };
/** Nobody leaves for a job earlier, or is home later, than this many days around it. */
const WAY_DAYS = 21;

type Tripped = { job: Job & { place: NonNullable<Job['place']> }; days: BookDay[]; trip: QuotedTrip };

/** Every drive of jobs in ink between two dates, both counted. @throws REFUSED before the first set-up */
export function mileageBetween(db: ReadableDb, span: Span, now: number): MileageRow[] {
  const setup = ownSetup(db);
  const card = allCards(db).find(({ currency }) => currency === setup.currency);
  const rates = logRates(setup.home, card);
  return tripsNear(db, span, now)
    .flatMap(({ job, trip }) => mileageLog(job, trip, setup.home, setup.distance, rates))
    .filter(({ date }) => span.from <= date && date <= span.to)
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

/** What each date away is allowed, between two dates, both counted. @throws REFUSED before the first set-up */
export function perDiemBetween(db: ReadableDb, span: Span, now: number): PerDiemRow[] {
  const { home } = ownSetup(db);
  const away = tripsNear(db, span, now).flatMap(({ job, days, trip }) => awayOf(job, days, trip));
  return perDiemLog(away, home).filter(({ date }) => span.from <= date && date <= span.to);
}

function tripsNear(db: ReadableDb, { from, to }: Span, now: number): Tripped[] {
  const setup = ownSetup(db);
  const { zone } = setup.home;
  const ids = inkedBetween(db, { from: midnight(dateLater(from, -WAY_DAYS), zone), to: midnight(dateLater(to, WAY_DAYS + 1), zone) });
  return ids.flatMap((id): Tripped[] => {
    const job = jobById(db, id, now);
    if (!job?.place) return [];
    const days = daysOf(db, id);
    const trip = tripOf(db, job, days, setup);
    return trip ? [{ job: { ...job, place: job.place }, days, trip }] : [];
  });
}

const ESTIMATES = 'Distances that were not typed are estimated. Type what was driven on the leg, and the log follows.';
const NO_ADVICE = 'A log for your accountant, not tax advice.';

export const mileage = os.expenses.mileage.handler(({ input, context }) =>
  context.store.read((db) => {
    const rows = mileageBetween(db, input, context.now());
    const cautions = [...(rows.some(({ source }) => source === 'estimate') ? [ESTIMATES] : []), NO_ADVICE];
    return { rows, totals: sumsByCurrency(rows.flatMap(({ amount }) => amount ?? [])), cautions };
  }),
);

export const perDiem = os.expenses.perDiem.handler(({ input, context }) =>
  context.store.read((db) => {
    const rows = perDiemBetween(db, input, context.now());
    const unknown = rows.some(({ amount }) => amount === null);
    const cautions = [
      'Meals that were furnished are not taken off: take them off in full.',
      ...(unknown ? ['Dates without an amount have no rate that is known here; ask for the one in force.'] : []),
      NO_ADVICE,
    ];
    return { rows, totals: sumsByCurrency(rows.flatMap(({ amount }) => amount ?? [])), cautions };
  }),
);

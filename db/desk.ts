/**
 * The jobs that can have a clock on the Desk or a part in this month's figures: never the whole history.
 */
import { sql } from 'drizzle-orm';
import { perStore } from './prepared.ts';
import { jobs, LONGEST_STAY_MS, stays } from './schema/jobs.ts';
import type { ReadableDb } from './store.ts';

const reading = perStore((db) => ({
  open: db
    .select({ id: jobs.id })
    .from(jobs)
    .where(sql`${jobs.stage} in ('inquiry', 'pencilled')`)
    .prepare(),
  inked: db
    .selectDistinct({ id: jobs.id })
    .from(stays)
    .innerJoin(jobs, sql`${jobs.id} = ${stays.jobId} and ${jobs.stage} = 'inked'`)
    .where(
      sql`${stays.startAt} < ${sql.placeholder('to')} and ${stays.startAt} > ${sql.placeholder('earliest')} and ${stays.endAt} > ${sql.placeholder('from')}`,
    )
    .prepare(),
}));

/** Ids of open inquiries, held pencils, and ink with a stay in [from, to), epoch milliseconds. */
export function deskJobIds(db: ReadableDb, from: number, to: number): string[] {
  const { open, inked } = reading(db);
  return [...open.all(), ...inked.all({ from, to, earliest: from - LONGEST_STAY_MS })].map(({ id }) => id);
}

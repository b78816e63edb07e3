/**
 * The jobs that can have a clock on the Desk or a part in this month's figures: never the whole history.
 */
import { sql } from 'drizzle-orm';
import { perStore } from './prepared.ts';
import { jobs, LONGEST_STAY_MS, pencils, stays } from './schema/jobs.ts';
import { quoteVersions } from './schema/quotes.ts';
import type { ReadableDb } from './store.ts';

/** An inquiry that names no reply-by is due at most a day after it came. */
const DAY_MS = 86_400_000;

const reading = perStore((db) => ({
  running: db
    .select({ id: jobs.id })
    .from(jobs)
    .leftJoin(pencils, sql`${pencils.jobId} = ${jobs.id} and ${pencils.state} = 'held'`)
    .where(
      sql`(${jobs.stage} = 'inquiry' and coalesce(${jobs.replyByAt}, ${jobs.receivedAt} + ${DAY_MS}) > ${sql.placeholder('since')})
        or (${jobs.stage} = 'pencilled' and ${pencils.expiresAt} > ${sql.placeholder('since')})
        or (${jobs.stage} = 'quoted' and exists (
          select 1 from ${quoteVersions} where ${quoteVersions.jobId} = ${jobs.id} and ${quoteVersions.validUntilAt} > ${sql.placeholder('since')}))`,
    )
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

export type DeskSpan = {
  /** Ink with a stay in [from, to), epoch milliseconds. */
  from: number;
  to: number;
  /** Other jobs whose clock runs out after this, epoch milliseconds. */
  runningSince: number;
};

/** Ids of the jobs that the Desk has to look at. */
export function deskJobIds(db: ReadableDb, { from, to, runningSince }: DeskSpan): string[] {
  const { running, inked } = reading(db);
  return [...running.all({ since: runningSince }), ...inked.all({ from, to, earliest: from - LONGEST_STAY_MS })].map(({ id }) => id);
}

/** Ids of jobs in ink with a stay in [from, to), epoch milliseconds. */
export function inkedBetween(db: ReadableDb, { from, to }: Pick<DeskSpan, 'from' | 'to'>): string[] {
  return reading(db)
    .inked.all({ from, to, earliest: from - LONGEST_STAY_MS })
    .map(({ id }) => id);
}

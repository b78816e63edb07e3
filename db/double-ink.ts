/**
 * Inked paid time that the paid time of a job would lie on: nobody can be in two places at one instant.
 */
import { sql } from 'drizzle-orm';
import { perStore } from './prepared.ts';
import { jobDays, jobs, LONGEST_STAY_MS, stays } from './schema/jobs.ts';
import type { ReadableDb } from './store.ts';

export type InkedDay = { jobId: string; title: string; date: string; call: string; wrap: string; zone: string };

const reading = perStore((db) => ({
  // Stays are bounded in length and indexed by time, so only those that may touch the probe are read.
  clashing: db
    .selectDistinct({ jobId: jobs.id, title: jobs.title, date: jobDays.date, call: jobDays.call, wrap: jobDays.wrap, zone: jobDays.zone })
    .from(stays)
    .innerJoin(jobs, sql`${jobs.id} = ${stays.jobId} and ${jobs.stage} = 'inked' and ${jobs.id} <> ${sql.placeholder('except')}`)
    .innerJoin(
      jobDays,
      sql`${jobDays.jobId} = ${jobs.id} and ${jobDays.kind} <> 'edit' and ${jobDays.callAt} < ${sql.placeholder('wrapAt')} and ${jobDays.wrapAt} > ${sql.placeholder('callAt')}`,
    )
    .where(
      sql`${stays.startAt} < ${sql.placeholder('wrapAt')} and ${stays.startAt} > ${sql.placeholder('earliest')} and ${stays.endAt} > ${sql.placeholder('callAt')}`,
    )
    .prepare(),
}));

/** Days in ink of other jobs that overlap any of these [call, wrap), epoch milliseconds. */
export function inkedOver(db: ReadableDb, jobId: string, days: readonly { callAt: number; wrapAt: number }[]): InkedDay[] {
  const { clashing } = reading(db);
  return days.flatMap(({ callAt, wrapAt }) => clashing.all({ except: jobId, callAt, wrapAt, earliest: callAt - LONGEST_STAY_MS }));
}

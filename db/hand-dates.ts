/**
 * Dates of jobs that hands were asked for, and what they said.
 */
import { asc, eq, sql } from 'drizzle-orm';
import type { HandState } from '../core/contract/hands.ts';
import type { DayKind, Place } from '../core/contract/parts.ts';
import type { BookJob } from '../core/fit/book.ts';
import { newId } from './ids.ts';
import { insertRow, perStore } from './prepared.ts';
import { handDates } from './schema/hand-dates.ts';
import type { ReadableDb, WritableDb } from './store.ts';

export type HandDateRow = typeof handDates.$inferSelect;

/** Days of jobs that still stand, on dates that a hand holds. A job that was let go, declined or cancelled holds nobody. */
const HELD = `
  select hand_dates.hand_id as handId, hand_dates.state, jobs.id, jobs.title, jobs.place,
    job_days.date, job_days.kind, job_days.call, job_days.wrap, job_days.call_at as callAt, job_days.wrap_at as wrapAt
  from hand_dates
  join jobs on jobs.id = hand_dates.job_id and jobs.place is not null and jobs.stage not in ('let go', 'declined', 'cancelled')
  join job_days on job_days.job_id = jobs.id and job_days.date = hand_dates.date
  where hand_dates.state in ('said yes', 'pencilled') and job_days.wrap_at > :from and job_days.call_at < :to
  order by job_days.call_at, jobs.id`;

type HeldRow = Pick<HandDateRow, 'handId' | 'state' | 'date'> & {
  id: string;
  title: string;
  place: string;
  kind: DayKind;
  call: string;
  wrap: string;
  callAt: number;
  wrapAt: number;
};

const reading = perStore((db) => ({
  ofJob: db
    .select()
    .from(handDates)
    .where(eq(handDates.jobId, sql.placeholder('jobId')))
    .orderBy(asc(handDates.date), asc(handDates.handId))
    .prepare(),
  yes: db.$client.prepare<[string], { jobId: string; handId: string; date: string }>(
    `select job_id as jobId, hand_id as handId, date from hand_dates
     where state = 'said yes' and job_id in (select value from json_each(?)) order by hand_id, date`,
  ),
  open: db.select().from(handDates).where(eq(handDates.state, 'asked')).orderBy(asc(handDates.askedAt)).prepare(),
  held: db.$client.prepare<[{ from: number; to: number }], HeldRow>(HELD),
}));

/** Everybody who was asked for dates of a job, by date. */
export function handDatesOf(db: ReadableDb, jobId: string): HandDateRow[] {
  return reading(db).ofJob.all({ jobId });
}

/** Asks without an answer, the oldest first. */
export function openHandAsks(db: ReadableDb): HandDateRow[] {
  return reading(db).open.all();
}

/** Who said yes to which dates of these jobs, by job. */
export function saidYes(db: ReadableDb, jobIds: readonly string[]): (jobId: string) => { handId: string; dates: string[] }[] {
  const byJob = Map.groupBy(reading(db).yes.all(JSON.stringify(jobIds)), ({ jobId }) => jobId);
  return (jobId) =>
    [...Map.groupBy(byJob.get(jobId) ?? [], ({ handId }) => handId)].map(([handId, rows]) => ({
      handId,
      dates: rows.map(({ date }) => date),
    }));
}

/** What hands hold between two instants (epoch ms), as jobs with those days alone: a yes as ink, a pencil as one that stands first. */
export function jobsOfHands(db: ReadableDb, span: { from: number; to: number }): Map<string, BookJob[]> {
  const byHand = Map.groupBy(reading(db).held.all(span), ({ handId }) => handId);
  return new Map([...byHand].map(([handId, rows]) => [handId, heldJobs(rows)]));
}

function heldJobs(rows: readonly HeldRow[]): BookJob[] {
  return [...Map.groupBy(rows, ({ id, state }) => `${id} ${state}`).values()].flatMap((all) => {
    const [first] = all;
    if (!first) return [];
    const pencil = first.state === 'pencilled';
    return [
      {
        id: first.id,
        title: first.title,
        firmness: pencil ? 'pencil' : 'ink',
        pencilledAt: pencil ? 0 : null,
        expiresAt: pencil ? Infinity : null,
        place: JSON.parse(first.place) as Place,
        days: all.map(({ date, kind, call, wrap, callAt, wrapAt }) => ({ date, kind, call, wrap, callAt, wrapAt })),
      },
    ];
  });
}

/** Keep what a hand said to one date, new or changed. `at` and `now` in epoch milliseconds. */
export function keepHandDate(
  db: WritableDb,
  { jobId, handId, date }: Pick<HandDateRow, 'jobId' | 'handId' | 'date'>,
  { state, how, now }: { state: HandState; how: string; now: number },
): void {
  const before = handDatesOf(db, jobId).find((row) => row.handId === handId && row.date === date);
  if (!before)
    insertRow(db, handDates, { id: newId(), jobId, handId, date, state, askedAt: now, at: now, how, createdAt: now, updatedAt: now });
  else
    db.update(handDates)
      .set({ state, how, at: now, ...(state === 'asked' ? { askedAt: now } : {}), version: before.version + 1, updatedAt: now })
      .where(eq(handDates.id, before.id))
      .run();
}

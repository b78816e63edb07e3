/**
 * What the check is given: the jobs whose stays lie near a span of time, never the whole history.
 */
import type { DayKind, Place } from '../core/contract/parts.ts';
import type { Book, BookDay, BookJob } from '../core/fit/book.ts';
import { perStore } from './prepared.ts';
import { LONGEST_STAY_MS } from './schema/jobs.ts';
import type { ReadableDb } from './store.ts';
import { bookWays } from './trips.ts';

/**
 * How far neighbours are looked for on each side. The longest estimated way, half round the Earth with its breaks, is 17 days;
 * cautions look back over seven.
 */
const NEIGHBOURS_MS = 21 * 86_400_000;

export type BookSpan = {
  home: Place;
  /** Half-open, epoch ms. */
  from: number;
  to: number;
  now: number;
  leaveOutJob: string | null;
  restMinutes: number;
  /** What typed distances are in. */
  distance: 'mi' | 'km';
};

type JobRow = { id: string; title: string; stage: string; place: string; pencilledAt: number | null; expiresAt: number | null };
type DayRow = { jobId: string; date: string; kind: DayKind; call: string; wrap: string; callAt: number; wrapAt: number };

// Only the stretch of the index that can reach into the span is read: no stay is longer than the schema's bound.
const NEAR = `
  select distinct stays.job_id from stays
  where stays.start_at < :to and stays.start_at > :from - ${LONGEST_STAY_MS} and stays.end_at > :from`;

export const JOBS_NEAR = `
  select jobs.id, jobs.title, jobs.stage, jobs.place, pencils.pencilled_at as pencilledAt, pencils.expires_at as expiresAt
  from (${NEAR}) near
  join jobs on jobs.id = near.job_id
  left join pencils on pencils.job_id = jobs.id and pencils.state = 'held'
  where jobs.place is not null and (jobs.stage = 'inked' or pencils.expires_at > :now)
  order by jobs.id`;

const DAYS_OF = `
  select job_id as jobId, date, kind, call, wrap, call_at as callAt, wrap_at as wrapAt
  from job_days where job_id = ? order by call_at`;

const reading = perStore((db) => ({
  jobs: db.$client.prepare<[{ from: number; to: number; now: number }], JobRow>(JOBS_NEAR),
  days: db.$client.prepare<[string], DayRow>(DAYS_OF),
}));

/** Ink and live pencils near a span, with their days and every way that was typed. */
export function loadBook(db: ReadableDb, span: BookSpan): Book {
  const { jobs, days } = reading(db);
  const rows = jobs.all({ from: span.from - NEIGHBOURS_MS, to: span.to + NEIGHBOURS_MS, now: span.now });
  return {
    home: span.home,
    jobs: rows.filter((row) => row.id !== span.leaveOutJob).map((row) => jobOf(row, days.all(row.id))),
    ways: bookWays(db, span.distance),
    restMinutes: span.restMinutes,
  };
}

function jobOf(row: JobRow, days: readonly DayRow[]): BookJob {
  const ink = row.stage === 'inked';
  return {
    id: row.id,
    title: row.title,
    firmness: ink ? 'ink' : 'pencil',
    pencilledAt: ink ? null : row.pencilledAt,
    expiresAt: ink ? null : row.expiresAt,
    place: JSON.parse(row.place) as Place,
    days: days.map(({ date, kind, call, wrap, callAt, wrapAt }): BookDay => ({ date, kind, call, wrap, callAt, wrapAt })),
  };
}

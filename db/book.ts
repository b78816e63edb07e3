/**
 * What the check is given: the jobs whose stays lie near a span of time, never the whole history.
 */
import type { DayKind, Place } from '../core/contract/parts.ts';
import type { LegFields, LegNews } from '../core/contract/trips.ts';
import type { Book, BookDay, BookJob, BookWay, KitNeed } from '../core/fit/book.ts';
import { bookItem } from '../core/fit/kit-list.ts';
import { legAt, ticketsAndWays, type PlacedLeg } from '../core/trips/legs.ts';
import { jobsOfHands, saidYes } from './hand-dates.ts';
import { importedNear } from './calendars.ts';
import { allItems } from './kit.ts';
import { allHands } from './people.ts';
import { missingByItem } from './packs.ts';
import { personalNear } from './personal.ts';
import { perStore } from './prepared.ts';
import { LONGEST_STAY_MS } from './schema/jobs.ts';
import type { ReadableDb } from './store.ts';
import { bookWays } from './trips.ts';

/**
 * How far neighbours are looked for on each side. The longest estimated way, half round the Earth with its breaks, is 17 days;
 * cautions look back over seven.
 */
const NEIGHBOURS_MS = 21 * 86_400_000;

/** What other calendars take is said of the days and of the ways beside them; there may be much of it. */
const IMPORTED_MS = 4 * 86_400_000;

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
type LegRow = { id: string; jobId: string; departAt: number; arriveAt: number; fields: string };
type KitRow = { jobId: string; item: string; count: number };
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

// One query for all the jobs at once; their ids are few.
const OF_JOBS = 'in (select value from json_each(?))';
const DAYS_OF = `
  select job_id as jobId, date, kind, call, wrap, call_at as callAt, wrap_at as wrapAt
  from job_days where job_id ${OF_JOBS} order by job_id, call_at`;
const LEGS_OF = `select id, job_id as jobId, depart_at as departAt, arrive_at as arriveAt, fields from legs where job_id ${OF_JOBS} order by job_id, depart_at`;
const KIT_OF = `select job_id as jobId, item_id as item, count from job_kit where job_id ${OF_JOBS} order by job_id, item_id`;

const reading = perStore((db) => ({
  jobs: db.$client.prepare<[{ from: number; to: number; now: number }], JobRow>(JOBS_NEAR),
  days: db.$client.prepare<[string], DayRow>(DAYS_OF),
  legs: db.$client.prepare<[string], LegRow>(LEGS_OF),
  kit: db.$client.prepare<[string], KitRow>(KIT_OF),
}));

/** Ink and live pencils near a span with their days, tickets and kit; my own time; what I own; and every way that was typed. */
export function loadBook(db: ReadableDb, span: BookSpan): Book {
  const near = { from: span.from - NEIGHBOURS_MS, to: span.to + NEIGHBOURS_MS };
  const rows = reading(db)
    .jobs.all({ ...near, now: span.now })
    .filter((row) => row.id !== span.leaveOutJob);
  const belongings = belongingsOf(
    db,
    rows.map((row) => row.id),
  );
  const covers = saidYes(
    db,
    rows.map((row) => row.id),
  );
  const jobs = rows.map((row) => jobOf(row, belongings(row.id), new Set(covers(row.id).flatMap(({ dates }) => dates))));
  const lost = missingByItem(db);
  const ofHands = jobsOfHands(db, near);
  return {
    home: span.home,
    jobs: jobs.map(({ job }) => job),
    ways: [...bookWays(db, span.distance), ...jobs.flatMap(({ ways }) => ways)],
    restMinutes: span.restMinutes,
    personal: personalNear(db, near),
    imported: importedNear(db, { from: span.from - IMPORTED_MS, to: span.to + IMPORTED_MS }),
    kit: allItems(db).map((item) => bookItem({ ...item, owned: Math.max(0, item.owned - (lost.get(item.id) ?? 0)) }, span.home.zone)),
    hands: allHands(db).map((hand) => ({ ...hand, jobs: ofHands.get(hand.id) ?? [] })),
  };
}

export type Belongings = { days: BookDay[]; legs: PlacedLeg[]; kit: KitNeed[] };

/** Days, legs and kit of jobs, read at once. A leg that was cancelled is none. */
export function belongingsOf(db: ReadableDb, ids: readonly string[]): (id: string) => Belongings {
  const { days, legs, kit } = reading(db);
  const list = JSON.stringify(ids);
  const daysBy = Map.groupBy(days.all(list), (row) => row.jobId);
  const legsBy = Map.groupBy(legs.all(list), (row) => row.jobId);
  const kitBy = Map.groupBy(kit.all(list), (row) => row.jobId);
  return (id) => ({
    days: (daysBy.get(id) ?? []).map(({ date, kind, call, wrap, callAt, wrapAt }) => ({ date, kind, call, wrap, callAt, wrapAt })),
    legs: (legsBy.get(id) ?? []).flatMap((row) => {
      const { news, ...fields } = JSON.parse(row.fields) as LegFields & { news?: LegNews | null };
      return news?.kind === 'cancelled' ? [] : [legAt(fields, row.id, { departAt: row.departAt, arriveAt: row.arriveAt })];
    }),
    kit: (kitBy.get(id) ?? []).map(({ item, count }) => ({ item, count })),
  });
}

/** @param covered dates that hands said yes to */
function jobOf(row: JobRow, { days, legs, kit }: Belongings, covered: ReadonlySet<string>): { job: BookJob; ways: BookWay[] } {
  const ink = row.stage === 'inked';
  const { tickets, ways } = ticketsAndWays(legs);
  const handDays = days.filter(({ date }) => covered.has(date));
  const job: BookJob = {
    id: row.id,
    title: row.title,
    firmness: ink ? 'ink' : 'pencil',
    pencilledAt: ink ? null : row.pencilledAt,
    expiresAt: ink ? null : row.expiresAt,
    place: JSON.parse(row.place) as Place,
    days: days.filter(({ date }) => !covered.has(date)),
    legs: tickets,
    kit,
    ...(handDays.length > 0 ? { handDays } : {}),
  };
  return { job, ways };
}

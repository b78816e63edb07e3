/**
 * The lane of one person: what stands at fixed times, in order. Stays and ticketed legs stand; estimated ways do not, they are laid anew
 * between neighbours.
 */
import type { Place } from '../contract/parts.ts';
import { staysOf, type Stay } from '../trips/stays.ts';
import type { Book, BookJob, BookLeg } from './book.ts';

/**
 * How a job stands to the candidate: the candidate itself, ink, a pencil before it or a pencil behind it. `first` is a pencil before it
 * too, where the candidate is taken as second pencil.
 */
export type Standing = 'own' | 'ink' | 'outranks' | 'first' | 'behind';

type Entry = { job: BookJob; standing: Standing; startAt: number; endAt: number; from: Place; to: Place };
export type StayEntry = Entry & { kind: 'stay'; stay: Stay };
/** A ticket stands from leaving for the station to having left the other one. */
export type TicketEntry = Entry & { kind: 'ticket'; leg: BookLeg };
export type LaneEntry = StayEntry | TicketEntry;

const MINUTE = 60_000;

/** Everything that stands, the candidate's own included, by time. */
export function laneOf(book: Book, candidate: BookJob): LaneEntry[] {
  const others = book.jobs.filter((job) => candidate.id === null || job.id !== candidate.id);
  return rowOf([candidate, ...others], (job) => (job === candidate ? 'own' : standingOf(job, candidate)));
}

/** What stands in these jobs, by time. */
export function rowOf(jobs: readonly BookJob[], standing: (job: BookJob) => Standing = () => 'ink'): LaneEntry[] {
  const entries = jobs.flatMap((job) => entriesOf(job, standing(job)));
  return entries.sort((a, b) => a.startAt - b.startAt || a.endAt - b.endAt || compare(a.job, b.job));
}

function entriesOf(job: BookJob, standing: Standing): LaneEntry[] {
  const stays: LaneEntry[] = staysOf(job.days).map((stay) => ({
    kind: 'stay',
    job,
    standing,
    startAt: stay.startAt,
    endAt: stay.endAt,
    from: job.place,
    to: job.place,
    stay,
  }));
  const tickets: LaneEntry[] = (job.legs ?? []).map((leg) => ({
    kind: 'ticket',
    job,
    standing,
    startAt: leg.departAt - leg.before * MINUTE,
    endAt: leg.arriveAt + leg.after * MINUTE,
    from: leg.from,
    to: leg.to,
    leg,
  }));
  return [...stays, ...tickets];
}

/** Pencils stand in the order of pencilling; a candidate that holds no pencil comes after all that do, one in ink before them. */
export function standingOf(job: BookJob, candidate: BookJob): Standing {
  if (job.firmness === 'ink') return 'ink';
  if (candidate.firmness === 'ink') return 'behind';
  const before = candidate.second ? 'first' : 'outranks';
  if (candidate.pencilledAt === null) return before;
  const order = (job.pencilledAt ?? Infinity) - candidate.pencilledAt || compare(job, candidate);
  return order < 0 ? before : 'behind';
}

function compare(a: BookJob, b: BookJob): number {
  return (a.id ?? '') < (b.id ?? '') ? -1 : (a.id ?? '') > (b.id ?? '') ? 1 : a.title < b.title ? -1 : 1;
}

/** Half-open: touching is not overlapping. */
export function overlaps(a: { startAt: number; endAt: number }, b: { startAt: number; endAt: number }): boolean {
  return a.startAt < b.endAt && b.startAt < a.endAt;
}

/**
 * Paid time and movement of a person as one list, which duty, days in a row and hours in a week are counted from.
 */
import type { Place } from '../contract/parts.ts';
import type { BookJob } from './book.ts';
import { rowOf, type LaneEntry } from './lane.ts';
import { movesOf, type Ground, type Move } from './moves.ts';

export type Work = {
  startAt: number;
  endAt: number;
  place: Place;
  to: Place;
  /** Of the candidate. */
  own: boolean;
  /** Of a paid day, by its call; null for a movement. */
  date: string | null;
  /** Paid time and own driving; being flown is no work. */
  counts: boolean;
  /** A movement that stands at its times, as a ticket does. */
  stands: boolean;
  /** A movement whose length nobody typed. */
  estimated: boolean;
};

const MINUTE = 60_000;

/** Work of every job, with the moves as they are planned among all of them. */
export function workOf(jobs: readonly BookJob[], candidate: BookJob | null, ground: Ground): Work[] {
  const row = rowOf(jobs);
  return jobs
    .flatMap((job) => [...paidWork(job, candidate), ...travelWork(job, row, candidate, ground)])
    .sort((a, b) => a.startAt - b.startAt || a.endAt - b.endAt);
}

/**
 * The same with the ways laid right before the first call and right after the last wrap, as they are when one travels on the day itself.
 * Where a rest from other work would be lost they stay as planned.
 */
export function workOnTheDay(jobs: readonly BookJob[], candidate: BookJob | null, ground: Ground): Work[] {
  const row = rowOf(jobs);
  const paid = jobs.flatMap((job) => paidWork(job, candidate));
  const rest = ground.restMinutes * MINUTE;
  const free = (from: number, to: number) => !paid.some((work) => work.startAt < to && work.endAt > from);
  const travel = jobs.flatMap((job) =>
    travelWork(job, row, candidate, ground).map((work) => {
      if (work.stands) return work;
      // A way that comes too late already runs over paid time; there is no earlier day to lay it on.
      if (!free(work.startAt, work.endAt)) return work;
      const length = work.endAt - work.startAt;
      const call = nearest(
        paidWork(job, candidate)
          .map(({ startAt }) => startAt)
          .filter((at) => at >= work.endAt),
      );
      const wrap = nearest(
        paidWork(job, candidate)
          .map(({ endAt }) => endAt)
          .filter((at) => at <= work.startAt),
        true,
      );
      if (work.place.key === ground.home.key && call !== null && free(call - length - rest, call))
        return { ...work, startAt: call - length, endAt: call };
      if (work.to.key === ground.home.key && wrap !== null && free(wrap, wrap + length + rest))
        return { ...work, startAt: wrap, endAt: wrap + length };
      return work;
    }),
  );
  return [...paid, ...travel].sort((a, b) => a.startAt - b.startAt || a.endAt - b.endAt);
}

function nearest(instants: readonly number[], latest = false): number | null {
  if (instants.length === 0) return null;
  return latest ? Math.max(...instants) : Math.min(...instants);
}

function paidWork(job: BookJob, candidate: BookJob | null): Work[] {
  return job.days.map((day) => ({
    startAt: day.callAt,
    endAt: day.wrapAt,
    place: job.place,
    to: job.place,
    own: job === candidate,
    date: day.date,
    counts: true,
    stands: true,
    estimated: false,
  }));
}

/** A paid travel day is that movement itself and is not counted twice. */
function travelWork(job: BookJob, row: readonly LaneEntry[], candidate: BookJob | null, ground: Ground): Work[] {
  const travelled = job.days.filter((day) => day.kind === 'travel');
  const paidAlready = (move: Move) => travelled.some((day) => day.callAt < move.end && day.wrapAt > move.start);
  const { moves } = movesOf(job, row, ground);
  return (
    moves
      // A berth overnight is rest, not work; a way that cannot be made is neither.
      .filter((move) => !move.berth && !paidAlready(move) && !move.inVain)
      .map((move) => ({
        startAt: move.start,
        endAt: move.end,
        place: move.from,
        to: move.to,
        own: job === candidate,
        date: null,
        counts: move.mode === 'drive',
        stands: move.source === 'ticketed',
        estimated: move.source === 'estimated',
      }))
  );
}

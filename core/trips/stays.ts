/**
 * Stays: runs of consecutive paid dates at the place of a job. A free date between two runs is open to another job.
 */
import type { BookDay } from '../fit/book.ts';
import { nextDate } from '../time/wall.ts';

export type Stay = {
  /** First call, epoch ms; the stay is half-open [startAt, endAt). */
  startAt: number;
  /** Last wrap, epoch ms. */
  endAt: number;
  /** The paid dates in it, by their call. */
  days: readonly BookDay[];
};

/** Days on which one has to be at the place: neither on the way there nor editing, which can be done anywhere. */
export function daysOnSite<T extends Pick<BookDay, 'kind'>>(days: readonly T[]): T[] {
  return days.filter(({ kind }) => kind !== 'travel' && kind !== 'edit');
}

/**
 * The stays of a job, in order of time. Travel dates belong to the trip, but a job of nothing else on the way stays where its days are;
 * edit dates never make a stay.
 */
export function staysOf(days: readonly BookDay[]): readonly Stay[] {
  const before = known.get(days);
  if (before) return before;
  const onSite = daysOnSite(days);
  const stays = runsIn(onSite.length > 0 ? onSite : days.filter(({ kind }) => kind !== 'edit'));
  known.set(days, stays);
  return stays;
}

/** The spells by which a job is found in time: its stays, or the runs of its dates where it has none. */
export function spellsOf(days: readonly BookDay[]): readonly Stay[] {
  const stays = staysOf(days);
  return stays.length > 0 ? stays : runsIn(days);
}

/** Days are never changed in place, so the stays of one list are worked out once. */
const known = new WeakMap<readonly BookDay[], readonly Stay[]>();

function runsIn(days: readonly BookDay[]): Stay[] {
  const sorted = days.toSorted((a, b) => a.callAt - b.callAt || a.wrapAt - b.wrapAt);
  const runs: BookDay[][] = [];
  for (const day of sorted) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last && day.date <= nextDate(last.date)) run.push(day);
    else runs.push([day]);
  }
  return runs.map((run) => ({ startAt: run[0]?.callAt ?? 0, endAt: Math.max(...run.map((day) => day.wrapAt)), days: run }));
}

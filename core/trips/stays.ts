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

/**
 * The stays of a job, in order of time. Travel dates belong to the trip and edit dates can be worked anywhere: neither makes a stay,
 * but a job of nothing else stays where its days are.
 */
export function staysOf(days: readonly BookDay[]): readonly Stay[] {
  const before = known.get(days);
  if (before) return before;
  const stays = runsIn(days);
  known.set(days, stays);
  return stays;
}

/** Days are never changed in place, so the stays of one list are worked out once. */
const known = new WeakMap<readonly BookDay[], readonly Stay[]>();

function runsIn(days: readonly BookDay[]): Stay[] {
  const onSite = days.filter((day) => day.kind !== 'travel' && day.kind !== 'edit');
  const sorted = (onSite.length > 0 ? onSite : [...days]).sort((a, b) => a.callAt - b.callAt || a.wrapAt - b.wrapAt);
  const runs: BookDay[][] = [];
  for (const day of sorted) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last && day.date <= nextDate(last.date)) run.push(day);
    else runs.push([day]);
  }
  return runs.map((run) => ({ startAt: run[0]?.callAt ?? 0, endAt: Math.max(...run.map((day) => day.wrapAt)), days: run }));
}

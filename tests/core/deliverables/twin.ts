/**
 * The slow plain twin of the schedule: every way of filling the slots, and the smallest largest lateness of them all.
 */
import type { Slot } from '../../../core/deliverables/schedule.ts';
import type { Stage } from '../../../core/deliverables/stages.ts';

/**
 * The smallest largest lateness (ms) that any preemptive schedule reaches, idling allowed; null where the work does not fit.
 * Every stage must have work of its own.
 */
export function leastLateness(stages: readonly Stage[], slots: readonly Slot[]): number | null {
  const known = new Map<string, number>();
  const best = (at: number, left: readonly number[]): number => {
    if (left.every((count) => count === 0)) return -Infinity;
    const slot = slots[at];
    if (!slot) return Infinity;
    const key = `${at} ${left.join()}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const isDone = (id: string): boolean => left[stages.findIndex((stage) => stage.id === id)] === 0;
    let least = best(at + 1, left);
    stages.forEach((stage, index) => {
      const count = left[index] ?? 0;
      if (count === 0 || stage.releaseAt > slot.start || !stage.after.every(isDone)) return;
      const lateness = count === 1 ? slot.end - stage.dueAt : -Infinity;
      least = Math.min(least, Math.max(lateness, best(at + 1, left.with(index, count - 1))));
    });
    known.set(key, least);
    return least;
  };
  const least = best(
    0,
    stages.map(({ halfHours }) => halfHours),
  );
  return least === Infinity ? null : least;
}

/**
 * By when a stage must be begun: the latest open half hour from which it meets its date when all others keep theirs.
 */
import { schedule, type Slot } from './schedule.ts';
import type { Stage } from './stages.ts';

/**
 * Epoch milliseconds; null where it is late, or does not fit, however early it is begun.
 * Others keep what they have: their date, or where they are late in any case no more than they are late now.
 */
export function latestStart(id: string, stages: readonly Stage[], slots: readonly Slot[]): number | null {
  const now = schedule(stages, slots);
  const lateness = new Map(now.stages.map((stage) => [stage.id, stage.lateness]));
  const own = stages.find((stage) => stage.id === id);
  if (!own || own.halfHours === 0 || (lateness.get(id) ?? Infinity) > 0) return null;
  // Each may be as late as it is now, the asked one not at all.
  const kept = stages.map((stage) => ({ ...stage, dueAt: stage.dueAt + Math.max(0, stage.id === id ? 0 : (lateness.get(stage.id) ?? 0)) }));
  const unplaced = new Map(now.stages.map((stage) => [stage.id, stage.unplaced]));
  const holds = (from: number): boolean => {
    const moved = kept.map((stage) => (stage.id === id ? { ...stage, releaseAt: Math.max(stage.releaseAt, from) } : stage));
    return schedule(moved, slots).stages.every((stage) => stage.unplaced <= (unplaced.get(stage.id) ?? 0) && (stage.lateness ?? 0) <= 0);
  };
  let [low, high] = [0, slots.length - 1];
  let best: number | null = null;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const from = slots[middle]?.start ?? 0;
    if (holds(from)) {
      best = from;
      low = middle + 1;
    } else high = middle - 1;
  }
  return best;
}

/**
 * The slow plain twin of the latest starts: for one stage, the whole schedule laid anew for each half hour that is tried.
 */
import { schedule, type Slot } from '../../../core/deliverables/schedule.ts';
import type { Stage } from '../../../core/deliverables/stages.ts';

/** The latest half hour (ms) from which a stage meets its date with all others no later than they are now or than they are due. */
export function latestStart(id: string, stages: readonly Stage[], slots: readonly Slot[]): number | null {
  const now = schedule(stages, slots);
  const lateness = new Map(now.stages.map((stage) => [stage.id, stage.lateness ?? 0]));
  const own = stages.find((stage) => stage.id === id);
  if (!own || own.halfHours === 0 || now.stages.some((stage) => stage.id === id && (stage.lateness ?? Infinity) > 0)) return null;
  const kept = stages.map((stage) => ({ ...stage, dueAt: stage.dueAt + Math.max(0, lateness.get(stage.id) ?? 0) }));
  const holds = (from: number): boolean => {
    const moved = kept.map((stage) => (stage.id === id ? { ...stage, releaseAt: Math.max(stage.releaseAt, from) } : stage));
    return schedule(moved, slots).stages.every((stage) => stage.unplaced === 0 && (stage.lateness ?? 0) <= 0);
  };
  return slots.findLast(({ start }) => holds(start))?.start ?? null;
}

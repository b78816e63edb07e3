/**
 * What takes the time of a stage that is late: the work that is done between its release and its end, by hours.
 */
import type { Block } from './schedule.ts';

export type Taker = { stageId: string; hours: number };

/** Other stages' hours in [from, to), epoch milliseconds, most first; of equals the earlier in the plan. */
export function takersOf(stageId: string, blocks: readonly Block[], from: number, to: number): Taker[] {
  const hours = new Map<string, number>();
  for (const block of blocks) {
    const within = Math.min(block.end, to) - Math.max(block.start, from);
    if (block.stageId === stageId || within <= 0) continue;
    hours.set(block.stageId, (hours.get(block.stageId) ?? 0) + within / 3_600_000);
  }
  return [...hours].map(([id, count]) => ({ stageId: id, hours: count })).toSorted((a, b) => b.hours - a.hours);
}

/**
 * When the client's notes on cuts that are not sent yet can be worked on: the plan is walked once in the order of the schedule, and each
 * round is released by the window after the half hour in which the stage before it ends. What comes out are fixed releases for `schedule`,
 * which with them plans those very ends, so that it need not be laid again and again until it comes to rest.
 */
import type { OpenEdit } from './ground.ts';
import { pop, push } from './heap.ts';
import type { Block, Slot } from './schedule.ts';
import type { Stage } from './stages.ts';

/** A deliverable with its stages as the schedule takes them, in order. */
export type Chained = { edit: OpenEdit; chain: readonly Stage[] };
type Head = { chained: Chained; at: number; from: number; left: number; by: number; wasAt: number; bound: number; rank: number };

/**
 * Releases of the rounds that are not sent, epoch ms.
 * @param releaseAfter from when notes can be worked on, of a deliverable and an instant of sending
 */
export function plannedWaits(
  chains: readonly Chained[],
  slots: readonly Slot[],
  previous: readonly Block[],
  now: number,
  releaseAfter: (edit: OpenEdit, sentAt: number) => number,
): Map<string, number> {
  const releases = new Map<string, number>();
  const before = new Map<string, number>();
  for (const { stageId, start } of previous) if (!before.has(stageId)) before.set(stageId, start);
  const coming: Head[] = [];
  const ready: Head[] = [];

  /** The next stage with work, released after the one that ended. */
  const onwards = (head: Head, endedAt: number): void => {
    const { edit, chain } = head.chained;
    let from = endedAt;
    for (head.at += 1; head.at < chain.length; head.at += 1) {
      const stage = chain[head.at];
      const open = edit.stages[head.at];
      if (!stage || !open) return;
      // As in the schedule, a stage was planned before no earlier than what it follows.
      head.bound = Math.max(head.bound, before.get(stage.id) ?? (stage.halfHours === 0 ? 0 : Number.MAX_SAFE_INTEGER));
      if (open.kind === 'round' && !open.sent) {
        const release = releaseAfter(edit, from);
        releases.set(stage.id, release);
        from = Math.max(from, release);
      }
      from = Math.max(from, stage.releaseAt);
      if (stage.halfHours === 0) continue;
      head.left = stage.halfHours;
      head.from = from;
      head.by = Math.min(...chain.slice(head.at).map(({ dueAt }) => dueAt));
      head.wasAt = head.bound;
      push(coming, head, byRelease);
      return;
    }
  };

  let rank = 0;
  for (const chained of chains) {
    onwards({ chained, at: -1, from: now, left: 0, by: 0, wasAt: 0, bound: 0, rank }, now);
    rank += chained.chain.length;
  }
  for (const slot of slots) {
    while ((coming[0]?.from ?? Infinity) <= slot.start) push(ready, pop(coming, byRelease) as Head, byDue);
    const first = ready[0];
    if (!first) {
      if (coming.length === 0) break;
      continue;
    }
    first.left -= 1;
    if (first.left === 0) {
      pop(ready, byDue);
      onwards(first, slot.end);
    } else first.wasAt = -Infinity;
  }
  return releases;
}

const byRelease = (a: Head, b: Head): number => a.from - b.from || a.rank - b.rank;
const byDue = (a: Head, b: Head): number => a.by - b.by || a.wasAt - b.wasAt || a.rank - b.rank;

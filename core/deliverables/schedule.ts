/**
 * The edit schedule: half hours of work laid into the open half hours of one editor's calendar.
 *
 * Preemptive, earliest due date first, with releases and due dates that carry precedence. For one editor, a fixed calendar, releases and
 * precedence this makes the largest lateness as small as it can be (W. A. Horn, Some simple scheduling algorithms, 1974; E. L. Lawler,
 * Optimal sequencing of a single machine subject to precedence constraints, 1973; for the bare case J. R. Jackson, 1955): the order does not
 * depend on by how much all due dates are put off, so it is feasible for a lateness whenever anything is.
 * It is not promised where a wait begins only when the plan says so (the client's window after a cut), under a weekly ceiling, and for
 * lateness in business days under several calendars: such waits enter as fixed releases.
 */
import { pop, push } from './heap.ts';
import { orderedStages, type Ordered, type Stage } from './stages.ts';

/** An open half hour, half-open [start, end), epoch milliseconds. */
export type Slot = { start: number; end: number };
/** A stretch of one stage, without a pause. */
export type Block = { stageId: string; start: number; end: number };
type PlannedStage = {
  id: string;
  /** Null where nothing of it found a place, or nothing is left to do. */
  start: number | null;
  /** Null where the calendar ends before it is done. */
  finish: number | null;
  /** Finish less due date, milliseconds; below zero is early. Null without a finish. */
  lateness: number | null;
  /** Half hours that found no place in the calendar. */
  unplaced: number;
};
export type Plan = { blocks: Block[]; stages: PlannedStage[] };

/**
 * Lay stages into slots.
 * @param slots open half hours in order, none overlapping another
 * @param previous the plan before, by which ties are settled so that a plan does not jump about
 * @throws CircleError when stages wait for one another
 */
export function schedule(stages: readonly Stage[], slots: readonly Slot[], previous: readonly Block[] = []): Plan {
  const before = new Map<string, number>();
  for (const { stageId, start } of previous) if (!before.has(stageId)) before.set(stageId, start);
  const works = withPlaces(orderedStages(stages), before);
  const coming = works.filter(({ left }) => left > 0).toSorted((a, b) => a.from - b.from);
  const ready: Work[] = [];
  const blocks: Block[] = [];
  const ends = new Map<string, { start: number; finish: number }>();

  let next = 0;
  for (const slot of slots) {
    for (; next < coming.length && (coming[next]?.from ?? Infinity) <= slot.start; next += 1) push(ready, coming[next] as Work, order);
    const first = ready[0];
    if (!first) {
      if (next === coming.length) break;
      continue;
    }
    // Among equals what has begun goes on: nothing is gained by changing over.
    first.wasAt = -Infinity;
    first.left -= 1;
    if (first.left === 0) pop(ready, order);
    append(blocks, first.id, slot);
    ends.set(first.id, { start: ends.get(first.id)?.start ?? slot.start, finish: slot.end });
  }
  return { blocks, stages: works.toSorted((a, b) => a.rank - b.rank).map((work) => planned(work, ends.get(work.id))) };
}

type Work = Ordered & { left: number; wasAt: number };

/** Each with where the plan before began it, never earlier than its predecessors, so that one order serves for both. */
function withPlaces(stages: readonly Ordered[], before: ReadonlyMap<string, number>): Work[] {
  const places = new Map<string, number>();
  return stages.map((stage) => {
    // What has no work stands in no plan, and is no reason to put off what follows it.
    const own = before.get(stage.id) ?? (stage.halfHours === 0 ? 0 : Number.MAX_SAFE_INTEGER);
    const wasAt = Math.max(own, ...stage.after.map((id) => places.get(id) ?? 0));
    places.set(stage.id, wasAt);
    return { ...stage, left: stage.halfHours, wasAt };
  });
}

/** Earliest d' first; of equals a predecessor before its successor, then as it was planned before, then as given. */
function order(a: Work, b: Work): number {
  return a.by - b.by || a.wasAt - b.wasAt || a.rank - b.rank;
}

function append(blocks: Block[], stageId: string, { start, end }: Slot): void {
  const last = blocks.at(-1);
  if (last && last.stageId === stageId && last.end === start) last.end = end;
  else blocks.push({ stageId, start, end });
}

function planned({ id, left, dueAt, from, halfHours }: Work, ends: { start: number; finish: number } | undefined): PlannedStage {
  const finish = left > 0 ? null : (ends?.finish ?? (halfHours === 0 ? from : null));
  return { id, start: ends?.start ?? null, finish, lateness: finish === null ? null : finish - dueAt, unplaced: left };
}

/**
 * Another choice than the least lateness: as few edits late as can be, however late those are.
 *
 * Where all is ready at once, edits taken by due date, the longest dropped whenever one would be late, leaves the fewest late
 * (J. M. Moore, An n job, one machine sequencing algorithm, Management Science 15(1), 1968). With releases and waits a search looks for a
 * smaller number of edits to drop, from the least that may do upwards; it stops after so many steps, and then what it has is the best found.
 */
import { pop, push } from './heap.ts';
import { conflictsOf, demandOf, type Demand, type Edit } from './late-conflicts.ts';
import { fewerDropped, leastDropped } from './late-search.ts';
import { schedule, type Plan, type Slot } from './schedule.ts';

/** Beyond it the search is not begun: too many sets to look at. */
const MOST_SEARCHED = 60;

type FewestLate = {
  /** Edits that are late, in the order given. */
  late: string[];
  /** The others first, each in time; then what is late, earliest due first. Lateness is that against the real dates. */
  plan: Plan;
  /** False: it is the best that was found, and fewer may be possible. */
  proven: boolean;
};

/**
 * A plan with as few late edits as can be.
 * @param edits their stages bear the due dates; no stage waits for one of another edit
 * @throws CircleError when stages wait for one another
 */
export function fewestLate(edits: readonly Edit[], slots: readonly Slot[]): FewestLate {
  const demand = demandOf(edits, slots);
  const { dropped, proven } = chosen(demand);
  const dues = edits.flatMap((edit) => edit.stages.map((stage) => stage.dueAt));
  // What is late comes behind all that is in time, in its own order.
  const later = Math.max(...dues) + 1 - Math.min(...dues);
  const stages = edits.flatMap((edit, order) =>
    edit.stages.map((stage) => (dropped.has(order) ? { ...stage, dueAt: stage.dueAt + later } : stage)),
  );
  const dueAt = new Map(edits.flatMap((edit) => edit.stages.map((stage) => [stage.id, stage.dueAt] as const)));
  const plan = schedule(stages, slots);
  const planned = plan.stages.map((stage) => ({
    ...stage,
    lateness: stage.finish === null ? null : stage.finish - (dueAt.get(stage.id) ?? 0),
  }));
  return { late: edits.filter((_, order) => dropped.has(order)).map(({ id }) => id), plan: { ...plan, stages: planned }, proven };
}

function chosen(demand: Demand): { dropped: ReadonlySet<number>; proven: boolean } {
  if (demand.pieces.every((own) => own.every(({ from }) => from === 0) && own.length <= 1))
    return { dropped: byMoore(demand), proven: true };
  const dropped = shrunk(demand);
  const least = leastDropped(demand);
  if (dropped.size === least) return { dropped, proven: true };
  if (demand.pieces.length > MOST_SEARCHED) return { dropped, proven: false };
  const { fewer, proven } = fewerDropped(demand, least, dropped.size - 1);
  return { dropped: fewer ?? dropped, proven };
}

/** Moore's rule, in half hours of the calendar. */
function byMoore({ pieces }: Demand): ReadonlySet<number> {
  const longest = (a: Taken, b: Taken) => b.work - a.work || b.edit - a.edit;
  const taken: Taken[] = [];
  const dropped = new Set<number>();
  let hours = 0;
  for (const { edit, by, work } of pieces
    .flatMap((own, edit) => own.map((piece) => ({ ...piece, edit })))
    .toSorted((a, b) => a.by - b.by)) {
    push(taken, { edit, work }, longest);
    hours += work;
    if (hours <= by) continue;
    const out = pop(taken, longest) as Taken;
    dropped.add(out.edit);
    hours -= out.work;
  }
  return dropped;
}
type Taken = { edit: number; work: number };

/** A first choice: whoever asks most of the worst stretch is dropped until all fit, and taken back where there is room after all. */
function shrunk(demand: Demand): ReadonlySet<number> {
  const dropped = new Set<number>();
  const conflicts = () => conflictsOf(demand, (edit) => !dropped.has(edit));
  for (let found = conflicts(); found.length > 0; found = conflicts()) {
    const worst = found.reduce((most, each) => (each.excess > most.excess ? each : most));
    dropped.add(worst.askers[0]?.edit ?? 0);
  }
  for (const edit of [...dropped].toReversed()) {
    dropped.delete(edit);
    if (conflicts().length > 0) dropped.add(edit);
  }
  return dropped;
}

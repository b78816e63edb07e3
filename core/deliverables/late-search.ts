/**
 * The search for a smaller number of edits to drop: some edit of every stretch that lacks room must go, so the search tries each of those
 * in turn, and leaves a branch when the stretches that are left ask for more than may still go.
 */
import { conflictsOf, type Conflict, type Demand, type Piece } from './late-conflicts.ts';

/** Sets that are looked at before the search gives up. */
const MOST_STEPS = 500;

/** No choice drops fewer than this. */
export function leastDropped(demand: Demand): number {
  return boundOf(
    conflictsOf(demand, () => true),
    () => true,
  );
}

/**
 * A choice that drops fewer: the smallest of the sizes from `least` to `most`, or where the search for that is given up, one that is found
 * in as many steps from `most` downwards.
 * @returns the choice or null where none was found; `proven` false where a smaller one may be possible
 */
export function fewerDropped(demand: Demand, least: number, most: number): { fewer: ReadonlySet<number> | null; proven: boolean } {
  const harder = harderOf(demand.pieces);
  const begin = (): Search => ({ demand, harder, dropped: new Set(), held: new Set(), steps: 0 });
  const upwards = begin();
  let size = least;
  for (; size <= most && upwards.steps <= MOST_STEPS; size += 1)
    if (isFound(upwards, size)) return { fewer: upwards.dropped, proven: true };
  if (upwards.steps <= MOST_STEPS) return { fewer: null, proven: true };
  const givenUp = size - 1;
  let fewer: ReadonlySet<number> | null = null;
  for (let smaller = most; smaller >= givenUp; smaller -= 1) {
    const downwards = begin();
    if (!isFound(downwards, smaller)) break;
    fewer = downwards.dropped;
  }
  return { fewer, proven: fewer?.size === givenUp };
}

type Search = {
  demand: Demand;
  /** For each edit those that ask at least as much of every stretch: it goes only when they are gone. */
  harder: number[][];
  dropped: Set<number>;
  /** What is kept in this branch: the branches in which it goes have been looked at. */
  held: Set<number>;
  steps: number;
};

function isFound(search: Search, size: number): boolean {
  const { demand, harder, dropped, held } = search;
  search.steps += 1;
  if (search.steps > MOST_STEPS) return false;
  const conflicts = conflictsOf(demand, (edit) => !dropped.has(edit));
  if (conflicts.length === 0) return true;
  const mayGo = (edit: number): boolean => !held.has(edit);
  if (dropped.size + boundOf(conflicts, mayGo) > size) return false;
  const askers = conflicts.map((each) => each.askers.filter(({ edit }) => mayGo(edit)));
  const fewest = askers.reduce((least, each) => (each.length < least.length ? each : least));
  const tried: number[] = [];
  let found = false;
  for (const { edit } of fewest) {
    if (harder[edit]?.some((other) => !dropped.has(other))) continue;
    dropped.add(edit);
    found = isFound(search, size);
    if (found) break;
    dropped.delete(edit);
    held.add(edit);
    tried.push(edit);
  }
  for (const edit of tried) held.delete(edit);
  return found;
}

/** How many must go at least: of stretches that share no edit, each needs so many of its largest askers gone. Infinite where one cannot be met. */
function boundOf(conflicts: readonly Conflict[], mayGo: (edit: number) => boolean): number {
  const needs = conflicts.map(({ excess, askers }) => {
    const going = askers.filter(({ edit }) => mayGo(edit));
    let [left, need] = [excess, 0];
    for (; left > 0 && need < going.length; need += 1) left -= going[need]?.work ?? 0;
    return { need: left > 0 ? Infinity : need, edits: going.map(({ edit }) => edit) };
  });
  const used = new Set<number>();
  let bound = 0;
  for (const { need, edits } of needs.toSorted((a, b) => b.need - a.need || a.edits.length - b.edits.length)) {
    if (edits.some((edit) => used.has(edit))) continue;
    for (const edit of edits) used.add(edit);
    bound += need;
  }
  return bound;
}

/** If an edit can be kept in the place of another that is no easier, then some best choice drops the harder of the two first. */
function harderOf(pieces: readonly (readonly Piece[])[]): number[][] {
  const asksMore = (one: readonly Piece[], other: readonly Piece[]): boolean =>
    one.length === other.length &&
    one.every(({ from, by, work }, at) => from >= (other[at]?.from ?? 0) && by <= (other[at]?.by ?? 0) && work >= (other[at]?.work ?? 0));
  return pieces.map((own, edit) =>
    pieces.flatMap((other, order) => (order !== edit && asksMore(other, own) && (!asksMore(own, other) || order < edit) ? [order] : [])),
  );
}

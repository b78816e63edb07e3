/**
 * Where edits cannot all be in time: stretches that are asked for more half hours than they have. Edits are in time together if and only if
 * there is none (Horn 1974, for half hours).
 */
import { placeOf } from './place-of.ts';
import type { Slot } from './schedule.ts';
import { orderedStages, type Stage } from './stages.ts';

/** One thing promised: its stages, which wait for none of another edit. */
export type Edit = { id: string; stages: readonly Stage[] };

/** Half hours of an edit that must lie between two places of the calendar. */
export type Piece = { from: number; by: number; work: number };

export type Demand = {
  /** Each edit's, in order of time. */
  pieces: Piece[][];
  /** Distinct places from and by which work must be done. */
  froms: number[];
  bys: number[];
};

/** A stretch that has too little room, and who asks for it, the most hours first. */
export type Conflict = { excess: number; askers: { edit: number; work: number }[] };

/** Edits as half hours between places of the calendar. @throws CircleError when stages wait for one another */
export function demandOf(edits: readonly Edit[], slots: readonly Slot[]): Demand {
  const [starts, ends] = [slots.map(({ start }) => start), slots.map(({ end }) => end)];
  const pieces = edits.map(({ stages }) => {
    const byPlace = new Map<string, Piece>();
    for (const { from, by, halfHours } of orderedStages(stages)) {
      if (halfHours === 0) continue;
      const place = { from: placeOf(starts, from), by: placeOf(ends, by + 1) };
      const key = `${place.from} ${place.by}`;
      byPlace.set(key, { ...place, work: (byPlace.get(key)?.work ?? 0) + halfHours });
    }
    return [...byPlace.values()].toSorted((a, b) => a.from - b.from || a.by - b.by);
  });
  const places = (of: (piece: Piece) => number) => [...new Set(pieces.flat().map(of))].toSorted((a, b) => a - b);
  return { pieces, froms: places(({ from }) => from), bys: places(({ by }) => by) };
}

/** For each place from which work is asked, the stretch that lacks the most, among the edits that are kept. Empty: all are in time. */
export function conflictsOf({ pieces, froms, bys }: Demand, isKept: (edit: number) => boolean): Conflict[] {
  const placeOfBy = new Map(bys.map((by, order) => [by, order]));
  const kept = pieces.flatMap((own, edit) => (isKept(edit) ? own.map((piece) => ({ ...piece, edit })) : []));
  const byFrom = Map.groupBy(kept, ({ from }) => from);
  const asked = new Int32Array(bys.length);
  const found: { from: number; by: number; excess: number }[] = [];
  for (const from of froms.toReversed()) {
    for (const { by, work } of byFrom.get(from) ?? []) {
      const at = placeOfBy.get(by) ?? 0;
      asked[at] = (asked[at] ?? 0) + work;
    }
    let sum = 0;
    let worst = { from, by: 0, excess: 0 };
    bys.forEach((by, order) => {
      sum += asked[order] ?? 0;
      const excess = sum - Math.max(0, by - from);
      if (excess > worst.excess) worst = { from, by, excess };
    });
    if (worst.excess > 0) found.push(worst);
  }
  return found.map(({ from, by, excess }) => {
    const works = new Map<number, number>();
    for (const piece of kept) if (piece.from >= from && piece.by <= by) works.set(piece.edit, (works.get(piece.edit) ?? 0) + piece.work);
    const askers = [...works].map(([edit, work]) => ({ edit, work })).toSorted((a, b) => b.work - a.work || b.edit - a.edit);
    return { excess, askers };
  });
}

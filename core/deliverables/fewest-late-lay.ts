/**
 * The edit plan of another choice: as few deliverables late as can be, however late those are.
 */
import { fewestLate } from './fewest-late.ts';
import type { EditGround } from './ground.ts';
import { laid, type Laid } from './lay.ts';

/** @returns the plan, and whether it is proven that no order of the work leaves fewer late, the waits for notes as they are planned */
export function laidFewestLate(ground: EditGround): { lying: Laid; proven: boolean } {
  const owner = new Map(ground.edits.flatMap((edit) => edit.stages.map(({ id }) => [id, edit.id] as const)));
  let [proven, fewest] = [true, 0];
  const lying = laid(ground, (stages, slots) => {
    const edits = [...Map.groupBy(stages, ({ id }) => owner.get(id) ?? id)].map(([id, own]) => ({ id, stages: own }));
    const found = fewestLate(edits, slots);
    [proven, fewest] = [found.proven, found.late.length];
    return found.plan;
  });
  const late = lying.edits.filter(({ lateDays, unplaced }) => lateDays > 0 || unplaced > 0).length;
  return { lying, proven: proven && late === fewest };
}

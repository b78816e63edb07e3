/**
 * Part 3 of the check: long duty, many days in a row, many hours in a week. Cautions only, never permission; of the others only ink counts.
 */
import type { Finding } from '../contract/fit.ts';
import type { BookJob } from './book.ts';
import { dutyFindings } from './duty.ts';
import type { Ground } from './moves.ts';
import { rowFindings } from './row.ts';
import { weekFindings } from './week.ts';
import { workOf, type Work } from './work.ts';

/** Editing that is planned beside it, with the candidate and without. */
type PlannedEditing = { without: readonly Work[]; withIt: readonly Work[] };

/** Cautions that the candidate causes or worsens. */
export function loadFindings(
  candidate: BookJob,
  ink: readonly BookJob[],
  ground: Ground,
  planned: PlannedEditing = { without: [], withIt: [] },
): Finding[] {
  const without = workOf(ink, null, ground);
  const work = workOf([...ink, candidate], candidate, ground);
  return [
    ...dutyFindings(candidate, ink, ground),
    ...rowFindings(work, without, candidate, ground.home),
    ...weekFindings([...work, ...planned.withIt], [...without, ...planned.without], ground.home),
  ];
}

/**
 * The time that an edit of the sample took: typed when it is handed over, by stage, a little under or over what was estimated.
 */
import { call } from '@orpc/server';
import type { Deliverable } from '../../core/contract/deliverables.ts';
import { dateIn } from '../../core/time/wall.ts';
import { spent } from '../api/spent.ts';
import type { Cast } from './cast.ts';

/** Parts of a hundred of the estimate, one after another by the length of a name, so that the same year is told each time. */
const TOOK = [90, 120, 105, 140, 100];
const STEP = 5;

/** Every stage with hours gets its time. */
export async function typeTime(cast: Cast, { id, name, stages }: Deliverable): Promise<void> {
  const on = dateIn(cast.today.zone, cast.context.now());
  const part = TOOK[name.length % TOOK.length] ?? 100;
  for (const stage of stages.filter(({ halfHours }) => halfHours > 0)) {
    const minutes = Math.max(STEP, Math.round((stage.halfHours * 30 * part) / 100 / STEP) * STEP);
    await call(spent.type, { deliverableId: id, stageId: stage.id, on, minutes, note: '' }, cast);
  }
}

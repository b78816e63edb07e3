/**
 * Edits on the Desk, from the plan as it is laid now.
 */
import type { Clock } from '../../core/contract/desk.ts';
import { editPlan } from '../../core/deliverables/plan.ts';
import { editClocks } from '../../core/desk/edit-clocks.ts';
import { begunEdits, jobVersions } from '../../db/open-edits.ts';
import type { ReadableDb } from '../../db/store.ts';
import type { Planned } from './edit-plan.ts';

export function editClocksNow(db: ReadableDb, { ground, lying }: Planned): Clock[] {
  const { edits } = editPlan(ground, lying);
  const begun = begunEdits(db);
  const versions = jobVersions(db);
  const onDesk = edits.map((edit) => ({ ...edit, begun: begun.has(edit.deliverableId), jobVersion: versions.get(edit.jobId) ?? 1 }));
  return editClocks(onDesk, ground.now, ground.zone);
}

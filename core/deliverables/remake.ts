/**
 * Stages made anew where the numbers of a deliverable have changed: what is done stays done, what is there keeps its pins and its time.
 */
import type { StageKind } from '../contract/deliverables.ts';
import type { PlannedWork } from './make-stages.ts';

type Existing = { id: string; kind: StageKind; halfHours: number; doneAt: number | null };
export type Remade = PlannedWork & { id: string | null; doneAt: number | null };

/**
 * @param before its stages in order
 * @param rounds how many rounds were included before; what is beyond them was added for the client and stays
 * @param work the stages that the new numbers ask for
 */
export function remade(before: readonly Existing[], rounds: number, work: readonly PlannedWork[]): Remade[] {
  const extra = Math.max(0, before.filter(({ kind }) => kind === 'round').length - rounds);
  const asked = withExtra(work, extra, before.findLast(({ kind }) => kind === 'round')?.halfHours ?? 0);
  const left = [...before];
  const stages = asked.map(({ kind, halfHours }): Remade => {
    const at = left.findIndex((stage) => stage.kind === kind);
    const found = at < 0 ? undefined : left.splice(at, 1)[0];
    if (!found) return { id: null, kind, halfHours, doneAt: null };
    return { id: found.id, kind, halfHours: found.doneAt === null ? halfHours : found.halfHours, doneAt: found.doneAt };
  });
  const all = [...left.filter(({ doneAt }) => doneAt !== null), ...stages];
  // What lies before something that is done is done too.
  const last = all.findLastIndex(({ doneAt }) => doneAt !== null);
  return all.map((stage, order) => (order < last && stage.doneAt === null ? { ...stage, doneAt: all[last]?.doneAt ?? null } : stage));
}

/** Further rounds behind those that are included, before what follows them. */
function withExtra(work: readonly PlannedWork[], extra: number, halfHours: number): PlannedWork[] {
  if (extra === 0) return [...work];
  const lastRound = work.findLastIndex(({ kind }) => kind === 'round');
  const lock = work.findIndex(({ kind }) => kind === 'picture lock' || kind === 'delivered');
  const at = lastRound >= 0 ? lastRound + 1 : Math.max(0, lock);
  return work.toSpliced(at, 0, ...Array.from({ length: extra }, () => ({ kind: 'round' as const, halfHours })));
}

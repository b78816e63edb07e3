/**
 * The cuts that may be sent: each open stage that ends in one, by its name.
 */
import { ordinalInWords } from '../words/amounts.ts';

type CutStage = { id: string; kind: string; doneAt: unknown };

/** In the order of the stages, so that the likely one stands first. The cut after the first notes is the second one. */
export function cutsOf(stages: readonly CutStage[]): { what: string; closes: string }[] {
  let rounds = 0;
  return stages.flatMap(({ id, kind, doneAt }) => {
    if (kind === 'round') rounds += 1;
    const what = nameOf(kind, rounds);
    return doneAt === null && what !== null ? [{ what, closes: id }] : [];
  });
}

function nameOf(kind: string, rounds: number): string | null {
  if (kind === 'rough cut' || kind === 'fine cut') return kind;
  if (kind === 'round') return `${ordinalInWords(rounds + 1)} cut`;
  return kind === 'picture lock' ? 'locked picture' : null;
}

/** The stage of the work on a pass of notes: the round of that number among the stages, null where there is none. */
export function stageOfPass<S extends { kind: string }>(stages: readonly S[], pass: number): S | null {
  return stages.filter(({ kind }) => kind === 'round')[pass - 1] ?? null;
}

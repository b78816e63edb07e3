/**
 * The stages of a deliverable from its numbers. How the edit hours fall to selects, rough cut, fine cut and picture lock is common practice;
 * each stage's hours can be changed afterwards.
 */
import type { StageKind } from '../contract/deliverables.ts';
import type { EditNumbers } from '../contract/templates.ts';
import { exact, type Exact } from '../money/exact.ts';

export type PlannedWork = { kind: StageKind; halfHours: number };
export type Numbers = Pick<
  EditNumbers,
  'finishedMinutes' | 'editHoursPerMinute' | 'ingestHours' | 'rounds' | 'hoursPerRound' | 'sameDay'
> & { editHours?: string | null };

/** Parts of ten. */
const SHARES: readonly { kind: StageKind; tenths: number }[] = [
  { kind: 'selects', tenths: 2 },
  { kind: 'rough cut', tenths: 4 },
  { kind: 'fine cut', tenths: 3 },
  { kind: 'picture lock', tenths: 1 },
];

/** Edit hours without ingest and rounds: those that were said, else finished minutes times hours a minute. */
function cutHours({ editHours, finishedMinutes, editHoursPerMinute }: Numbers): Exact {
  return editHours ? exact(editHours) : exact(finishedMinutes).mul(exact(editHoursPerMinute));
}

/** Hours as half hours, a started one whole. */
export function halfHoursOf(hours: string | Exact): number {
  return Number(exact(hours).mul(2n).ceil());
}

/**
 * Stages in order. A cut that got no half hour is left out; the rounds lie between the fine cut and the lock, which closes them, then
 * delivered and approved. What is cut on site on the same day is one stage: nobody waits for notes there.
 */
export function stagesFrom(numbers: Numbers): PlannedWork[] {
  const cut = halfHoursOf(cutHours(numbers));
  const ingest = { kind: 'ingest' as const, halfHours: halfHoursOf(numbers.ingestHours) };
  const marks: PlannedWork[] = [
    { kind: 'delivered', halfHours: 0 },
    { kind: 'approved', halfHours: 0 },
  ];
  const work = numbers.sameDay ? [{ kind: 'fine cut' as const, halfHours: cut }] : [...shared(cut, numbers)];
  return [...[ingest, ...work].filter(({ kind, halfHours }) => halfHours > 0 || kind === 'round'), ...marks];
}

/** By largest remainder, ties in order, so that the parts add up to the whole. */
function shared(cut: number, { rounds, hoursPerRound }: Numbers): PlannedWork[] {
  const parts = SHARES.map(({ kind, tenths }, order) => ({
    kind,
    order,
    halfHours: Math.floor((cut * tenths) / 10),
    remainder: (cut * tenths) % 10,
  }));
  let left = cut - parts.reduce((sum, { halfHours }) => sum + halfHours, 0);
  for (const part of parts.toSorted((a, b) => b.remainder - a.remainder || a.order - b.order)) {
    if (left === 0) break;
    part.halfHours += 1;
    left -= 1;
  }
  const stages = parts.map(({ kind, halfHours }) => ({ kind, halfHours }));
  const passes = Array.from({ length: rounds }, () => ({ kind: 'round' as const, halfHours: halfHoursOf(hoursPerRound) }));
  return [...stages.slice(0, -1), ...passes, ...stages.slice(-1)];
}

/** "Ingest", "Round 2", "Picture lock"; a round is numbered among the rounds. */
export function stageNames(kinds: readonly StageKind[]): string[] {
  const rounds = kinds.filter((kind) => kind === 'round').length;
  let round = 0;
  return kinds.map((kind) => {
    if (kind === 'round') round += 1;
    const name = kind === 'round' && rounds > 1 ? `round ${round}` : kind;
    return `${name.slice(0, 1).toUpperCase()}${name.slice(1)}`;
  });
}

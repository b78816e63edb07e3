/**
 * Time spent on an edit: by stage, beside what was estimated, and what past edits of a kind really took.
 */
import { lengthInWords } from '../words/amounts.ts';

/** A stretch of work; epoch milliseconds, `endAt` null while the clock runs. */
export type Stretch = { stageId: string | null; startAt: number; endAt: number | null };
export type Estimated = { id: string; halfHours: number };
/** Whole minutes. `stageId` null is work that no stage was named for. */
export type SpentOn = { stageId: string | null; minutes: number; estimate: number };

/** Whole minutes that a stretch has; one that runs is counted to `now`. */
export function minutesOf({ startAt, endAt }: Omit<Stretch, 'stageId'>, now: number): number {
  return Math.max(0, Math.floor(((endAt ?? now) - startAt) / 60_000));
}

/** One row a stage in their order, then one for what no stage was named for, where there is any. What was a stage once counts there. */
export function spentByStage(stages: readonly Estimated[], stretches: readonly Stretch[], now: number): SpentOn[] {
  const known = new Set(stages.map(({ id }) => id));
  const minutes = new Map<string | null, number>();
  for (const stretch of stretches) {
    const at = stretch.stageId !== null && known.has(stretch.stageId) ? stretch.stageId : null;
    minutes.set(at, (minutes.get(at) ?? 0) + minutesOf(stretch, now));
  }
  const rest = minutes.get(null) ?? 0;
  return [
    ...stages.map(({ id, halfHours }) => ({ stageId: id, minutes: minutes.get(id) ?? 0, estimate: halfHours * 30 })),
    ...(rest > 0 ? [{ stageId: null, minutes: rest, estimate: 0 }] : []),
  ];
}

/**
 * Half hours that a stage which is not done still needs: its estimate less what was spent, each started half hour whole.
 * One that took longer than estimated needs at least one more, or the schedule would think it done.
 */
export function halfHoursLeft(estimate: number, minutes: number): number {
  if (estimate === 0) return 0;
  return Math.max(1, Math.ceil(estimate - minutes / 30));
}

/** "6 h 30 min of 8 h", "9 h of 8 h, 1 h over", "2 h". */
export function spentInWords(minutes: number, estimate: number): string {
  if (estimate === 0) return lengthInWords(minutes);
  const over = minutes > estimate ? `, ${lengthInWords(minutes - estimate)} over` : '';
  return `${lengthInWords(minutes)} of ${lengthInWords(estimate)}${over}`;
}

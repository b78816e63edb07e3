/**
 * What is with me after a stay: the kit of its job, and that of jobs before it which could not be put down at home in between.
 */
import type { KitNeed } from './book.ts';
import type { StayEntry } from './lane.ts';
import { asksForRest, type ReachInput } from './reach.ts';

const MINUTE = 60_000;

/**
 * @param stays in any order; those of pencils are passed over, for they may go
 * @returns needs by thing; of a thing that several jobs take, the larger count
 */
export function carriedAfter(stay: StayEntry, stays: readonly StayEntry[], ground: ReachInput): KitNeed[] {
  const counts = new Map<string, number>();
  for (let at: StayEntry | undefined = stay; at; at = joinedBefore(at, stays, ground))
    for (const [item, count] of countsOf(at)) counts.set(item, Math.max(count, counts.get(item) ?? 0));
  return [...counts].map(([item, count]) => ({ item, count }));
}

function countsOf({ job }: StayEntry): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { item, count } of job.kit ?? []) counts.set(item, (counts.get(item) ?? 0) + count);
  return counts;
}

/** The nearest stay before, where even on a quick road one cannot have been home since and have rested. */
function joinedBefore(stay: StayEntry, stays: readonly StayEntry[], { home, find, restMinutes }: ReachInput): StayEntry | undefined {
  const before = stays
    .filter((other) => other !== stay && other.endAt <= stay.startAt && (other.standing === 'ink' || other.standing === 'own'))
    .reduce<StayEntry | undefined>((latest, other) => (latest && latest.endAt >= other.endAt ? latest : other), undefined);
  if (!before) return undefined;
  const byHome = find(before.to, home).shortMinutes + find(home, stay.from).shortMinutes;
  const rest = asksForRest(before, stay) ? restMinutes : 0;
  return stay.startAt - before.endAt < (byHome + rest) * MINUTE ? before : undefined;
}

/**
 * Which snapshots are kept. Everything of the last 24 hours, then the newest of each day for 30 days, then the newest of each month; what
 * was taken before a migration stays 90 days in any case. Days and months are those of UTC, like the names.
 */
import type { Snapshot } from '../core/contract/store.ts';

type Age = Pick<Snapshot, 'name' | 'takenAt' | 'why'>;

const HOUR_MS = 3_600_000;
const KEEP_ALL_MS = 24 * HOUR_MS;
const KEEP_DAILY_MS = 30 * 24 * HOUR_MS;
const KEEP_BEFORE_MIGRATION_MS = 90 * 24 * HOUR_MS;

/**
 * Names of the snapshots that may go. One dated after `now` stays, since the clock may have been moved back.
 * @param now epoch milliseconds
 */
export function thinnedOut(snapshots: readonly Age[], now: number): string[] {
  const kept = new Set<string>();
  return snapshots
    .toSorted((a, b) => (a.takenAt < b.takenAt ? 1 : a.takenAt > b.takenAt ? -1 : 0))
    .filter(({ takenAt, why }) => {
      const age = now - Temporal.Instant.from(takenAt).epochMilliseconds;
      if (age <= KEEP_ALL_MS || (why === 'before migration' && age <= KEEP_BEFORE_MIGRATION_MS)) return false;
      const period = takenAt.slice(0, age <= KEEP_DAILY_MS ? 'YYYY-MM-DD'.length : 'YYYY-MM'.length);
      if (!kept.has(period)) {
        kept.add(period);
        return false;
      }
      return true;
    })
    .map(({ name }) => name);
}

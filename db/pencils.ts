/**
 * Tentative holds. At most one of a job is held; older ones are kept as they ended.
 */
import { and, desc, eq, ne, sql } from 'drizzle-orm';
import type { Moment } from '../core/contract/parts.ts';
import { epochOf } from '../core/time/read.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { pencils } from './schema/jobs.ts';
import type { ReadableDb, WritableDb } from './store.ts';

export type PencilRow = typeof pencils.$inferSelect;

const reading = perStore((db) => ({
  newest: db
    .select()
    .from(pencils)
    .where(and(eq(pencils.jobId, sql.placeholder('jobId')), ne(pencils.state, 'renewed')))
    .orderBy(desc(pencils.pencilledAt), desc(pencils.id))
    .limit(1)
    .prepare(),
}));

/** The newest pencil of a job, held or ended. */
export function newestPencil(db: ReadableDb, jobId: string): PencilRow | undefined {
  return reading(db).newest.get({ jobId });
}

/**
 * Hold a job's dates in pencil until a moment. A pencil that is held already is renewed: the new one is ordered by its own `pencilledAt`,
 * so that it stands last among others. `pencilledAt` and `now` in epoch milliseconds.
 */
export function holdPencil(
  db: WritableDb,
  { jobId, pencilledAt, expires }: { jobId: string; pencilledAt: number; expires: Moment },
  now: number,
): void {
  endPencil(db, jobId, 'renewed', now);
  db.insert(pencils)
    .values({
      id: newId(),
      jobId,
      pencilledAt,
      expiresWall: expires.wall,
      expiresZone: expires.zone,
      expiresAt: epochOf(expires.at),
      state: 'held',
    })
    .run();
}

/** End the held pencil of a job, if one is held. `now` in epoch milliseconds. */
export function endPencil(db: WritableDb, jobId: string, state: 'let go' | 'inked' | 'renewed', now: number): void {
  db.update(pencils)
    .set({ state, endedAt: now })
    .where(and(eq(pencils.jobId, jobId), eq(pencils.state, 'held')))
    .run();
}

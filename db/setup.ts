/**
 * My own details: one row.
 */
import { eq, sql } from 'drizzle-orm';
import type { SetupFields } from '../core/contract/setup.ts';
import { perStore } from './prepared.ts';
import { setup } from './schema/setup.ts';
import type { ReadableDb, WritableDb } from './store.ts';

export type SetupRow = typeof setup.$inferSelect;

const ONLY = 1;

const reading = perStore((db) => ({
  row: db
    .select()
    .from(setup)
    .where(eq(setup.id, sql.placeholder('id')))
    .prepare(),
}));

/** My details, or nothing before the first set-up. */
export function setupRow(db: ReadableDb): SetupRow | undefined {
  return reading(db).row.get({ id: ONLY });
}

/** Write my details as a new version. The caller has compared versions in the same transaction. `now` in epoch milliseconds. */
export function saveSetup(db: WritableDb, fields: SetupFields, now: number): void {
  db.insert(setup)
    .values({ id: ONLY, fields, updatedAt: now })
    .onConflictDoUpdate({ target: setup.id, set: { fields, version: sql`${setup.version} + 1`, updatedAt: now } })
    .run();
}

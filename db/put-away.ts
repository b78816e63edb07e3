/**
 * Lines of the Desk that were read and put away.
 */
import { eq, gt, sql } from 'drizzle-orm';
import { perStore } from './prepared.ts';
import { putAwayLines } from './schema/desk.ts';
import type { ReadableDb, WritableDb } from './store.ts';

const reading = perStore((db) => ({
  since: db
    .select({ line: putAwayLines.line })
    .from(putAwayLines)
    .where(gt(putAwayLines.at, sql.placeholder('since')))
    .prepare(),
}));

/** Names of the lines that were put away after `since`, epoch ms. */
export function putAwaySince(db: ReadableDb, since: number): Set<string> {
  return new Set(
    reading(db)
      .since.all({ since })
      .map(({ line }) => line),
  );
}

/** Put a line away; one that is away already stays so. `now` in epoch ms. */
export function putAway(db: WritableDb, line: string, now: number): void {
  db.insert(putAwayLines).values({ line, at: now }).onConflictDoNothing().run();
}

export function bringBack(db: WritableDb, line: string): void {
  db.delete(putAwayLines).where(eq(putAwayLines.line, line)).run();
}

/**
 * Challenges of pencils: the holder was asked for a yes or no until a moment. The newest of a pencil counts.
 */
import { desc, eq, sql } from 'drizzle-orm';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { challenges } from './schema/challenges.ts';
import type { ReadableDb, WritableDb } from './store.ts';

export type ChallengeRow = typeof challenges.$inferSelect;

const reading = perStore((db) => ({
  newest: db
    .select()
    .from(challenges)
    .where(eq(challenges.pencilId, sql.placeholder('pencilId')))
    .orderBy(desc(challenges.askedAt), desc(challenges.id))
    .limit(1)
    .prepare(),
}));

export function newestChallenge(db: ReadableDb, pencilId: string): ChallengeRow | undefined {
  return reading(db).newest.get({ pencilId });
}

/** Instants in epoch ms. */
export function addChallenge(db: WritableDb, row: Omit<ChallengeRow, 'id'>): ChallengeRow {
  const whole = { id: newId(), ...row };
  db.insert(challenges).values(whole).run();
  return whole;
}

/**
 * Readings that a person corrected, by sender.
 */
import { and, asc, eq, sql } from 'drizzle-orm';
import type { Correction, KeptCorrection, Point } from '../core/inquiries/remember.ts';
import { instantText } from '../core/time/read.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { corrections } from './schema/corrections.ts';
import type { ReadableDb, WritableDb } from './store.ts';

const reading = perStore((db) => ({
  ofSender: db
    .select()
    .from(corrections)
    .where(eq(corrections.sender, sql.placeholder('sender')))
    .orderBy(asc(corrections.fact), asc(corrections.words))
    .prepare(),
}));

/** What was corrected for a sender. */
export function correctionsFor(db: ReadableDb, sender: string): KeptCorrection[] {
  return reading(db)
    .ofSender.all({ sender })
    .map(({ id, fact, words, read, chosen, at }) => ({ id, fact, words, read, chosen, at: instantText(at) }));
}

/** Keep a correction; a later one of the same words takes the place of the earlier. `at` in epoch milliseconds. */
export function keepCorrection(db: WritableDb, sender: string, { fact, words, read, chosen }: Correction, at: number): void {
  db.insert(corrections)
    .values({ id: newId(), sender, fact, words, read, chosen, at })
    .onConflictDoUpdate({ target: [corrections.sender, corrections.fact, corrections.words, corrections.read], set: { chosen, at } })
    .run();
}

/** Drop the correction of these words, if there is one: they mean what they say again. */
export function dropCorrection(db: WritableDb, sender: string, { fact, words, read }: Point): void {
  db.delete(corrections)
    .where(and(eq(corrections.sender, sender), eq(corrections.fact, fact), eq(corrections.words, words), eq(corrections.read, read)))
    .run();
}

/** Drop a correction by its id; one that is gone already stays gone. */
export function forgetCorrection(db: WritableDb, id: string): void {
  db.delete(corrections).where(eq(corrections.id, id)).run();
}

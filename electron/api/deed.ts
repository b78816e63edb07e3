/**
 * The one way in which a procedure writes: an immediate transaction, and the first result again for a repeated key.
 */
import { createHash } from 'node:crypto';
import { deedByKey, keepDeed } from '../../db/keeping.ts';
import type { WritableDb } from '../../db/store.ts';
import type { Context } from './context.ts';
import { refused } from './trouble.ts';

/**
 * Run a deed in one immediate transaction.
 * @param key idempotency key; a second call with the same key and input answers with the first result and changes nothing
 * @throws REFUSED when the key was used for another input
 */
export function deed<T>(context: Context, procedure: string, input: { key?: string | undefined }, act: (db: WritableDb) => T): T {
  return context.store.write((db) => {
    if (!input.key) return act(db);
    const inputHash = createHash('sha256').update(JSON.stringify(input)).digest('hex');
    const before = deedByKey(db, input.key);
    if (before) {
      if (before.procedure !== procedure || before.inputHash !== inputHash)
        throw refused('This deed key was used for something else.', 'Make a new key for a new deed.');
      return before.result as T;
    }
    const result = act(db);
    keepDeed(db, { key: input.key, procedure, inputHash, at: context.now(), result });
    return result;
  });
}

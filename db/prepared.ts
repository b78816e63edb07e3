/**
 * Statements are prepared once for each open store: a query that drizzle builds on each call costs several times a prepared one.
 */
import type { ReadableDb, WritableDb } from './store.ts';

function once<Db extends object, T>(make: (db: Db) => T): (db: Db) => T {
  const made = new WeakMap<Db, T>();
  return (db) => {
    let prepared = made.get(db);
    if (prepared === undefined) {
      prepared = make(db);
      made.set(db, prepared);
    }
    return prepared;
  };
}

/** Queries of one subject, prepared at first use of each store. `make` returns an object of prepared statements. */
export const perStore = <T>(make: (db: ReadableDb) => T): ((db: ReadableDb) => T) => once(make);

/** The same for statements that write. */
export const perStoreWrites = <T>(make: (db: WritableDb) => T): ((db: WritableDb) => T) => once(make);

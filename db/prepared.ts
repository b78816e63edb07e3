/**
 * Statements are prepared once for each open store: a query that drizzle builds on each call costs several times a prepared one.
 */
import { getTableColumns, sql, type InferInsertModel } from 'drizzle-orm';
import type { SQLiteTable } from 'drizzle-orm/sqlite-core';
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

type Filled = { run: (values: Record<string, unknown>) => unknown };
const inserts = perStoreWrites(() => new WeakMap<SQLiteTable, Map<string, Filled>>());

/**
 * Put one row into a table by a statement that is prepared once for each set of columns. A nullable column that gets nothing is left out,
 * since a placeholder would store the JSON of null as text; it must have no default, and then holds NULL.
 */
export function insertRow<Table extends SQLiteTable>(db: WritableDb, table: Table, row: InferInsertModel<Table>): void {
  const columns = getTableColumns(table);
  const values: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(row)) {
    if (value === undefined) continue;
    if (value !== null || columns[name]?.notNull) values[name] = value;
    else if (columns[name]?.hasDefault) throw new Error(`${name} has a default, which would stand in the place of nothing`);
  }
  const ofTable = inserts(db).get(table) ?? new Map<string, Filled>();
  inserts(db).set(table, ofTable);
  const shape = Object.keys(values).join();
  let prepared = ofTable.get(shape);
  if (prepared === undefined) {
    const placed = Object.fromEntries(Object.keys(values).map((name) => [name, sql.placeholder(name)]));
    prepared = db
      .insert(table)
      .values(placed as never)
      .prepare();
    ofTable.set(shape, prepared);
  }
  prepared.run(values);
}

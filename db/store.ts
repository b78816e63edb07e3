/**
 * The shape of an open store. Everything outside `db/` holds one of these and never a connection.
 */
import type Database from 'better-sqlite3';
import type { BetterSQLite3Database } from 'drizzle-orm/better-sqlite3';
import type { Snapshot } from '../core/contract/store.ts';
import type { Announcement } from './lock.ts';

declare const readable: unique symbol;
declare const writable: unique symbol;

type Drizzle = BetterSQLite3Database & { readonly $client: Database.Database };

/** A handle that queries take. What it cannot do by its type, the connection refuses as well. */
export type ReadableDb = Pick<Drizzle, 'select' | 'selectDistinct' | 'with' | '$with' | '$count' | 'all' | 'get' | 'values' | '$client'> & {
  readonly [readable]: true;
};
/** A handle that only write methods get, inside the one immediate transaction of their deed. */
export type WritableDb = ReadableDb & Pick<Drizzle, 'insert' | 'update' | 'delete' | 'run'> & { readonly [writable]: true };

export type Store = {
  /** Absolute path of the data folder; never shown to a page except on Setup. */
  readonly folder: string;
  /** Folder of papers named by their hash. */
  readonly papers: string;
  /** Number of applied migrations. */
  readonly schema: number;
  /** Version of the SQLite library. */
  readonly sqlite: string;
  /** Run queries that change nothing. */
  read<T>(queries: (db: ReadableDb) => T): T;
  /** Run one deed in one immediate transaction; whatever throws undoes all of it. Synchronous by design: nothing may wait inside a transaction. */
  write<T>(deed: (db: WritableDb) => T): T;
  /** Be told after every deed that was committed, until the returned function is called. The listener must not throw. */
  onWritten(listener: () => void): () => void;
  /** Write a verified snapshot. `now` in epoch milliseconds. */
  snapshot(why: Snapshot['why'], now: number): Promise<Snapshot>;
  /** All snapshots, newest first. */
  snapshots(): Snapshot[];
  /** Put every row of a closed store in another data folder into this one, which must hold nothing: all or nothing. Papers are files and stay there. */
  takeOver(folder: string): void;
  /** Write a verified snapshot, then take every row out. `now` in epoch milliseconds. */
  emptyOut(now: number): Promise<Snapshot>;
  /** Leave word beside the store for a second start; it goes when the store is closed. */
  announce(word: Announcement): void;
  /** Optimise, checkpoint, close, let the lock go. Safe to call twice. */
  close(): void;
};

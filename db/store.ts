/**
 * The shape of an open store. Everything outside `db/` holds one of these and never a connection.
 */
import type Database from 'better-sqlite3';
import type { BetterSQLite3Database } from 'drizzle-orm/better-sqlite3';
import type { Snapshot } from '../core/contract/store.ts';

declare const readable: unique symbol;
declare const writable: unique symbol;

/** A handle that queries take. */
export type ReadableDb = BetterSQLite3Database & { readonly $client: Database.Database; readonly [readable]: true };
/** A handle that only write methods get, inside the one immediate transaction of their deed. */
export type WritableDb = ReadableDb & { readonly [writable]: true };

export type Store = {
  /** Absolute path of the data folder; never shown to a page except on Setup. */
  readonly folder: string;
  /** Folder of papers named by their hash. */
  readonly papers: string;
  /** Number of applied migrations. */
  readonly schema: number;
  /** Run queries that change nothing. */
  read<T>(queries: (db: ReadableDb) => T): T;
  /** Run one deed in one immediate transaction; whatever throws undoes all of it. Synchronous by design: nothing may wait inside a transaction. */
  write<T>(deed: (db: WritableDb) => T): T;
  /** Write a verified snapshot. */
  snapshot(why: Snapshot['why'], now: number): Promise<Snapshot>;
  snapshots(): Snapshot[];
  /** Optimise, checkpoint, close, let the lock go. Safe to call twice. */
  close(): void;
};

/**
 * The store while it is open: reading, deeds in one transaction each, and the way out.
 */
import type Database from 'better-sqlite3';
import { drizzle } from 'drizzle-orm/better-sqlite3';
import { sqliteVersion } from './connect.ts';
import { layout } from './folder.ts';
import { onlyInDeeds, readOnly } from './handles.ts';
import type { Lock } from './lock.ts';
import { sealStore } from './seal.ts';
import { listSnapshots, takeSnapshot } from './snapshot.ts';
import type { ReadableDb, Store, WritableDb } from './store.ts';
import { StoreError, inStoreWords, storeTroubleBehind } from './trouble.ts';
import { emptyOut, takeOver } from './whole-store.ts';

type Parts = { folder: string; client: Database.Database; lock: Lock; schema: number };

/** Hand an open, migrated connection out as a store. */
export function liveStore({ folder, client, lock, schema }: Parts): Store {
  const db = drizzle({ client: onlyInDeeds(client) }) as unknown as WritableDb;
  const readable = drizzle({ client: readOnly(client) }) as unknown as ReadableDb;
  const { papers, snapshots } = layout(folder);
  const transaction = client.transaction((deed: (db: WritableDb) => unknown) => waitForNothing(deed(db)));
  let damaged: StoreError | undefined;
  let reading = false;
  let newestSnapshot: Promise<unknown> = Promise.resolve();
  const listeners = new Set<() => void>();

  /** Trouble of the disk in words; damage is remembered, since nothing more may be written over it. */
  function inWords(error: unknown): unknown {
    const trouble = storeTroubleBehind(error);
    if (trouble?.kind === 'damaged') damaged ??= trouble;
    return trouble ?? error;
  }
  function requireOpen(): void {
    if (!client.open) throw new StoreError('closed', CLOSED);
  }

  function requireStill(): void {
    requireOpen();
    if (client.inTransaction || reading) throw new StoreError('misuse', NESTED);
    if (damaged) throw damaged;
  }

  return {
    folder,
    papers,
    schema,
    sqlite: sqliteVersion(),
    read<T>(queries: (db: ReadableDb) => T): T {
      requireOpen();
      const outer = reading;
      reading = true;
      try {
        return waitForNothing(queries(readable));
      } catch (error) {
        throw inWords(error);
      } finally {
        reading = outer;
      }
    },
    write<T>(deed: (db: WritableDb) => T): T {
      requireStill();
      let result: T;
      try {
        result = transaction.immediate(deed) as T;
      } catch (error) {
        throw inWords(error);
      }
      for (const told of listeners) told();
      return result;
    },
    onWritten(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    async snapshot(why, now) {
      requireOpen();
      if (client.inTransaction) throw new StoreError('misuse', NESTED);
      // One after the other: each finds its own name and the one before it whole.
      const taking = newestSnapshot.then(() => takeSnapshot({ client, folder: snapshots, why, now }));
      newestSnapshot = taking.catch(() => {});
      try {
        return await taking;
      } catch (error) {
        throw inWords(error);
      }
    },
    snapshots() {
      return inStoreWords(() => listSnapshots(snapshots));
    },
    takeOver(other) {
      requireStill();
      try {
        takeOver(client, other);
      } catch (error) {
        throw inWords(error);
      }
    },
    async emptyOut(now) {
      requireStill();
      const kept = await this.snapshot('asked', now);
      requireStill();
      try {
        emptyOut(client);
      } catch (error) {
        throw inWords(error);
      }
      return kept;
    },
    announce(word) {
      requireOpen();
      lock.announce(word);
    },
    close() {
      if (client.open) shut(client, folder);
      lock.release();
    },
  };
}

const CLOSED = {
  what: 'The store is closed.',
  kept: 'Everything saved before is kept; this was not saved.',
  todo: 'Start Kitbound again.',
};
const NESTED = {
  what: 'One deed was begun inside another.',
  kept: 'Nothing of either was saved.',
  todo: 'Try again; if it comes back, report it.',
};

/** A promise means that somebody waits inside a transaction; it would end before the work does. */
function waitForNothing<T>(result: T): T {
  if (result instanceof Promise) {
    result.catch(() => {});
    throw new TypeError('Nothing may wait inside a transaction.');
  }
  return result;
}

function shut(client: Database.Database, folder: string): void {
  try {
    client.pragma('optimize');
    client.pragma('wal_checkpoint(truncate)');
    client.close();
    sealStore(folder);
  } catch (error) {
    // A disk that fails now cannot be helped by staying open: the write-ahead log keeps what is not yet in the file.
    if (!storeTroubleBehind(error)) throw error;
  } finally {
    client.close();
  }
}

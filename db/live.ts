/**
 * The store while it is open: reading, deeds in one transaction each, and the way out.
 */
import type Database from 'better-sqlite3';
import { drizzle } from 'drizzle-orm/better-sqlite3';
import { layout } from './folder.ts';
import type { Lock } from './lock.ts';
import { listSnapshots, takeSnapshot } from './snapshot.ts';
import type { ReadableDb, Store, WritableDb } from './store.ts';
import { StoreError, storeTroubleBehind } from './trouble.ts';

type Parts = { folder: string; client: Database.Database; lock: Lock; schema: number; sqlite: string };

/** Hand an open, migrated connection out as a store. */
export function liveStore({ folder, client, lock, schema, sqlite }: Parts): Store {
  // One handle under both types: what is allowed is decided by the type, and by `query_only` on the connection.
  const db = drizzle({ client }) as unknown as WritableDb;
  const { papers, snapshots } = layout(folder);
  const immediate = client.transaction((deed: (db: WritableDb) => unknown) => deed(db)).immediate;
  let damaged: StoreError | undefined;
  let reading = false;
  allowWrites(client, false);

  /** Trouble of the disk in words; damage is remembered, since nothing more may be written over it. */
  function inWords<T>(act: () => T): T {
    try {
      return act();
    } catch (error) {
      const trouble = storeTroubleBehind(error);
      if (trouble?.kind === 'damaged') damaged ??= trouble;
      throw trouble ?? error;
    }
  }
  function requireOpen(): void {
    if (!client.open) throw new StoreError('closed', CLOSED);
  }

  return {
    folder,
    papers,
    schema,
    sqlite,
    read<T>(queries: (db: ReadableDb) => T): T {
      requireOpen();
      const outer = reading;
      reading = true;
      try {
        return inWords(() => waitForNothing(queries(db)));
      } finally {
        reading = outer;
      }
    },
    write<T>(deed: (db: WritableDb) => T): T {
      requireOpen();
      if (client.inTransaction || reading) throw new StoreError('misuse', NESTED);
      if (damaged) throw damaged;
      return inWords(() => {
        allowWrites(client, true);
        try {
          return immediate((handle) => waitForNothing(deed(handle))) as T;
        } finally {
          if (client.open) allowWrites(client, false);
        }
      });
    },
    async snapshot(why, now) {
      requireOpen();
      if (client.inTransaction) throw new StoreError('misuse', NESTED);
      return takeSnapshot({ client, folder: snapshots, why, now });
    },
    snapshots: () => listSnapshots(snapshots),
    announce(word) {
      requireOpen();
      lock.announce(word);
    },
    close() {
      if (client.open) shut(client);
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

function allowWrites(client: Database.Database, allowed: boolean): void {
  client.pragma(`query_only = ${allowed ? 'off' : 'on'}`);
}

/** A promise means that somebody waits inside a transaction; it would end before the work does. */
function waitForNothing<T>(result: T): T {
  if (result instanceof Promise) {
    result.catch(() => {});
    throw new TypeError('Nothing may wait inside a transaction.');
  }
  return result;
}

function shut(client: Database.Database): void {
  try {
    allowWrites(client, true);
    client.pragma('optimize');
    client.pragma('wal_checkpoint(truncate)');
  } catch (error) {
    // A disk that fails now cannot be helped by staying open: the write-ahead log keeps what is not yet in the file.
    if (!storeTroubleBehind(error)) throw error;
  } finally {
    client.close();
  }
}

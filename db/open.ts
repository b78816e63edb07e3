/**
 * The one place where the store is opened.
 */
import { fileURLToPath } from 'node:url';
import { requireSound } from './check.ts';
import { connect, requireSqlite, sqliteVersion } from './connect.ts';
import { layout, prepareFolder } from './folder.ts';
import { forgetDeedsBefore } from './keeping.ts';
import { liveStore } from './live.ts';
import { takeLock, type Lock } from './lock.ts';
import { migrate, pendingMigrations, readMigrations } from './migrate.ts';
import { clearPartials, takeSnapshot } from './snapshot.ts';
import type { Store } from './store.ts';
import { StoreError, inStoreWords } from './trouble.ts';

/** How long the result of a deed is kept for a repeat of it. */
const DEEDS_KEPT_MS = 30 * 86_400_000;

export type Opening = {
  /** The data folder; made when it is missing inside a folder that is there. */
  folder: string;
  /** Epoch milliseconds. */
  now: () => number;
  /** Where the migrations lie; beside this room unless the program was bundled. */
  migrationsFolder?: string;
  /** Told what was done at opening that a person may want to know. */
  onNote?: (sentence: string) => void;
};

/**
 * Open the store of a data folder, bring it up to this version's schema and hold it until close().
 * @throws StoreBusy when another process holds it; StoreError of the other kinds, the data untouched
 */
export async function openStore(opening: Opening): Promise<Store> {
  const { onNote = () => {} } = opening;
  const sqlite = sqliteVersion();
  requireSqlite(sqlite);
  const folder = prepareFolder(opening.folder, onNote);
  const lock = takeLock(folder);
  try {
    return await openHeld({ ...opening, folder, onNote }, lock, sqlite);
  } catch (error) {
    lock.release();
    throw error;
  }
}

const MIGRATIONS_FOLDER = fileURLToPath(new URL('../migrations', import.meta.url));

async function openHeld(
  opening: Required<Pick<Opening, 'folder' | 'now' | 'onNote'>> & Opening,
  lock: Lock,
  sqlite: string,
): Promise<Store> {
  const { folder, now, onNote, migrationsFolder = MIGRATIONS_FOLDER } = opening;
  const places = layout(folder);
  clearPartials(places.snapshots);
  const migrations = readMigrations(migrationsFolder);
  const client = inStoreWords(() => connect(places.store));
  try {
    const isNew = inStoreWords(() => {
      requireSound(client);
      return client.prepare('select count(*) from sqlite_schema').pluck().get() === 0;
    });
    const pending = pendingMigrations(client, migrations);
    if (pending.length > 0 && !isNew) await takeSnapshot({ client, folder: places.snapshots, why: 'before migration', now: now() });
    migrate(client, pending, now());
    const store = liveStore({ folder, client, lock, schema: migrations.length, sqlite });
    store.write((db) => forgetDeedsBefore(db, now() - DEEDS_KEPT_MS));
    if (!isNew) await takeDailySnapshot(store, now(), onNote);
    return store;
  } catch (error) {
    client.close();
    throw error;
  }
}

/** The first start of a UTC day writes a snapshot. A disk that has no room for it is no reason not to work. */
async function takeDailySnapshot(store: Store, now: number, onNote: (sentence: string) => void): Promise<void> {
  const today = Temporal.Instant.fromEpochMilliseconds(now).toString().slice(0, 'YYYY-MM-DD'.length);
  if (store.snapshots().some(({ takenAt }) => takenAt.startsWith(today))) return;
  try {
    await store.snapshot('daily', now);
  } catch (error) {
    if (!(error instanceof StoreError) || error.kind === 'damaged') throw error;
    onNote(`Today's snapshot could not be written. ${error.what} ${error.todo}`);
  }
}

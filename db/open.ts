/**
 * The one place where the store is opened.
 */
import { rmSync } from 'node:fs';
import { requireSound, requireWhole } from './check.ts';
import { connect, requireSqlite, sqliteVersion } from './connect.ts';
import { layout, prepareFolder } from './folder.ts';
import { forgetDeedsBefore } from './keeping.ts';
import { liveStore } from './live.ts';
import { takeLock, type Lock } from './lock.ts';
import { MIGRATIONS_FOLDER, migrate, pendingMigrations, readMigrations } from './migrate.ts';
import { finishReplacement, newestGoodSnapshot, requireNotLost } from './recover.ts';
import { breakSeal, sealOf } from './seal.ts';
import { clearPartials, takeSnapshot } from './snapshot.ts';
import type { Store } from './store.ts';
import { StoreError, inStoreWords, inStoreWordsAtOpening } from './trouble.ts';

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
 * @throws StoreBusy when another process holds it; StoreError of the other kinds, the data untouched. `damaged` and `file missing` carry
 * the newest good snapshot.
 */
export async function openStore({ folder: given, now, migrationsFolder = MIGRATIONS_FOLDER, onNote = () => {} }: Opening): Promise<Store> {
  requireSqlite(sqliteVersion());
  const folder = prepareFolder(given, onNote);
  const lock = takeLock(folder);
  try {
    return await openHeld({ folder, now, migrationsFolder, onNote }, lock);
  } catch (error) {
    lock.release();
    throw withOffer(error, folder, migrationsFolder);
  }
}

async function openHeld({ folder, now, migrationsFolder, onNote }: Required<Opening>, lock: Lock): Promise<Store> {
  const places = layout(folder);
  const migrations = readMigrations(migrationsFolder);
  const seal = inStoreWords(() => {
    clearPartials(places.snapshots);
    rmSync(places.making, { recursive: true, force: true });
    finishReplacement(folder);
    requireNotLost(folder);
    return sealOf(folder);
  });
  const client = inStoreWordsAtOpening(() => connect(places.store));
  try {
    const pending = inStoreWordsAtOpening(() => {
      if (seal === 'none') requireSound(client);
      if (seal === 'broken') requireWhole(client);
      return pendingMigrations(client, migrations);
    });
    if (seal === 'broken') onNote(CHANGED_OUTSIDE);
    inStoreWords(() => breakSeal(folder));
    const isNew = pending.length === migrations.length;
    if (pending.length > 0 && !isNew) await takeSnapshot({ client, folder: places.snapshots, why: 'before migration', now: now() });
    migrate(client, pending, now());
    const store = liveStore({ folder, client, lock, schema: migrations.length });
    store.write((db) => forgetDeedsBefore(db, now() - DEEDS_KEPT_MS));
    if (!isNew) await takeDailySnapshot(store, now(), onNote);
    return store;
  } catch (error) {
    client.close();
    throw error;
  }
}

const CHANGED_OUTSIDE =
  'The store file was changed by something other than Kitbound since it was closed. It holds together, but look whether it says what you expect; the snapshots are from before.';

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

/** Where the file cannot be used, say which snapshot there is to go on with. */
function withOffer(error: unknown, folder: string, migrationsFolder: string): unknown {
  if (!(error instanceof StoreError) || !['damaged', 'file missing', 'not ours'].includes(error.kind)) return error;
  const { kind, what, kept, cause } = error;
  const snapshot = newestGoodSnapshot(folder, migrationsFolder);
  if (!snapshot && kind === 'not ours') return error;
  const todo = snapshot
    ? `Go on with the snapshot of ${snapshot.takenAt.slice(0, 16).replace('T', ' ')} UTC; what is in the folder now is set aside, not deleted.`
    : 'There is no good snapshot. Put a copy of your own back, or begin anew; what is in the folder now is set aside, not deleted.';
  return new StoreError(kind, { what, kept, todo }, { snapshot, cause });
}

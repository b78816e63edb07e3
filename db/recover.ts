/**
 * Ways back after damage: go on with a snapshot, or begin anew. What was there is set aside under the time of the deed, never overwritten
 * and never deleted.
 */
import { constants, copyFileSync, existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import Database from 'better-sqlite3';
import type { Snapshot } from '../core/contract/store.ts';
import { requireWhole } from './check.ts';
import { syncFile, syncFolder } from './durable.ts';
import { layout, storeFiles } from './folder.ts';
import { takeLock } from './lock.ts';
import { APPLICATION_ID, MIGRATIONS_FOLDER, pendingMigrations, readMigrations, type Migration } from './migrate.ts';
import { listSnapshots, openSnapshot, stamp } from './snapshot.ts';
import { StoreError, inStoreWords, inStoreWordsAtOpening } from './trouble.ts';

type Recovery = {
  /** The data folder; its store must be closed. */
  folder: string;
  /** Epoch milliseconds; names the folder that the old store is set aside in. */
  now: number;
  migrationsFolder?: string;
};

/**
 * Put a snapshot in the place of the store. What was saved after the snapshot is only in the file that is set aside.
 * @throws StoreBusy; StoreError `no such snapshot`, `damaged`, `not ours`, `newer version`; the store is untouched then
 */
export function useSnapshot({ folder, name, now, migrationsFolder = MIGRATIONS_FOLDER }: Recovery & { name: string }): void {
  const known = readMigrations(migrationsFolder);
  replaceStore(folder, now, (file) => {
    const { snapshots } = layout(resolve(folder));
    requireUsable(openSnapshot(snapshots, name), known);
    copyFileSync(join(snapshots, name), file, constants.COPYFILE_EXCL);
    requireUsable(new Database(file, { readonly: true }), known);
  });
}

/**
 * Set the store aside and put an empty one in its place, for when no snapshot helps.
 * @throws StoreBusy; StoreError of the disk, the store untouched
 */
export function beginAnew({ folder, now }: Recovery): void {
  replaceStore(folder, now, (file) => {
    const empty = new Database(file);
    empty.pragma(`application_id = ${APPLICATION_ID}`);
    empty.close();
  });
}

/** Finish a replacement that was cut short after its new file was whole; one that was cut short before has changed nothing. */
export function finishReplacement(folder: string): void {
  const incoming = readdirSync(folder).filter((file) => file.startsWith(INCOMING));
  for (const file of incoming) if (file.includes(PARTIAL)) rmSync(join(folder, file));
  const waiting = incoming.find((file) => !file.includes(PARTIAL));
  if (!waiting) return;
  const { store, seal, setAside } = layout(folder);
  const aside = join(setAside, waiting.slice(INCOMING.length));
  mkdirSync(aside, { recursive: true, mode: 0o700 });
  for (const file of [seal, ...storeFiles(store)]) if (existsSync(file)) renameSync(file, join(aside, basename(file)));
  syncFolder(aside);
  renameSync(join(folder, waiting), store);
  syncFolder(folder);
}

/** The newest snapshot that is whole and of a schema that we know. */
export function newestGoodSnapshot(folder: string, migrationsFolder: string): Snapshot | null {
  const known = readMigrations(migrationsFolder);
  const { snapshots } = layout(folder);
  const isGood = ({ name }: Snapshot) => {
    try {
      requireUsable(openSnapshot(snapshots, name), known);
      return true;
    } catch {
      return false;
    }
  };
  return listSnapshots(snapshots).find(isGood) ?? null;
}

/**
 * Refuse to begin an empty store where there has been one: SQLite would make a new file and drop the log of the lost one.
 * @throws StoreError `file missing`
 */
export function requireNotLost(folder: string): void {
  const { store, seal, snapshots } = layout(folder);
  if (size(store) > 0) return;
  if (size(seal) === 0 && size(`${store}-wal`) === 0 && listSnapshots(snapshots).length === 0) return;
  throw new StoreError('file missing', {
    what: 'The store file is missing or empty, though this data folder has had one.',
    kept: 'Nothing was made or changed.',
    todo: 'Put the file back if you moved it, or go on with a snapshot.',
  });
}

const INCOMING = 'kitbound.sqlite.incoming-';
const PARTIAL = '.partial';

function replaceStore(given: string, now: number, make: (file: string) => void): void {
  const folder = resolve(given);
  const lock = takeLock(folder);
  try {
    inStoreWords(() => {
      finishReplacement(folder);
      const incoming = join(folder, INCOMING + freeStamp(folder, now));
      const partial = incoming + PARTIAL;
      try {
        make(partial);
        syncFile(partial);
        renameSync(partial, incoming);
      } catch (error) {
        rmSync(partial, { force: true });
        throw error;
      }
      syncFolder(folder);
      finishReplacement(folder);
    });
  } finally {
    lock.release();
  }
}

const size = (file: string) => statSync(file, { throwIfNoEntry: false })?.size ?? 0;

function freeStamp(folder: string, now: number): string {
  const { setAside } = layout(folder);
  for (let count = 1; ; count += 1) {
    const name = count === 1 ? stamp(now) : `${stamp(now)}.${count}`;
    if (!existsSync(join(setAside, name))) return name;
  }
}

/** See that a snapshot is whole and of a schema that we know, and close it. */
function requireUsable(client: Database.Database, known: Migration[]): void {
  try {
    inStoreWordsAtOpening(() => {
      requireWhole(client);
      pendingMigrations(client, known);
    });
  } catch (error) {
    if (!(error instanceof StoreError) || (error.kind !== 'damaged' && error.kind !== 'not ours')) throw error;
    throw new StoreError(
      error.kind,
      { what: 'This snapshot is not a whole store.', kept: 'Nothing was changed.', todo: 'Take another one from the list.' },
      { cause: error },
    );
  } finally {
    client.close();
  }
}

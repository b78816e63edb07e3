/**
 * One writer for each data folder, over all doors. The lock is an exclusive SQLite transaction on a file of its own: the operating
 * system lets it go with the process, however that ends, so a crash leaves nothing stuck.
 */
import { chmodSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { StoreBusy, storeError, storeTroubleBehind } from './trouble.ts';

/** What a second start needs to find the first. Written by the door, opaque to the store. */
export type Announcement = { pid: number } & Record<string, unknown>;

export type Lock = {
  /** Leave word for a second start, readable by this user alone. */
  announce(word: Announcement): void;
  /** Take the word back and let the folder go. Safe to call twice. */
  release(): void;
};

const announcementFile = (folder: string) => join(folder, 'running.json');

/**
 * Take the data folder, which must exist.
 * @throws StoreBusy when another store of this or any process holds it; StoreError `cannot write` when the lock cannot be made
 */
export function takeLock(folder: string): Lock {
  const client = holdFile(join(folder, 'writer.lock'));
  // Whoever wrote this was ended before taking it back.
  rmSync(announcementFile(folder), { force: true });
  return {
    announce(word) {
      const file = announcementFile(folder);
      writeFileSync(file, JSON.stringify(word), { mode: 0o600 });
      chmodSync(file, 0o600);
    },
    release() {
      if (!client.open) return;
      rmSync(announcementFile(folder), { force: true });
      client.close();
    },
  };
}

/** The word that the holder of the folder left, or undefined when there is none or it is half written. */
export function readAnnouncement(folder: string): Announcement | undefined {
  try {
    const word: unknown = JSON.parse(readFileSync(announcementFile(folder), 'utf8'));
    return typeof word === 'object' && word !== null && 'pid' in word && typeof word.pid === 'number' ? (word as Announcement) : undefined;
  } catch {
    return undefined;
  }
}

function holdFile(file: string): Database.Database {
  let client: Database.Database | undefined;
  try {
    client = new Database(file, { timeout: 0 });
    client.exec('begin exclusive');
    return client;
  } catch (error) {
    client?.close();
    const trouble = storeTroubleBehind(error);
    if (trouble?.kind === 'busy') throw new StoreBusy(error);
    // A lock file that is no lock file was put there by something else.
    if (trouble?.kind === 'damaged') throw storeError('cannot write', error);
    throw trouble ?? error;
  }
}

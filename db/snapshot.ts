/**
 * Snapshots: whole copies of the store, written while it is open, believed only after a full check.
 */
import { chmodSync, existsSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import Database from 'better-sqlite3';
import type { Snapshot } from '../core/contract/store.ts';
import { countRows, requireWhole, type Counts } from './check.ts';
import { syncFile, syncFolder } from './durable.ts';
import { storeFiles } from './folder.ts';
import { thinnedOut } from './thinning.ts';
import { StoreError, storeError, storeTroubleBehind } from './trouble.ts';

const NAME = /^(\d{4}-\d{2}-\d{2})T(\d{2})-(\d{2})-(\d{2})-(\d{3})Z\.(asked|daily|before-migration)(?:\.\d+)?\.sqlite$/;
const PARTIAL = '.partial';

/**
 * Write a snapshot: online backup to a temporary name, full check, rows counted against the store, synced, renamed, the old ones thinned.
 * @param now epoch milliseconds
 * @throws StoreError; no file is left behind then and every older snapshot is kept
 */
export async function takeSnapshot({
  client,
  folder,
  why,
  now,
}: {
  client: Database.Database;
  folder: string;
  why: Snapshot['why'];
  now: number;
}): Promise<Snapshot> {
  if (!client.open) throw new StoreError('closed', CLOSED_MEANWHILE);
  const name = freeName(folder, why, now);
  const partial = join(folder, name + PARTIAL);
  try {
    await client.backup(partial);
    // Nothing else ran since the last page was copied, so the counts must agree.
    settle(partial, countRows(client));
    chmodSync(partial, 0o600);
    syncFile(partial);
    renameSync(partial, join(folder, name));
    syncFolder(folder);
  } catch (error) {
    for (const file of storeFiles(partial)) rmSync(file, { force: true });
    if (!client.open) throw new StoreError('closed', CLOSED_MEANWHILE, { cause: error });
    throw storeTroubleBehind(error) ?? error;
  }
  for (const old of thinnedOut(listSnapshots(folder), now)) rmSync(join(folder, old));
  return describe(folder, name) as Snapshot;
}

/** All snapshots, newest first; of two of one moment, the one that was named later. */
export function listSnapshots(folder: string): Snapshot[] {
  return readdirSync(folder)
    .flatMap((name) => describe(folder, name) ?? [])
    .toSorted((a, b) => (a.takenAt === b.takenAt ? b.name.length - a.name.length : a.takenAt < b.takenAt ? 1 : -1));
}

/** Remove what a snapshot that was cut short left behind. */
export function clearPartials(folder: string): void {
  for (const name of readdirSync(folder)) if (name.includes(`.sqlite${PARTIAL}`)) rmSync(join(folder, name), { force: true });
}

/** An instant (epoch milliseconds) as part of a file name: UTC, and sorting as it passes. */
export function stamp(now: number): string {
  return Temporal.Instant.fromEpochMilliseconds(now).toString({ fractionalSecondDigits: 3 }).replaceAll(/[:.]/g, '-');
}

/** Open a snapshot for looking at it; nothing is written. @throws StoreError `no such snapshot` */
export function openSnapshot(folder: string, name: string): Database.Database {
  const file = join(folder, name);
  if (name !== basename(name) || !NAME.test(name) || !existsSync(file))
    throw new StoreError('no such snapshot', {
      what: 'There is no snapshot of that name.',
      kept: 'Nothing was changed.',
      todo: 'Take a name from the list of snapshots.',
    });
  return new Database(file, { readonly: true, fileMustExist: true });
}

const CLOSED_MEANWHILE = {
  what: 'The store was closed before the snapshot was whole.',
  kept: 'The store and every older snapshot are kept.',
  todo: 'Start Kitbound again and take it anew.',
};

/** Make the copy one file that needs no log beside it, and see that it is whole. */
function settle(file: string, expected: Counts): void {
  const copy = new Database(file);
  try {
    copy.pragma('journal_mode = delete');
    requireWhole(copy);
    const counts = countRows(copy);
    const differing = Object.keys({ ...expected, ...counts }).find((table) => expected[table] !== counts[table]);
    if (differing) throw storeError('disk error', new Error(`The copy has other rows in ${differing}.`));
  } finally {
    copy.close();
  }
}

function freeName(folder: string, why: Snapshot['why'], now: number): string {
  const stem = `${stamp(now)}.${why.replace(' ', '-')}`;
  for (let count = 1; ; count += 1) {
    const name = count === 1 ? `${stem}.sqlite` : `${stem}.${count}.sqlite`;
    if (!existsSync(join(folder, name))) return name;
  }
}

function describe(folder: string, name: string): Snapshot | undefined {
  const [, date, hour, minute, second, millisecond, why] = NAME.exec(name) ?? [];
  const size = why && statSync(join(folder, name), { throwIfNoEntry: false })?.size;
  if (!size) return undefined;
  return {
    name,
    takenAt: `${date}T${hour}:${minute}:${second}.${millisecond}Z`,
    bytes: size,
    why: why.replace('-', ' ') as Snapshot['why'],
  };
}

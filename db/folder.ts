/**
 * The data folder and what lies where in it.
 */
import { existsSync, mkdirSync, statSync, statfsSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { StoreError, inStoreWords, storeError } from './trouble.ts';

/** Paths inside a data folder. */
export const layout = (folder: string) => ({
  store: join(folder, 'kitbound.sqlite'),
  seal: join(folder, 'kitbound.sealed'),
  papers: join(folder, 'papers'),
  snapshots: join(folder, 'snapshots'),
  setAside: join(folder, 'set-aside'),
  /** A store that is being filled before it is taken over; what a kill leaves of it is cleared at the next opening. */
  making: join(folder, 'in-the-making'),
});

/** What SQLite keeps beside a database; together with the file itself they are one store. */
export const storeFiles = (file: string) => [`${file}-shm`, `${file}-wal`, `${file}-journal`, file];

/**
 * Make sure of the folder. One that is missing is made, but only inside a folder that is there: a whole missing path is more likely a disk
 * that is not plugged in than a wish.
 * @returns its absolute path
 * @throws StoreError `folder missing`, `cannot write`
 */
export function prepareFolder(given: string, onNote: (sentence: string) => void): string {
  const folder = resolve(given);
  if (!existsSync(folder)) {
    if (!existsSync(dirname(folder)))
      throw new StoreError('folder missing', {
        what: 'The data folder is not there, nor is the folder that it should be in.',
        kept: 'Nothing was made or changed.',
        todo: 'Plug in the disk that it is on, or start with another data folder.',
      });
    inStoreWords(() => mkdirSync(folder, { mode: 0o700 }));
    onNote('The data folder was not there; a new one was made.');
  }
  if (!statSync(folder).isDirectory()) throw storeError('cannot write');
  const { papers, snapshots } = layout(folder);
  inStoreWords(() => [papers, snapshots].forEach((each) => mkdirSync(each, { recursive: true, mode: 0o700 })));
  if (isOnNetwork(folder))
    onNote('The data folder is on a network drive. Locks are not to be trusted there; keep it on a disk of this computer.');
  return folder;
}

/** File system types, as statfs(2) gives them, that reach over a network: NFS, SMB, CIFS, SMB2, AFS, 9P, Ceph. */
const NETWORK_TYPES = new Set([0x6969, 0x517b, 0xff534d42, 0xfe534d42, 0x5346414f, 0x01021997, 0x00c36400]);

function isOnNetwork(folder: string): boolean {
  if (folder.startsWith('\\\\')) return true;
  return process.platform === 'linux' && NETWORK_TYPES.has(statfsSync(folder).type);
}

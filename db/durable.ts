/**
 * Making files last: a name or content is on the disk only after it was synced.
 */
import { closeSync, fsyncSync, openSync } from 'node:fs';

/** Wait until a closed file's bytes are on the disk. */
export function syncFile(path: string): void {
  const descriptor = openSync(path, 'r+');
  try {
    fsyncSync(descriptor);
  } finally {
    closeSync(descriptor);
  }
}

/** Wait until the names in a folder are on the disk. Windows syncs them by itself and refuses to be asked. */
export function syncFolder(path: string): void {
  if (process.platform === 'win32') return;
  const descriptor = openSync(path, 'r');
  try {
    fsyncSync(descriptor);
  } finally {
    closeSync(descriptor);
  }
}

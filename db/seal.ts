/**
 * A closed store is sealed with the hash of its bytes. SQLite's own checks see damage to the structure only, not a letter that changed
 * inside a row; the seal sees every byte that changed while the store was closed.
 */
import { createHash } from 'node:crypto';
import { closeSync, openSync, readFileSync, readSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { syncFile, syncFolder } from './durable.ts';
import { layout } from './folder.ts';

/** A larger store is not looked through at each start, so that starting stays quick; the daily snapshot checks every store in full. */
export const LOOK_THROUGH_LIMIT_BYTES = 64 * 1024 * 1024;
const PIECE_BYTES = 1024 * 1024;

/** Whether the file is as it was left: `none` without a seal, as after a crash. Ask before SQLite opens the file. */
export function sealOf(folder: string): 'none' | 'whole' | 'broken' {
  const { store, seal } = layout(folder);
  const sealed = readIfThere(seal);
  if (sealed === undefined) return 'none';
  return sealed === hashOf(store) ? 'whole' : 'broken';
}

/** Seal the store once it is closed. */
export function sealStore(folder: string): void {
  const { store, seal } = layout(folder);
  if (statSync(store).size > LOOK_THROUGH_LIMIT_BYTES) return;
  const partial = `${seal}.partial`;
  writeFileSync(partial, hashOf(store), { mode: 0o600 });
  syncFile(partial);
  renameSync(partial, seal);
  syncFolder(folder);
}

/** Take the seal away for good before the first change. */
export function breakSeal(folder: string): void {
  rmSync(layout(folder).seal, { force: true });
  syncFolder(folder);
}

function readIfThere(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
    throw error;
  }
}

/** SHA-256 in hexadecimal, read in pieces. */
function hashOf(file: string): string {
  const hash = createHash('sha256');
  const piece = Buffer.alloc(PIECE_BYTES);
  const descriptor = openSync(file, 'r');
  try {
    for (let read = readSync(descriptor, piece); read > 0; read = readSync(descriptor, piece)) hash.update(piece.subarray(0, read));
  } finally {
    closeSync(descriptor);
  }
  return hash.digest('hex');
}

/**
 * The papers folder: files named by the SHA-256 of their bytes, written so that a name never stands for half a paper.
 */
import { createHash, randomUUID } from 'node:crypto';
import { closeSync, fsyncSync, openSync, readdirSync, readFileSync, renameSync, rmSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { endingOf } from '../../core/papers/file-type.ts';
import { syncFolder } from '../../db/durable.ts';
import { inStoreWords } from '../../db/trouble.ts';

/** Lower case hex of the bytes' SHA-256, and how many they are. */
export type Kept = { hash: string; bytes: number };

const fileName = (hash: string, type: string) => `${hash}.${endingOf(type)}`;
const hashOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

/**
 * Keep a paper's bytes. The same bytes are kept once; a damaged file of their name is replaced. On the disk when this returns.
 * @param folder the store's papers folder
 * @param type media type, which gives the file its ending
 * @throws StoreError when the disk refuses; nothing stands under the paper's name then
 */
export function keepPaper(folder: string, bytes: Uint8Array, type = 'application/pdf'): Kept {
  const hash = hashOf(bytes);
  return inStoreWords(() => {
    if (readKept(folder, hash, type) === null) writeDurably(folder, fileName(hash, type), bytes);
    return { hash, bytes: bytes.length };
  });
}

/** The bytes of a kept paper; null when its file is not there or its bytes are not those that were kept. */
export function readKept(folder: string, hash: string, type: string): Uint8Array | null {
  try {
    const bytes = readFileSync(join(folder, fileName(hash, type)));
    return hashOf(bytes) === hash ? new Uint8Array(bytes) : null;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return null;
    throw error;
  }
}

/**
 * Hold the books against the folder.
 * @returns papers whose bytes are there and right, papers whose bytes are not, and names of files that belong to none
 */
export function checkPapers<P extends { hash: string; type: string }>(
  folder: string,
  papers: readonly P[],
): { whole: P[]; lost: P[]; orphans: string[] } {
  const whole: P[] = [];
  const lost: P[] = [];
  for (const paper of papers) (readKept(folder, paper.hash, paper.type) === null ? lost : whole).push(paper);
  const known = new Set(papers.map((paper) => fileName(paper.hash, paper.type)));
  const orphans = readdirSync(folder)
    .filter((name) => !known.has(name))
    .sort();
  return { whole, lost, orphans };
}

/** Temporary name, bytes, sync, rename, sync of the folder. */
function writeDurably(folder: string, name: string, bytes: Uint8Array): void {
  const path = join(folder, `.${randomUUID()}.part`);
  try {
    const file = openSync(path, 'wx', 0o600);
    try {
      for (let written = 0; written < bytes.length;) written += writeSync(file, bytes, written);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(path, join(folder, name));
  } catch (error) {
    rmSync(path, { force: true });
    throw error;
  }
  syncFolder(folder);
}

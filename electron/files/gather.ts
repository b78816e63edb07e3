/**
 * Which files lie at the paths that a person gave: each with the name under which it is handed over.
 */
import { lstat, readdir, realpath, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { inFileWords } from './trouble.ts';

/** A file to be read. `name` is relative, with "/" between folders; `bytes` is its size when it was found. */
type Found = { path: string; name: string; bytes: number };
/** A sentence about what lies there, to be read behind its name. */
export type Named = { name: string; sentence: string };
export type Gathered = {
  /** Sorted by name. */
  files: Found[];
  /** What is no part of the delivery and why: links, what the system keeps in folders for itself. */
  leftOut: Named[];
  /** What should be part of it and cannot be read. */
  troubles: Named[];
};

/** More files than these are no delivery; the list has to stay a thing that a person reads. */
const MOST_FILES = 5000;
const DEEPEST = 32;
/** What systems put into folders for themselves, with nobody asking. */
const OF_THE_SYSTEM =
  /^(\._.*|\.DS_Store|\.Spotlight-V100|\.Trashes|\.fseventsd|Thumbs\.db|desktop\.ini|System Volume Information|\$RECYCLE\.BIN)$/i;

/** Thrown where the paths cannot be meant: `at` counts from zero and is null where it is about all of them together. */
export class PathError extends Error {
  readonly at: number | null;
  constructor(at: number | null, sentence: string) {
    super(sentence);
    this.at = at;
  }
}

/**
 * List files and, of folders, whatever lies in them. A single folder's files are named from inside it; with several paths a name begins
 * with the last part of its own. Links inside a folder are not followed: they may lead out of it, and what they lead to is not handed over.
 * @param paths absolute
 * @param signal stops between two folders, with its reason
 * @param most so many files at most
 * @throws PathError where a path leads nowhere, nothing is left to hand over, or there are too many files
 */
export async function gather(paths: readonly string[], signal: AbortSignal, most = MOST_FILES): Promise<Gathered> {
  const gathered: Gathered = { files: [], leftOut: [], troubles: [] };
  const on: Walk = { gathered, signal, most };
  for (const [at, path] of paths.entries()) {
    const whole = await realpath(path).catch(() => {
      throw new PathError(at, 'leads to nothing; check whether the disk is connected and the name is right');
    });
    const facts = await stat(whole).catch((error: unknown) => {
      throw new PathError(at, inFileWords(error).message);
    });
    if (facts.isDirectory()) await walk(whole, paths.length === 1 ? '' : `${basename(whole) || 'disk'}/`, 0, on);
    else if (facts.isFile()) gathered.files.push({ path: whole, name: basename(whole), bytes: facts.size });
    else throw new PathError(at, 'is neither a file nor a folder');
    if (gathered.files.length > most) throw tooMany(most);
  }
  gathered.files.sort((a, b) => (a.name < b.name ? -1 : 1));
  const twice = gathered.files.find(({ name }, index, all) => index > 0 && all[index - 1]?.name === name);
  if (twice) throw new PathError(null, `would give ${twice.name} twice; put the files into one folder and give that`);
  if (gathered.files.length === 0 && gathered.troubles.length === 0) throw new PathError(null, 'gave no file to hand over');
  return gathered;
}

const tooMany = (most: number) => new PathError(null, `gave more than ${most.toLocaleString('en')} files; hand them over in parts`);

/** What a walk through folders carries along. */
type Walk = { gathered: Gathered; signal: AbortSignal; most: number };

async function walk(folder: string, before: string, depth: number, on: Walk): Promise<void> {
  const { gathered, signal, most } = on;
  signal.throwIfAborted();
  if (depth > DEEPEST) return void gathered.troubles.push({ name: before, sentence: `lies more than ${DEEPEST} folders deep` });
  const entries = await readdir(folder).catch((error: unknown) => {
    gathered.troubles.push({ name: before === '' ? 'The folder' : before, sentence: inFileWords(error).message });
    return [];
  });
  for (const entry of entries.toSorted((a, b) => (a < b ? -1 : 1))) {
    const name = before + entry;
    if (OF_THE_SYSTEM.test(entry)) gathered.leftOut.push({ name, sentence: 'is kept there by a system for itself' });
    else await look({ folder, entry, name }, depth, on);
    if (gathered.files.length > most) throw tooMany(most);
  }
}

type Entry = { folder: string; entry: string; name: string };

async function look({ folder, entry, name }: Entry, depth: number, on: Walk): Promise<void> {
  const { gathered } = on;
  const path = join(folder, entry);
  const facts = await lstat(path).catch((error: unknown) => {
    // A name that is no text reads with this sign in it and is not found again.
    const sentence = entry.includes('\uFFFD') ? 'has a name that is not text; give it another' : inFileWords(error).message;
    gathered.troubles.push({ name, sentence });
    return null;
  });
  if (!facts) return;
  if (facts.isDirectory()) await walk(path, `${name}/`, depth + 1, on);
  else if (facts.isFile()) gathered.files.push({ path, name, bytes: facts.size });
  else gathered.leftOut.push({ name, sentence: facts.isSymbolicLink() ? 'is a link to another place' : 'is no file' });
}

/**
 * Checksums of many files, one after the other: a disk that has to jump between files is slower.
 */
import { gather, type Gathered, type Named } from './gather.ts';
import { hashFile, type Hashed } from './hash-file.ts';
import { inFileWords } from './trouble.ts';

/** How far the reading is: bytes and files. `of` is known once the folders were walked. */
export type Progress = { bytes: number; of: number; files: number; ofFiles: number; name: string };
type HashedFile = Hashed & { name: string };
/** `files` holds only what was read whole. Where there are `troubles` it is not the list of what was asked for. */
export type HashedList = { files: HashedFile[]; leftOut: Named[]; troubles: Named[] };

/**
 * Read every file at the paths. Nothing is written anywhere.
 * @param paths absolute files and folders
 * @param onProgress told after every piece of 1 MiB
 * @throws PathError as `gather` does; the signal's reason when it was stopped
 */
export async function hashList(paths: readonly string[], signal: AbortSignal, onProgress: (now: Progress) => void): Promise<HashedList> {
  const found = await gather(paths, signal);
  const progress: Progress = { bytes: 0, of: total(found), files: 0, ofFiles: found.files.length, name: '' };
  const list: HashedList = { files: [], leftOut: found.leftOut, troubles: [...found.troubles] };
  for (const { path, name, bytes } of found.files) {
    progress.name = name;
    const begun = progress.bytes;
    onProgress({ ...progress });
    const onRead = (read: number) => {
      progress.bytes += read;
      onProgress({ ...progress });
    };
    try {
      list.files.push({ name, ...(await hashFile(path, { signal, onRead })) });
    } catch (error) {
      signal.throwIfAborted();
      list.troubles.push({ name, sentence: inFileWords(error).message });
    }
    // What could not be read counts as done, so that the sum is reached in the end.
    progress.bytes = begun + bytes;
    progress.files += 1;
  }
  onProgress({ ...progress });
  return list;
}

const total = ({ files }: Gathered): number => files.reduce((sum, { bytes }) => sum + bytes, 0);

/**
 * Why a file has no checksum.
 */

/** A sentence about one file, to be read behind its name: "is not there any more". */
export class FileError extends Error {}

const SENTENCES: Record<string, string> = {
  ENOENT: 'is not there any more',
  EACCES: 'may not be read by you: its permissions say no',
  EPERM: 'may not be read by you: its permissions say no',
  EIO: 'cannot be read: the disk reports an error',
  ENODEV: 'cannot be read: its disk was taken out',
  ENXIO: 'cannot be read: its disk was taken out',
  ESTALE: 'cannot be read: the network disk went away',
  EISDIR: 'is a folder now',
  ELOOP: 'is a link that leads in a circle',
  ENAMETOOLONG: 'has a name that is too long for this disk',
  EMFILE: 'cannot be opened: too many files are open on this computer',
};

/** What an error of the system says about a file, in words; no path and no code of the system goes in here. */
export function inFileWords(error: unknown): FileError {
  if (error instanceof FileError) return error;
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return new FileError(SENTENCES[code] ?? 'cannot be read');
}

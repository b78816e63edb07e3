/**
 * What can go wrong with the store, in the words that a person reads. Nothing in here names a path, SQL or a stack.
 */
import type { Snapshot } from '../core/contract/store.ts';

export type StoreTroubleKind =
  | 'busy'
  | 'cannot write'
  | 'closed'
  | 'damaged'
  | 'disk error'
  | 'disk full'
  | 'file missing'
  | 'folder missing'
  | 'migration failed'
  | 'migrations differ'
  | 'misuse'
  | 'newer version'
  | 'no such snapshot'
  | 'not empty'
  | 'not ours'
  | 'old library';

type StoreSentences = { what: string; kept: string; todo: string };

/** The store could not do what it was asked; says what happened, what was kept and what to do. */
export class StoreError extends Error {
  readonly kind: StoreTroubleKind;
  readonly what: string;
  readonly kept: string;
  readonly todo: string;
  /** The newest good snapshot, where going on with it would help. */
  readonly snapshot: Snapshot | null;

  constructor(kind: StoreTroubleKind, sentences: StoreSentences, more: { snapshot?: Snapshot | null; cause?: unknown } = {}) {
    super(sentences.what, { cause: more.cause });
    this.name = 'StoreError';
    this.kind = kind;
    this.what = sentences.what;
    this.kept = sentences.kept;
    this.todo = sentences.todo;
    this.snapshot = more.snapshot ?? null;
  }
}

/** Another process holds the data folder. */
export class StoreBusy extends StoreError {
  constructor(cause?: unknown) {
    super(
      'busy',
      {
        what: 'Kitbound already has this data folder open.',
        kept: 'Nothing was changed.',
        todo: 'Use the one that is open, or close it first.',
      },
      { cause },
    );
    this.name = 'StoreBusy';
  }
}

const READ_AGAIN = 'Everything saved before is kept. The last deed may or may not be saved.';

const sentencesByKind = {
  busy: {
    what: 'The store is held by something else.',
    kept: 'Nothing was changed.',
    todo: 'Close what else reads the data folder and try again.',
  },
  'cannot write': {
    what: 'The data folder cannot be written to.',
    kept: 'Everything saved before is kept; this was not saved.',
    todo: 'Make the folder writable, or start with another data folder.',
  },
  damaged: {
    what: 'The store file is damaged.',
    kept: 'The file is kept as it is and nothing more is written to it.',
    todo: 'Close Kitbound and go on with the newest good snapshot.',
  },
  'disk error': {
    what: 'The disk reported an error.',
    kept: READ_AGAIN,
    todo: 'Look at what is stored now, then try again. Copy the data folder to another disk soon.',
  },
  'disk full': {
    what: 'The disk is full.',
    kept: 'Everything saved before is kept; this was not saved.',
    todo: 'Free some space and try again.',
  },
} as const satisfies Partial<Record<StoreTroubleKind, StoreSentences>>;

/** An error of a kind that needs no particulars. */
export function storeError(kind: keyof typeof sentencesByKind, cause?: unknown): StoreError {
  return new StoreError(kind, sentencesByKind[kind], { cause });
}

/** SQLite's result codes by their beginnings, and the codes of the system's own file calls. */
const kindsByCode: [RegExp, keyof typeof sentencesByKind][] = [
  // SHMSIZE: the index of the write-ahead log could not grow, which may mean a volume without room (SQLite, Result and Error Codes, 4874).
  [/^SQLITE_FULL|^SQLITE_IOERR_SHMSIZE|^ENOSPC|^EDQUOT/, 'disk full'],
  [/^SQLITE_(CORRUPT|NOTADB)/, 'damaged'],
  [/^SQLITE_(READONLY|CANTOPEN|PERM|AUTH)|^E(ACCES|PERM|ROFS|NOTDIR|ISDIR|EXIST|NOENT)$/, 'cannot write'],
  [/^SQLITE_(BUSY|LOCKED|PROTOCOL)/, 'busy'],
  [/^SQLITE_(IOERR|NOMEM|NOLFS)|^EIO|^EMFILE|^ENFILE/, 'disk error'],
];

/** The trouble with the disk, file or lock that lies behind an error, through any wrapping; undefined when the error is of another kind. */
export function storeTroubleBehind(error: unknown): StoreError | undefined {
  for (let at: unknown = error; at instanceof Error; at = at.cause) {
    if (at instanceof StoreError) return at;
    const code = 'code' in at && typeof at.code === 'string' ? at.code : '';
    const kind = kindsByCode.find(([pattern]) => pattern.test(code))?.[1];
    if (kind) return storeError(kind, error);
  }
  return undefined;
}

/** Run something that touches the store's files and turn what the disk says into a StoreError. */
export function inStoreWords<T>(act: () => T): T {
  try {
    return act();
  } catch (error) {
    throw storeTroubleBehind(error) ?? error;
  }
}

/** The same while a file is looked at for the first time: whatever else SQLite says of it then, it cannot be read as a store. */
export function inStoreWordsAtOpening<T>(act: () => T): T {
  try {
    return inStoreWords(act);
  } catch (error) {
    const ofSqlite = error instanceof Error && 'code' in error && typeof error.code === 'string' && error.code.startsWith('SQLITE_');
    throw ofSqlite ? storeError('damaged', error) : error;
  }
}

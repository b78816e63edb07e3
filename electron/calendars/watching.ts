/**
 * Files that are watched for change by what the system tells. A file is watched by its folder: who saves by renaming leaves the old file to
 * whoever watches that.
 */
import { type FSWatcher, statSync, watch } from 'node:fs';
import { basename, dirname } from 'node:path';

type Watched = { watcher: FSWatcher; names: Set<string> };
/** Every name in the folder counts. */
const ALL = '';

export class Watching {
  readonly #changed: () => void;
  readonly #folders = new Map<string, Watched>();

  constructor(changed: () => void) {
    this.#changed = changed;
  }

  /** Watch these paths and no others. What cannot be watched is passed over: whoever asks looks by himself now and then. */
  follow(paths: readonly string[]): void {
    const wanted = new Map<string, Set<string>>();
    for (const path of paths) {
      const isFolder = statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
      const folder = isFolder ? path : dirname(path);
      wanted.set(folder, (wanted.get(folder) ?? new Set()).add(isFolder ? ALL : basename(path)));
    }
    for (const folder of this.#folders.keys()) if (!wanted.has(folder)) this.#forget(folder);
    for (const [folder, names] of wanted) {
      const known = this.#folders.get(folder);
      if (known) known.names = names;
      else this.#watch(folder, names);
    }
  }

  close(): void {
    for (const folder of this.#folders.keys()) this.#forget(folder);
  }

  #watch(folder: string, names: Set<string>): void {
    try {
      const watcher = watch(folder, { persistent: false }, (_, name) => {
        const watched = this.#folders.get(folder)?.names;
        if (name === null || watched?.has(ALL) || watched?.has(name)) this.#changed();
      });
      watcher.on('error', () => this.#forget(folder));
      this.#folders.set(folder, { watcher, names });
    } catch {
      // It is not there, or the system watches no more.
    }
  }

  #forget(folder: string): void {
    this.#folders.get(folder)?.watcher.close();
    this.#folders.delete(folder);
  }
}

/**
 * The feed as it is wanted: opened, moved and closed while the program runs.
 */
import { outRow, setOutState } from '../../db/calendar-out.ts';
import type { Store } from '../../db/store.ts';
import { type Feed, openFeed } from './feed.ts';
import { portTaken } from './sentences.ts';

type Wanted = { key: string; port: number; path: string };

export class KeptFeed {
  readonly #store: Store;
  #open: { as: Wanted; feed: Promise<Feed | null> } | null = null;

  constructor(store: Store) {
    this.#store = store;
  }

  /** Serve what is wanted, and nothing else any more. */
  follow(wanted: Wanted | null): void {
    const before = this.#open;
    if (JSON.stringify(before?.as ?? null) === JSON.stringify(wanted)) return;
    this.#open = wanted && { as: wanted, feed: this.#opened(wanted, before?.feed) };
    if (!wanted) void closed(before?.feed);
  }

  close(): Promise<void> {
    return closed(this.#open?.feed);
  }

  async #opened(wanted: Wanted, before: Promise<Feed | null> | undefined): Promise<Feed | null> {
    await closed(before);
    const trouble = this.#store.read(outRow)?.feedTrouble ?? null;
    try {
      const feed = await openFeed(wanted);
      if (trouble) this.#store.write((db) => setOutState(db, { feedTrouble: null }));
      return feed;
    } catch {
      const taken = portTaken(wanted.port);
      if (trouble?.what !== taken.what) this.#store.write((db) => setOutState(db, { feedTrouble: taken }));
      // So that the next minute tries again.
      if (this.#open?.as === wanted) this.#open = null;
      return null;
    }
  }
}

async function closed(feed: Promise<Feed | null> | undefined): Promise<void> {
  await (await feed)?.close();
}

/**
 * What every door begins with: the store opened, the context made, the log at hand.
 */
import { readFileSync } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';
import type { Store } from '../../db/store.ts';
import { openStore } from '../../db/open.ts';
import { StoreBusy } from '../../db/trouble.ts';
import type { Context } from '../api/context.ts';
import { gazetteerFrom } from '../api/gazetteer.ts';
import { fileLog, type Log } from '../api/log.ts';
import { readsAside, type ReadsAside } from '../reading/aside.ts';
import { keepToClockRules } from './clock-rules.ts';

export type Begun = { store: Store; context: Context; log: Log; reader: ReadsAside };

/** How long a start waits for a command line that holds the store for a moment, milliseconds. */
const PATIENCE_MS = 5000;
const now = (): number => Date.now();

/**
 * Open the store and make the context of all procedures.
 * @param folder absolute path of the data folder
 * @throws StoreError of any kind
 */
export async function begin(folder: string, onNote: (sentence: string) => void): Promise<Begun> {
  // Whatever is written from here on is this user's alone.
  process.umask(0o077);
  const store = await openStore({ folder, now, onNote });
  for (const sentence of keepToClockRules(store, now())) onNote(sentence);
  const reader = readsAside();
  return { store, context: makeContext(store, reader), log: fileLog(store.folder, now), reader };
}

/**
 * As `begin`, but a store that somebody holds is tried again for a while.
 * @param meanwhile asked between two tries; what it answers is taken instead of the store
 */
export async function beginPatiently<T>(
  folder: string,
  onNote: (sentence: string) => void,
  meanwhile: () => Promise<T | null>,
): Promise<Begun | T> {
  for (let waited = 0; ; waited += 100) {
    const instead = await meanwhile();
    if (instead !== null) return instead;
    try {
      return await begin(folder, onNote);
    } catch (error) {
      if (!(error instanceof StoreBusy) || waited >= PATIENCE_MS) throw error;
    }
    await wait(100);
  }
}

function makeContext(store: Store, { read }: ReadsAside): Context {
  return {
    store,
    now,
    systemZone: Temporal.Now.timeZoneId(),
    gazetteer: gazetteerFrom(),
    readMessage: read,
    programVersion: programVersion(),
  };
}

function programVersion(): string {
  const text = readFileSync(new URL('../../package.json', import.meta.url), 'utf8');
  return (JSON.parse(text) as { version: string }).version;
}

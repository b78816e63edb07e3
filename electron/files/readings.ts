/**
 * Files that are being read for their checksums, by store: one at a time, since two would slow each other on one disk. Readings live in
 * the memory of the program only: one that ends with it has written nothing.
 */
import type { Reading } from '../../core/contract/handovers.ts';
import { readingInWords } from '../../core/handovers/reading.ts';
import { newId } from '../../db/ids.ts';
import type { Store } from '../../db/store.ts';
import { PathError } from './gather.ts';
import { hashList, type HashedList, type Progress } from './hash-list.ts';

type Running = {
  id: string;
  deliverableId: string;
  compares: string | null;
  state: Reading['state'];
  progress: Progress;
  list: HashedList;
  /** Why nothing was read. */
  refusal: PathError | null;
  /** Epoch milliseconds; null while it runs. */
  beganAt: number;
  endedAt: number | null;
  stop: AbortController;
  ended: Promise<void>;
};
/** What a reading is begun with: absolute paths, the hand-over that it is held against, and the clock in epoch milliseconds. */
export type Begin = { deliverableId: string; compares: string | null; paths: readonly string[]; now: () => number };

/** So many that have ended are remembered. */
const REMEMBERED = 8;
const stores = new WeakMap<Store, Running[]>();

function of(store: Store): Running[] {
  const known = stores.get(store) ?? [];
  stores.set(store, known);
  return known;
}

/** The reading that is under way in a store; undefined where none is. */
export function underWay(store: Store): Running | undefined {
  return of(store).find(({ state }) => state === 'reading');
}

/** Begin to read. Whoever calls has seen that none is under way. */
export function beginReading(store: Store, { deliverableId, compares, paths, now }: Begin): Running {
  const stop = new AbortController();
  const reading: Running = {
    id: newId(),
    deliverableId,
    compares,
    state: 'reading',
    progress: { bytes: 0, of: 0, files: 0, ofFiles: 0, name: '' },
    list: { files: [], leftOut: [], troubles: [] },
    refusal: null,
    beganAt: now(),
    endedAt: null,
    stop,
    ended: Promise.resolve(),
  };
  reading.ended = hashList(paths, stop.signal, (progress) => {
    // What a slow disk still gives after a stop is not told.
    if (reading.state === 'reading') reading.progress = progress;
  })
    .then(
      (list) => end(reading, list.troubles.length > 0 ? 'incomplete' : 'done', now, list),
      (error: unknown) => {
        reading.refusal = error instanceof PathError ? error : new PathError(null, 'could not be read');
        end(reading, 'refused', now);
      },
    )
    .then(() => undefined);
  const known = of(store);
  known.unshift(reading);
  known.splice(REMEMBERED);
  return reading;
}

function end(reading: Running, state: Reading['state'], now: () => number, list?: HashedList): void {
  if (reading.state !== 'reading') return;
  reading.state = state;
  reading.endedAt = now();
  if (list) reading.list = list;
}

/** Stop a reading; one that has ended stays as it is. A disk that does not answer is not waited for. */
export function stopReading(reading: Running, now: () => number): void {
  reading.stop.abort(new Error('stopped'));
  end(reading, 'stopped', now);
}

/** A reading of this store by its id. */
export function readingById(store: Store, id: string): Running | undefined {
  return of(store).find((each) => each.id === id);
}

/** The newest reading for a deliverable. */
export function readingFor(store: Store, deliverableId: string): Running | undefined {
  return of(store).find((each) => each.deliverableId === deliverableId);
}

/** A reading whose list is on the books is not offered again. */
export function forgetReading(store: Store, id: string): void {
  const known = of(store);
  const at = known.findIndex((each) => each.id === id);
  if (at >= 0) known.splice(at, 1);
}

/** As the contract shows it. @param now epoch milliseconds */
export function readingAsShown(reading: Running, now: number): Reading {
  const { id, deliverableId, compares, state, progress, list, refusal, beganAt, endedAt } = reading;
  const facts = {
    ...progress,
    seconds: Math.max(0, ((endedAt ?? now) - beganAt) / 1000),
    list: list.files,
    leftOut: list.leftOut,
    troubles: list.troubles,
  };
  const sentence = state === 'refused' ? `${refusedPath(refusal)}.` : readingInWords({ ...facts, state });
  return { run: id, deliverableId, compares, state, ...facts, sentence };
}

function refusedPath(refusal: PathError | null): string {
  if (!refusal || refusal.at === null) return `What was given ${refusal?.message ?? 'could not be read'}`;
  return `Path ${refusal.at + 1} ${refusal.message}`;
}

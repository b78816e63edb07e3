/**
 * Loading the sample year: told into a store beside, then put into the empty one in a single transaction, so that a load that fails or is
 * killed leaves it empty.
 */
import { readdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { syncFolder } from '../../db/durable.ts';
import { layout } from '../../db/folder.ts';
import { writeHistory } from '../../db/keeping.ts';
import { openStore } from '../../db/open.ts';
import type { Store } from '../../db/store.ts';
import { inStoreWords, StoreError } from '../../db/trouble.ts';
import { holdsNothing } from '../../db/whole-store.ts';
import type { Context } from '../api/context.ts';
import { refused } from '../api/trouble.ts';
import { replay, type Progress } from './replay.ts';

/** Loads that are under way. */
const loading = new WeakMap<Store, Progress>();

/** How far the load into a store is; undefined while none is under way. */
export const progressOf = (store: Store): Progress | undefined => loading.get(store);

/** What the row of history is written under that says that a store holds the sample. */
export const MARK = { subject: 'sample', subjectId: 'sample' } as const;

/**
 * Load the sample year, told for this moment.
 * @throws REFUSED when the store holds something, or while it is being loaded; StoreError of the disk. The store is as it was then.
 */
export async function loadSample(context: Context, onStep: (progress: Progress) => void = () => {}): Promise<void> {
  const { store } = context;
  const now = context.now();
  if (loading.has(store)) throw refused('The sample year is being loaded already.', 'Wait until it is there.');
  if (!store.read(holdsNothing)) throw notEmpty();
  const folder = layout(store.folder).making;
  const step = (progress: Progress): void => {
    loading.set(store, progress);
    onStep(progress);
  };
  step({ done: 0, total: 1 });
  try {
    rmSync(folder, { recursive: true, force: true });
    await tell(context, folder, now, step);
    takeOver(store, folder);
  } catch (error) {
    throw error instanceof StoreError && error.kind === 'not empty' ? notEmpty() : error;
  } finally {
    rmSync(folder, { recursive: true, force: true });
    loading.delete(store);
  }
}

async function tell(context: Context, folder: string, now: number, onStep: (progress: Progress) => void): Promise<void> {
  const beside = await openStore({ folder, now: () => now });
  try {
    await replay({ ...context, store: beside }, now, onStep);
    beside.write((db) => writeHistory(db, { ...MARK, at: now, deed: 'sample.load', sentence: 'The sample year was loaded.' }));
  } finally {
    beside.close();
  }
}

/** Papers first: the books may speak of none that is not there. */
function takeOver(store: Store, folder: string): void {
  const { papers } = layout(folder);
  const names = inStoreWords(() => readdirSync(papers));
  try {
    inStoreWords(() => {
      for (const name of names) renameSync(join(papers, name), join(store.papers, name));
      syncFolder(store.papers);
    });
    store.takeOver(folder);
  } catch (error) {
    for (const name of names) rmSync(join(store.papers, name), { force: true });
    throw error;
  }
}

const notEmpty = () =>
  refused(
    'The sample year goes into an empty store only, and this one holds something already.',
    'Give it a data folder of its own: npm start -- --sample --data DIR.',
  );

/**
 * The sample year: loaded into an empty store, and left again.
 */
import { instantText } from '../../core/time/read.ts';
import { historyOf } from '../../db/keeping.ts';
import type { ReadableDb } from '../../db/store.ts';
import { holdsNothing } from '../../db/whole-store.ts';
import { loadSample, MARK, progressOf } from '../sample/load.ts';
import { os } from './os.ts';
import { refused } from './trouble.ts';

const markOf = (db: ReadableDb) => historyOf(db, MARK.subject, MARK.subjectId)[0];

const state = os.sample.state.handler(({ context: { store } }) => {
  const { empty, mark } = store.read((db) => ({ empty: holdsNothing(db), mark: markOf(db) }));
  return { empty, loadedAt: mark ? instantText(mark.at) : null, loading: progressOf(store) ?? null };
});

const load = os.sample.load.handler(async ({ context }) => {
  await loadSample(context);
  return {};
});

const leave = os.sample.leave.handler(async ({ context: { store, now } }) => {
  if (!store.read(markOf)) throw refused('This store does not hold the sample year.', 'Only the sample is left this way.');
  return { snapshot: await store.emptyOut(now()) };
});

export const sample = { state, load, leave };

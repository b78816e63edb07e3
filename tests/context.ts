/**
 * What procedures are given in a test or a bench: a store and a clock of its own, the lists that ship with the program, messages read in this thread.
 */
import type { Context } from '../electron/api/context.ts';
import { gazetteerFrom } from '../electron/api/gazetteer.ts';
import { readsHere } from '../electron/reading/here.ts';
import type { Store } from '../db/store.ts';

export const gazetteer = gazetteerFrom();
const read = readsHere(gazetteer);

/** @param now epoch milliseconds, or the clock that tells them */
export const contextOn = (store: Store, now: number | (() => number), systemZone = 'America/Chicago'): Context => ({
  store,
  now: typeof now === 'number' ? () => now : now,
  systemZone,
  gazetteer,
  readMessage: async (message) => read(message),
  programVersion: '0.0.0',
});

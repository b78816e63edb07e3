/**
 * Whatever changes the store goes through here, one after another, so that a quick second change meets the state that the first left.
 * The foot rule reads from here whether something is being saved, and the slip what went wrong or right.
 */
import { useSyncExternalStore } from 'react';
import type { Trouble } from '../core/contract/base.ts';
import { queries } from './ask.ts';
import { troubleOf } from './trouble.ts';

/** What takes back the deed that the slip speaks of. */
type Back = { label: string; perform: () => Promise<unknown> };
export type Deeds = { running: number; trouble: Trouble | null; said: string; back: Back | null };

let state: Deeds = { running: 0, trouble: null, said: '', back: null };
let tail: Promise<unknown> = Promise.resolve();
const listeners = new Set<() => void>();

function change(part: Partial<Deeds>): void {
  state = { ...state, ...part };
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export const useDeeds = (): Deeds => useSyncExternalStore(subscribe, () => state);

/** Say one line on the slip, such as "Copied.", with a button where it can be taken back. */
export const say = (said: string, back: Back | null = null): void => change({ said, back, trouble: null });
const showTrouble = (error: unknown): void => change({ trouble: troubleOf(error), said: '', back: null });
export const clearSlip = (): void => change({ trouble: null, said: '', back: null });

/**
 * Do work that writes, then read everything on screen again.
 * @param onTrouble takes the trouble instead of the slip, for forms that show it beside their inputs
 * @returns what the work gave, or undefined when it failed
 */
export function deed<T>(work: () => Promise<T>, onTrouble?: (trouble: Trouble) => void): Promise<T | undefined> {
  change({ running: state.running + 1, trouble: null, said: '', back: null });
  const run = tail.then(async () => {
    try {
      const result = await work();
      await queries.invalidateQueries();
      return result;
    } catch (error) {
      if (onTrouble) onTrouble(troubleOf(error));
      else showTrouble(error);
      return undefined;
    } finally {
      change({ running: state.running - 1 });
    }
  });
  tail = run;
  return run;
}

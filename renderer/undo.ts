import { deed, say } from './deeds.ts';

/**
 * Say on the slip what was done, with a button that takes it back.
 * @param undone what is said once it is taken back
 */
export function sayWithUndo(said: string, label: string, undo: () => Promise<unknown>, undone: string): void {
  say(said, { label, perform: () => deed(() => undo().then(() => say(undone))) });
}

/** Small choices that belong to this screen and not to the store: kept by the browser. */
import { useSyncExternalStore } from 'react';

export type Choice<T extends string> = { get: () => T; set: (value: T) => void; subscribe: (listener: () => void) => () => void };

function choice<T extends string>(name: string, values: readonly [T, ...T[]], apply: (value: T) => void = () => {}): Choice<T> {
  const listeners = new Set<() => void>();
  const kept = localStorage.getItem(name);
  let value: T = values.find((each) => each === kept) ?? values[0];
  apply(value);
  return {
    get: () => value,
    set: (next) => {
      value = next;
      localStorage.setItem(name, next);
      apply(next);
      for (const listener of listeners) listener();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** Light, dark, or as the computer is set. */
export const look = choice('kitbound.look', ['system', 'light', 'dark'], (value) => {
  document.documentElement.dataset.look = value;
});

/** Whether a single key without Ctrl or Alt does something; off for those who speak to their computer. */
export const singleKeys = choice('kitbound.single-keys', ['on', 'off']);

export const useChoice = <T extends string>(one: Choice<T>): T => useSyncExternalStore(one.subscribe, one.get);

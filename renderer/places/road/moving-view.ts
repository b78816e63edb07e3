/** What is shown of the road while it is moved: read by the drawing with every frame, by the rest once it has come to rest. */
import { useEffect, useState, useSyncExternalStore } from 'react';
import { panned, zoomed, type View } from '../../../core/road/view.ts';

export class MovingView {
  #view: View;
  readonly #listeners = new Set<() => void>();

  constructor(view: View) {
    this.#view = view;
  }

  readonly now = (): View => this.#view;
  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  show(view: View): void {
    this.#view = view;
    for (const listener of this.#listeners) listener();
  }

  /** @param by milliseconds; earlier below zero */
  pan(by: number): void {
    this.show(panned(this.#view, by));
  }

  /** @param times above 1 shows more @param about the instant that stays where it is; the middle if not given */
  zoom(times: number, about = (this.#view.start + this.#view.end) / 2): void {
    this.show(zoomed(this.#view, times, about));
  }
}

/** Something that follows from the view, a text or a number; what uses it is drawn anew only when that changes. */
export function useOfView<T extends string | number | boolean | null>(view: MovingView, of: (view: View) => T): T {
  return useSyncExternalStore(view.subscribe, () => of(view.now()));
}

/** The view, with every frame of a movement. */
export const useView = (view: MovingView): View => useSyncExternalStore(view.subscribe, view.now);

const AT_REST_MS = 160;

/** The view once it has come to rest. */
export function useViewAtRest(view: MovingView): View {
  const [rest, setRest] = useState(view.now);
  useEffect(() => {
    let wait: ReturnType<typeof setTimeout> | undefined;
    const onMove = (): void => {
      clearTimeout(wait);
      wait = setTimeout(() => setRest(view.now()), AT_REST_MS);
    };
    onMove();
    const off = view.subscribe(onMove);
    return () => {
      clearTimeout(wait);
      off();
    };
  }, [view]);
  return rest;
}

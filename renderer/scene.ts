/**
 * What is on the screen now, as far as actions need to know it: a place puts its parts in while it is shown.
 */
import { useEffect, useSyncExternalStore } from 'react';
import { navigate } from 'wouter/use-hash-location';
import type { InvoiceDraft } from '../core/contract/invoices.ts';
import type { FitAnswer, Lift } from '../core/contract/fit.ts';
import type { Job } from '../core/contract/jobs.ts';
import type { SampleState } from '../core/contract/sample.ts';
import type { QuoteDraft, QuoteVersion } from '../core/contract/quotes.ts';

type RoadPart = {
  /** By halves of what is shown; earlier below zero. */
  move: (halves: number) => void;
  /** Doubles what is shown for each step, or halves it below zero. */
  zoom: (steps: number) => void;
  toToday: () => void;
  atToday: boolean;
  /** A candidate that is tried on other days; nothing of it is saved before it is kept. */
  laid: { shift: number; move: (days: number) => void; keep: () => Promise<unknown>; putBack: () => void } | undefined;
};

export type SceneParts = {
  /** Whether the store holds the sample year, where it is offered or left. */
  sample: SampleState | undefined;
  /** The road as it is shown, for moving it, and what is laid on it. */
  road: RoadPart | undefined;
  /** Words in the paste box. */
  message: string;
  /** Whether these words were found to ask for no work, and how that is said of them. */
  asksNothing: { is: boolean; say: () => void } | undefined;
  job: Job | undefined;
  draft: QuoteDraft | undefined;
  answer: FitAnswer | undefined;
  /** Tries a change on in the answer; nothing of it is saved before it is kept. */
  tryIt: ((lift: Lift) => void) | undefined;
  /** Whether making the quote pencils the dates. */
  pencil: boolean;
  /** Newest made version of the job's quote. */
  version: QuoteVersion | undefined;
  /** The bill as it is drafted, whether its client asks for an order number that is not known, and why it goes without. */
  bill: { draft: InvoiceDraft; orderMissing: boolean; override: string } | undefined;
  /** The job that is worked on, near its dates, and my call that runs. */
  site: { jobId: string; running: { id: string; version: number } | null } | undefined;
  /** Who said yes, when (now if not given), how, and to what, as typed in the ink form; `open` while something of it cannot be read or is not said. */
  yes: { who: string; at: string | undefined; how: string; quoteVersion: number; offer: number | null; open: boolean };
};
export type Scene = SceneParts & { go: (path: string) => void };

const empty: SceneParts = {
  sample: undefined,
  road: undefined,
  message: '',
  asksNothing: undefined,
  job: undefined,
  draft: undefined,
  answer: undefined,
  tryIt: undefined,
  pencil: true,
  version: undefined,
  bill: undefined,
  site: undefined,
  yes: { who: '', at: undefined, how: '', quoteVersion: 1, offer: null, open: true },
};

let scene: Scene = { ...empty, go: (path) => navigate(path) };
const listeners = new Set<() => void>();

function put(parts: Partial<SceneParts>): void {
  scene = { ...scene, ...parts };
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export const sceneNow = (): Scene => scene;
export const useScene = (): Scene => useSyncExternalStore(subscribe, sceneNow);

/** Put a part on the scene while the calling component is shown. */
export function useScenePart<K extends keyof SceneParts>(name: K, value: SceneParts[K]): void {
  useEffect(() => {
    put({ [name]: value });
  }, [name, value]);
  useEffect(() => () => put({ [name]: empty[name] }), [name]);
}

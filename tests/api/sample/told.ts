/**
 * The sample year told for a day of the test's choosing, in a store of its own.
 */
import type { Context } from '../../../electron/api/context.ts';
import { callProcedure } from '../../../electron/api/serve.ts';
import { loadSample } from '../../../electron/sample/load.ts';
import { openStore } from '../../../db/open.ts';
import type { Store } from '../../../db/store.ts';
import { contextOn } from '../../context.ts';

export type Told = { store: Store; context: Context; call: <T>(name: string, input?: unknown) => Promise<T> };

/** @param instant the moment at which it is loaded */
export async function told(instant: string, folder: string): Promise<Told> {
  const now = Temporal.Instant.from(instant).epochMilliseconds;
  const store = await openStore({ folder, now: () => now });
  const context = contextOn(store, now);
  await loadSample(context);
  return { store, context, call: async <T>(name: string, input: unknown = {}) => (await callProcedure(context, name, input)) as T };
}

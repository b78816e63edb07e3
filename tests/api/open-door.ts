/**
 * A loopback door inside the test's own process, on a store of its own.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Context } from '../../electron/api/context.ts';
import type { Log, LogEntry } from '../../electron/api/log.ts';
import { type Loopback, openLoopback } from '../../electron/doors/loopback.ts';
import { pageFiles } from '../../electron/doors/page-files.ts';
import type { Store } from '../../db/store.ts';
import { openStore } from '../../db/open.ts';
import { contextOn } from '../context.ts';
import { NOW } from '../store.ts';

export type OpenDoor = { door: Loopback; store: Store; context: Context; logged: LogEntry[]; close(): Promise<void> };
const PAGE_FOLDER = fileURLToPath(new URL('page', import.meta.url));

export const contextOf = (store: Store): Context => contextOn(store, NOW);

/** Open a store and a door on it. The caller closes it. */
export async function openDoor(
  limits: { headersMs?: number; requestMs?: number; context?: (store: Store) => Context } = {},
): Promise<OpenDoor> {
  const folder = mkdtempSync(join(tmpdir(), 'kitbound-'));
  const store = await openStore({ folder, now: () => NOW });
  const logged: LogEntry[] = [];
  const log: Log = (entry) => void logged.push(entry);
  const context = (limits.context ?? contextOf)(store);
  const door = await openLoopback({ ...limits, context, log, pages: pageFiles(PAGE_FOLDER), port: 0 });
  return {
    door,
    store,
    context,
    logged,
    async close() {
      await door.close();
      store.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

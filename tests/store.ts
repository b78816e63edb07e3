/**
 * Stores for tests, each in a temporary folder of its own.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { openStore } from '../db/open.ts';
import type { Store } from '../db/store.ts';

/** 2026-12-01T15:00:00Z, the "now" of tests that need none of their own. */
export const NOW = Temporal.Instant.from('2026-12-01T15:00:00Z').epochMilliseconds;

/** A folder that goes when the test is over. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'kitbound-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** An empty store that is closed and removed when the test is over. */
export async function temporaryStore(now: () => number = () => NOW, folder = temporaryFolder()): Promise<Store> {
  const store = await openStore({ folder, now });
  onTestFinished(() => store.close());
  return store;
}

/**
 * The program as a person starts it: built, and built anew when its sources changed.
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { root } from './checks.ts';

const made = new Set<string>();

/** Make sure of a build; once for each process. */
export function ensureBuilt(what: 'page' | 'program'): void {
  if (made.has(what)) return;
  const done = spawnSync(process.execPath, [join(root, 'electron/starting/bring-up.mjs'), what], {
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  if (done.status !== 0) throw new Error(`the ${what} could not be built`);
  made.add(what);
}

/** A built file of the program, such as `host.mjs`. */
export function builtProgram(name: string): string {
  ensureBuilt('program');
  return join(root, 'build', 'program', name);
}

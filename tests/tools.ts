/**
 * The programs of the system that the tests need: a browser, a PDF renderer, and on Linux a tracer of system calls.
 * As root on Debian what is missing is installed; elsewhere it is named, and a missing one is a failure, never a skip.
 */
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { findChromium } from './chromium.ts';

type Tool = { debian: string; use: string; isThere: () => boolean };

const tools: readonly Tool[] = [
  { debian: 'chromium', use: 'Chromium, for the screens', isThere: () => findChromium() !== null },
  { debian: 'poppler-utils', use: 'pdftoppm, for looking at the papers', isThere: () => isOnPath('pdftoppm') },
  { debian: 'strace', use: 'strace, for disk errors', isThere: () => process.platform !== 'linux' || isOnPath('strace') },
];

/** Install or name what is missing; ends the run when something stays missing. */
export function ensureTools(): void {
  const missing = tools.filter((tool) => !tool.isThere());
  if (missing.length > 0 && canInstall()) install(missing.map((tool) => tool.debian));
  const left = tools.filter((tool) => !tool.isThere());
  if (left.length === 0) return;
  for (const tool of left) process.stdout.write(`Missing: ${tool.use}. Install it (Debian: apt-get install ${tool.debian}).\n`);
  process.stdout.write(`0 passed, ${left.length} failed, 0 skipped\n`);
  process.exit(1);
}

function canInstall(): boolean {
  return existsSync('/etc/debian_version') && process.getuid?.() === 0;
}

function install(packages: readonly string[]): void {
  process.stdout.write(`Installing ${packages.join(', ')}.\n`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const quiet = { stdio: ['ignore', 'ignore', 'inherit'] as ('ignore' | 'inherit')[], env };
  spawnSync('apt-get', ['update', '-qq'], quiet);
  spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...packages], quiet);
}

function isOnPath(program: string): boolean {
  return (process.env['PATH'] ?? '').split(delimiter).some((folder) => {
    try {
      accessSync(join(folder, program), constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });
}

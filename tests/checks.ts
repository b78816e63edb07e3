/**
 * The checks that read the code instead of running it.
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));
export type Check = { name: string; tool: string; args: string[] };

const ROOMS = ['core', 'db', 'electron', 'renderer', 'tests'];

export const checks: readonly Check[] = [
  ...ROOMS.map((room) => ({ name: `types in ${room}`, tool: 'tsc', args: ['-p', room] })),
  { name: 'lint', tool: 'oxlint', args: [] },
  { name: 'walls between the rooms', tool: 'depcruise', args: ['--config', '.dependency-cruiser.cjs', ...ROOMS] },
  { name: 'nothing unused', tool: 'knip', args: [] },
  { name: 'format', tool: 'oxfmt', args: ['--check', ...ROOMS] },
];

/** Run a check; what it says is shown only when it fails. */
export function runCheck({ tool, args }: Check): boolean {
  const done = spawnSync(process.execPath, [join(root, 'node_modules', '.bin', tool), ...args], { cwd: root, encoding: 'utf8' });
  if (done.status === 0) return true;
  process.stdout.write(`${done.stdout}${done.stderr}`);
  return false;
}

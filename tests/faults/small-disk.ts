/**
 * A small disk of its own for a test, which can be filled and made read-only. Needs the right to mount.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

const mount = (...args: string[]) => spawnSync('mount', args).status === 0;

/** The disk's folder; the test is skipped where mounting is not allowed. */
export function smallDisk(megabytes: number, skip: (reason: string) => never): string {
  const folder = mkdtempSync(join(tmpdir(), 'kitbound-disk-'));
  if (process.platform !== 'linux' || !mount('-t', 'tmpfs', '-o', `size=${megabytes}m`, 'tmpfs', folder)) {
    rmSync(folder, { recursive: true });
    skip('mounting a small disk is not allowed here');
  }
  onTestFinished(() => {
    spawnSync('umount', [folder]);
    rmSync(folder, { recursive: true, force: true });
  });
  return folder;
}

export function makeReadOnly(disk: string): void {
  if (!mount('-o', 'remount,ro', disk)) throw new Error('The small disk could not be made read-only.');
}

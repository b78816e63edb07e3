/**
 * The disk says no, at each of the calls that a few saves make: once, and from then on. Linux only, by faults put into system calls.
 */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { temporaryFolder } from '../store.ts';
import { LONG, expectPairs, runWriter } from './pairs.ts';

const canTrace = process.platform === 'linux' && spawnSync('strace', ['-o', '/dev/null', 'true']).status === 0;
const PAIRS = 3;
const trace = (...more: string[]) => ['strace', '-f', '-qq', '--seccomp-bpf', ...more];

/** How many of these calls the writer makes on a store that exists. */
function callsOf(folder: string, calls: string): number {
  const log = join(temporaryFolder(), 'calls');
  const { status, acked } = runWriter(folder, PAIRS, trace('-e', `trace=${calls}`, '-o', log));
  expect([status, acked.length]).toEqual([0, PAIRS]);
  return readFileSync(log, 'utf8')
    .split('\n')
    .filter((line) => line.includes('(')).length;
}

/** `kinds`: what it is told as, the first one at least once. */
type Fault = { calls: string; error: string; kinds: string[]; step: number };
const faults: Fault[] = [
  { calls: 'fsync,fdatasync', error: 'EIO', kinds: ['disk error'], step: 1 },
  { calls: 'pwrite64', error: 'ENOSPC', kinds: ['disk full'], step: LONG ? 1 : 17 },
  { calls: 'pwrite64', error: 'EIO', kinds: ['disk error', 'disk full'], step: LONG ? 1 : 37 },
];

describe.each(faults)('$error from $calls', ({ calls, error, kinds, step }) => {
  test.for(['once', 'and ever after'])(
    '%s: nothing acknowledged is lost, nothing half is there, and it works again afterwards',
    { timeout: LONG ? 900_000 : 120_000 },
    (how, { skip }) => {
      skip(!canTrace, 'strace is not here or may not trace');
      const folder = temporaryFolder();
      runWriter(folder, PAIRS);
      runWriter(folder, 0);
      const total = callsOf(folder, calls);
      let before = expectPairs(
        folder,
        Array.from({ length: PAIRS * 2 }, (_, number) => number),
      );
      const met = new Set<string>();
      for (let at = 1; at <= total; at += how === 'once' ? step : step * 3) {
        const inject = `inject=${calls}:error=${error}:when=${at}${how === 'once' ? '' : '+'}`;
        const said = runWriter(folder, PAIRS, trace('-o', '/dev/null', '-e', `trace=${calls}`, '-e', inject));
        expect([at, said.errors, said.status]).toEqual([at, '', 0]);
        said.kinds.forEach((kind) => met.add(kind));
        before = expectPairs(folder, [...before, ...said.acked]);
      }
      expect(kinds).toEqual(expect.arrayContaining([...met]));
      expect([...met]).toContain(kinds[0]);
      const healed = runWriter(folder, PAIRS);
      expect([healed.kinds, healed.acked.length]).toEqual([[], PAIRS]);
      expectPairs(folder, [...before, ...healed.acked]);
    },
  );
});

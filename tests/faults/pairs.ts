/**
 * The pairs that the writer of these tests saves, and what must hold of them whatever happened.
 */
import { spawn, spawnSync } from 'node:child_process';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect } from 'vitest';
import { pairKey } from './moment.ts';

const WRITER = join(import.meta.dirname, 'processes', 'writer.ts');

export type Said = { acked: number[]; kinds: string[]; lines: string[] };

function heard(output: string): Said {
  const lines = output.split('\n').filter((line) => line.length > 0);
  const acked = lines.flatMap((line) => (line.startsWith('ok ') ? [Number(line.slice(3))] : []));
  const kinds = lines.flatMap((line) => /^(?:no \d+|refused) (.+)$/.exec(line)?.[1] ?? []);
  return { acked, kinds, lines };
}

/** Run the writer to its end, under a wrapping command such as strace. */
export function runWriter(folder: string, count: number, wrap: string[] = []): Said & { status: number | null; errors: string } {
  const [command, ...args] = [...wrap, process.execPath, WRITER, folder, String(count)];
  const { stdout, stderr, status } = spawnSync(command, args, { encoding: 'utf8', timeout: 60_000 });
  return { ...heard(stdout), status, errors: stderr };
}

/** Start the writer and kill it this long after its first save. */
export async function killWriter(folder: string, afterMs: number): Promise<Said & { errors: string }> {
  const child = spawn(process.execPath, [WRITER, folder, '1000000'], { stdio: ['ignore', 'pipe', 'pipe'] });
  let [output, errors] = ['', ''];
  child.stdout.on('data', (piece: Buffer) => {
    if (!output.includes('ok ') && piece.includes('ok ')) setTimeout(() => child.kill('SIGKILL'), afterMs);
    output += piece.toString();
  });
  child.stderr.on('data', (piece: Buffer) => (errors += piece.toString()));
  await new Promise((resolve) => child.on('close', resolve));
  return { ...heard(output), errors };
}

/**
 * Look into a closed store: it is whole, every pair has both halves and its deed, nothing that was acknowledged is lost, and at most one
 * that was not acknowledged is there, since an error may come after the disk has it.
 */
export function expectPairs(folder: string, acked: number[]): number[] {
  const client = new Database(join(folder, 'kitbound.sqlite'));
  try {
    expect(client.pragma('integrity_check', { simple: true })).toBe('ok');
    expect(client.pragma('foreign_key_check')).toEqual([]);
    const found = client
      .prepare<[], { number: number; halves: string }>(
        "select cast(subject_id as integer) as number, group_concat(deed, '' order by deed) as halves from history where subject = 'pair' group by subject_id order by 1",
      )
      .all();
    expect(found.filter(({ halves }) => halves !== 'ab')).toEqual([]);
    const numbers = found.map(({ number }) => number);
    const deeds = client.prepare<[], string>('select key from deeds order by key').pluck().all();
    expect(deeds).toEqual(numbers.map(pairKey));
    expect(acked.filter((number) => !numbers.includes(number))).toEqual([]);
    const unacknowledged = numbers.filter((number) => !acked.includes(number));
    expect(unacknowledged.length).toBeLessThanOrEqual(1);
    return numbers;
  } finally {
    client.close();
  }
}

/** Counts that `npm run long` raises. */
export const LONG = process.env['KITBOUND_LONG'] === '1';

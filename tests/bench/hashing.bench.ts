/**
 * Reading a file of 500 MiB with its checksum, as it is done before handing over, against reading the same file and doing nothing with it.
 * Both sides read pieces of 1 MiB from the system's cache; from a card or a disk the difference is smaller, since the reading takes longer.
 */
import { closeSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { xxhash128 } from 'hash-wasm';
import { hashFile } from '../../electron/files/hash-file.ts';
import { pair, report } from './harness.ts';

const MIB = 1024 * 1024;
const SIZE = 500;
const folder = mkdtempSync(join(tmpdir(), 'kitbound-bench-'));
const path = join(folder, 'film.mov');
try {
  const hash = await written();
  const row = await pair({
    name: `${SIZE} MiB with their checksum`,
    against: 'a plain read of the same file in pieces of the same size',
    aim: 3,
    rounds: 8,
    ours: hashed,
    theirs: plainRead,
    prove: async () => {
      if ((await hashed()).hash !== hash) throw new Error('the checksum is not that of the bytes');
      if ((await plainRead()) !== SIZE * MIB) throw new Error('the plain read did not come to the end');
    },
  });
  const perSecond = (ms: number) => Math.round((SIZE * MIB) / 1000 / ms);
  report({ ...row, name: `${row.name}: ${perSecond(row.ours)} MB/s against ${perSecond(row.theirs)} MB/s` });
} finally {
  rmSync(folder, { recursive: true, force: true });
}

function hashed() {
  return hashFile(path, { signal: new AbortController().signal, onRead: () => undefined });
}

async function plainRead(): Promise<number> {
  const file = await open(path, 'r');
  const piece = Buffer.allocUnsafe(MIB);
  let bytes = 0;
  for (;;) {
    const { bytesRead } = await file.read(piece, 0, MIB, null);
    if (bytesRead === 0) break;
    bytes += bytesRead;
  }
  await file.close();
  return bytes;
}

/** Bytes without a pattern. @returns their checksum, worked out in one go */
async function written(): Promise<string> {
  const whole = Buffer.alloc(SIZE * MIB);
  let state = 1;
  const words = new Uint32Array(whole.buffer, whole.byteOffset, whole.length / 4);
  for (let at = 0; at < words.length; at += 1) words[at] = state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
  const file = openSync(path, 'w');
  for (let at = 0; at < whole.length;) at += writeSync(file, whole, at);
  closeSync(file);
  return xxhash128(whole);
}

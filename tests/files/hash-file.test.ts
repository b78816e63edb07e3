/**
 * The checksum of one file: pieces, being stopped, and files that do not stand still.
 */
import {
  appendFileSync,
  mkdirSync,
  renameSync,
  rmSync,
  truncateSync,
  utimesSync,
  writeFileSync,
  writeSync,
  openSync,
  closeSync,
} from 'node:fs';
import { join } from 'node:path';
import { xxhash128 } from 'hash-wasm';
import { describe, expect, test } from 'vitest';
import { hashFile } from '../../electron/files/hash-file.ts';
import { inFileWords } from '../../electron/files/trouble.ts';
import { temporaryFolder } from '../store.ts';

const MIB = 1024 * 1024;
/** Bytes without a pattern, the same each time. */
function bytesOf(length: number): Buffer {
  let state = 1;
  const words = Uint32Array.from({ length: Math.ceil(length / 4) }, () => (state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0));
  return Buffer.from(words.buffer, 0, length);
}
function fileOf(length: number): string {
  const path = join(temporaryFolder(), 'film.mov');
  writeFileSync(path, bytesOf(length));
  return path;
}
const calm = (onRead: (bytes: number) => void = () => undefined) => ({ signal: new AbortController().signal, onRead });

test.each([MIB - 1, MIB, MIB + 1, 3 * MIB + 5])('%i bytes in pieces have the checksum of the whole', async (length) => {
  const pieces: number[] = [];
  const hashed = await hashFile(
    fileOf(length),
    calm((bytes) => pieces.push(bytes)),
  );
  expect(hashed).toEqual({ bytes: length, hash: await xxhash128(bytesOf(length)) });
  expect(pieces.reduce((sum, bytes) => sum + bytes, 0)).toBe(length);
  expect(Math.max(...pieces)).toBeLessThanOrEqual(MIB);
});

test('several files at once do not disturb each other', async () => {
  const lengths = [0, 10, MIB, 2 * MIB + 7, 300];
  const hashed = await Promise.all(lengths.map((length) => hashFile(fileOf(length), calm())));
  expect(hashed.map(({ hash }) => hash)).toEqual(await Promise.all(lengths.map((length) => xxhash128(bytesOf(length)))));
});

describe('being stopped', () => {
  test('before it began', async () => {
    await expect(hashFile(fileOf(10), { signal: AbortSignal.abort(new Error('stopped')), onRead: () => undefined })).rejects.toThrow(
      'stopped',
    );
  });

  test('in the middle reads no further piece, and the next file is right', async () => {
    const stop = new AbortController();
    let read = 0;
    const stopped = hashFile(fileOf(5 * MIB), {
      signal: stop.signal,
      onRead: (bytes) => {
        read += bytes;
        stop.abort(new Error('stopped'));
      },
    });
    await expect(stopped).rejects.toThrow('stopped');
    expect(read).toBe(MIB);
    expect((await hashFile(fileOf(100), calm())).hash).toBe(await xxhash128(bytesOf(100)));
  });
});

/** What is said of a file to which something is done once its first piece was read. */
async function saidAfter(act: (path: string) => void): Promise<string> {
  const path = fileOf(4 * MIB);
  let done = false;
  const hashing = hashFile(
    path,
    calm(() => {
      if (!done) act(path);
      done = true;
    }),
  );
  return hashing.then(
    () => 'was read',
    (error: Error) => error.message,
  );
}

describe('a file that does not stand still while it is read', () => {
  test('grows', async () => expect(await saidAfter((path) => appendFileSync(path, bytesOf(2 * MIB)))).toMatch(/^grew while it was read/));
  test('becomes shorter', async () => expect(await saidAfter((path) => truncateSync(path, MIB))).toBe('became shorter while it was read'));
  test('vanishes', async () => expect(await saidAfter((path) => rmSync(path))).toBe('is not there any more'));
  test('is replaced', async () =>
    expect(
      await saidAfter((path) => {
        renameSync(path, `${path}.old`);
        writeFileSync(path, bytesOf(4 * MIB));
      }),
    ).toBe('was replaced by another file while it was read'));
  test('changes in a place that was read already', async () =>
    expect(
      await saidAfter((path) => {
        const file = openSync(path, 'r+');
        writeSync(file, 'X', 0);
        closeSync(file);
        utimesSync(path, new Date(), new Date('2031-01-01T00:00:00Z'));
      }),
    ).toBe('changed while it was read'));
});

describe('what cannot be read', () => {
  test('is not there', async () => expect(hashFile(join(temporaryFolder(), 'none.mov'), calm())).rejects.toThrow('is not there any more'));
  test('is a folder', async () => {
    const folder = join(temporaryFolder(), 'film.mov');
    mkdirSync(folder);
    await expect(hashFile(folder, calm())).rejects.toThrow('is no file any more');
  });
  test('is told in words, without the path and code of the system', () => {
    const fromSystem = (code: string) => inFileWords(Object.assign(new Error(`${code}: open '/home/me/film.mov'`), { code })).message;
    expect(fromSystem('EACCES')).toBe('may not be read by you: its permissions say no');
    expect(fromSystem('EIO')).toBe('cannot be read: the disk reports an error');
    expect(fromSystem('EOTHER')).toBe('cannot be read');
    expect(inFileWords('no error at all').message).toBe('cannot be read');
  });
});

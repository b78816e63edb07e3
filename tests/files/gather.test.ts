/**
 * Which files are handed over, and under which names.
 */
import { mkdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { dirname, join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { gather, PathError } from '../../electron/files/gather.ts';
import { hashList, type Progress } from '../../electron/files/hash-list.ts';
import { temporaryFolder } from '../store.ts';

/** A folder with files of some bytes each. */
function folderOf(files: Record<string, number>): string {
  const folder = temporaryFolder();
  for (const [name, bytes] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), Buffer.alloc(bytes, 7));
  }
  return folder;
}
const calm = () => new AbortController().signal;
const namesOf = async (...paths: string[]) => (await gather(paths, calm())).files.map(({ name }) => name);
const refusal = (...paths: string[]) =>
  gather(paths, calm()).then(
    () => expect.unreachable('was taken'),
    (error: Error & { at: number | null }) => [error.at, error.message],
  );

describe('names', () => {
  test('of one folder begin inside it, sorted, with a stroke between folders', async () => {
    expect(await namesOf(folderOf({ 'Main film.mov': 1, 'Reels/Reel 2.mov': 1, 'Reels/Reel 1.mov': 1, 'Reels/Stills/a.png': 1 }))).toEqual([
      'Main film.mov',
      'Reels/Reel 1.mov',
      'Reels/Reel 2.mov',
      'Reels/Stills/a.png',
    ]);
  });
  test('of a file are its own', async () => {
    expect(await namesOf(join(folderOf({ 'deep/down/film.mov': 1 }), 'deep/down/film.mov'))).toEqual(['film.mov']);
  });
  test('of several paths begin with the last part of each', async () => {
    const folder = folderOf({ 'A/film.mov': 1, 'B/film.mov': 1, 'notes.txt': 1 });
    expect(await namesOf(join(folder, 'A'), join(folder, 'B'), join(folder, 'notes.txt'))).toEqual([
      'A/film.mov',
      'B/film.mov',
      'notes.txt',
    ]);
  });
  test('that would stand twice are refused', async () => {
    const folder = folderOf({ 'A/film.mov': 1, 'B/film.mov': 1 });
    expect(await refusal(join(folder, 'A/film.mov'), join(folder, 'B/film.mov'))).toEqual([
      null,
      'would give film.mov twice; put the files into one folder and give that',
    ]);
  });
});

describe('left out and told', () => {
  test('links, also those that lead out, and what systems keep for themselves', async () => {
    const outside = folderOf({ 'secret.txt': 5 });
    const folder = folderOf({ 'film.mov': 1, '.DS_Store': 1, '._film.mov': 1, 'Thumbs.db': 1 });
    symlinkSync(outside, join(folder, 'elsewhere'));
    symlinkSync(join(outside, 'secret.txt'), join(folder, 'linked.txt'));
    symlinkSync(folder, join(folder, 'circle'));
    const { files, leftOut, troubles } = await gather([folder], calm());
    expect(files.map(({ name }) => name)).toEqual(['film.mov']);
    expect(troubles).toEqual([]);
    expect(leftOut.map(({ name, sentence }) => `${name} ${sentence}`)).toEqual(
      [
        '._film.mov is kept there by a system for itself',
        '.DS_Store is kept there by a system for itself',
        'circle is a link to another place',
        'elsewhere is a link to another place',
        'linked.txt is a link to another place',
        'Thumbs.db is kept there by a system for itself',
      ].sort(),
    );
  });
  test('a link that was given itself is followed: it is what the person named', async () => {
    const folder = folderOf({ 'film.mov': 3 });
    const link = join(temporaryFolder(), 'current');
    symlinkSync(folder, link);
    expect(await namesOf(link)).toEqual(['film.mov']);
  });
  test('what is no file is never opened', async () => {
    const folder = folderOf({ 'film.mov': 1 });
    const server = createServer();
    onTestFinished(() => void server.close());
    await new Promise<void>((resolve) => server.listen(join(folder, 'socket'), resolve));
    expect((await gather([folder], calm())).leftOut).toEqual([{ name: 'socket', sentence: 'is no file' }]);
  });
});

describe('refused', () => {
  test('a path that leads to nothing, by its number', async () =>
    expect(await refusal(folderOf({ a: 1 }), join(temporaryFolder(), 'none'))).toEqual([
      1,
      'leads to nothing; check whether the disk is connected and the name is right',
    ]));
  test('an empty folder', async () => expect(await refusal(temporaryFolder())).toEqual([null, 'gave no file to hand over']));
  test('more files than a list can hold', async () => {
    const folder = folderOf({ 'a/1': 0, 'a/2': 0, 'b/3': 0, 'b/4': 0 });
    expect((await gather([folder], calm(), 4)).files.length).toBe(4);
    await expect(gather([folder], calm(), 3)).rejects.toEqual(new PathError(null, 'gave more than 3 files; hand them over in parts'));
  });
  test('what is neither file nor folder', async () => expect(await refusal('/dev/null')).toEqual([0, 'is neither a file nor a folder']));
});

describe('reading the list', () => {
  test('tells bytes and files as they go, up to all of them', async () => {
    const told: Progress[] = [];
    const { files } = await hashList([folderOf({ a: 1_500_000, b: 0, c: 100 })], calm(), (now) => told.push(now));
    expect(files.map(({ name, bytes }) => [name, bytes])).toEqual([
      ['a', 1_500_000],
      ['b', 0],
      ['c', 100],
    ]);
    expect(told.at(0)).toEqual({ bytes: 0, of: 1_500_100, files: 0, ofFiles: 3, name: 'a' });
    expect(told.at(-1)).toMatchObject({ bytes: 1_500_100, files: 3 });
    expect(told.map(({ bytes }) => bytes)).toEqual(told.map(({ bytes }) => bytes).toSorted((a, b) => a - b));
  });
  test('one that vanishes meanwhile is named, and the others are read', async () => {
    const folder = folderOf({ a: 10, b: 20, c: 30 });
    const { files, troubles } = await hashList([folder], calm(), ({ name, files: done }) => {
      if (name === 'a' && done === 0) rmSync(join(folder, 'b'), { force: true });
    });
    expect(files.map(({ name }) => name)).toEqual(['a', 'c']);
    expect(troubles).toEqual([{ name: 'b', sentence: 'is not there any more' }]);
  });
  test('is stopped between pieces', async () => {
    const stop = new AbortController();
    const reading = hashList([folderOf({ a: 3_000_000, b: 1 })], stop.signal, ({ bytes }) => {
      if (bytes > 0) stop.abort(new Error('stopped'));
    });
    await expect(reading).rejects.toThrow('stopped');
  });
});

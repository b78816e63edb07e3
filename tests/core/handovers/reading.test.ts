import { expect, test } from 'vitest';
import { readingInWords, readingPart } from '../../../core/handovers/reading.ts';

const facts: Parameters<typeof readingInWords>[0] = {
  state: 'reading',
  bytes: 0,
  of: 0,
  files: 0,
  ofFiles: 0,
  seconds: 0,
  troubles: [],
  list: [],
};
const half = { ...facts, bytes: 1_000_000_000, of: 4_000_000_000, files: 2, ofFiles: 40 };

test('how far it is, and how long it takes at the speed so far', () => {
  expect(readingInWords(facts)).toBe('Looking at what is there.');
  expect(readingInWords({ ...half, seconds: 2 })).toBe('1.00 GB of 4.00 GB, 2 of 40 files.');
  expect(readingInWords({ ...half, seconds: 10 })).toBe('1.00 GB of 4.00 GB, 2 of 40 files, less than a minute to go.');
  expect(readingInWords({ ...half, seconds: 21 })).toBe('1.00 GB of 4.00 GB, 2 of 40 files, about 2 min to go.');
  expect(readingInWords({ ...half, seconds: 2000 })).toBe('1.00 GB of 4.00 GB, 2 of 40 files, about 1 h 40 min to go.');
});

test('how it ended', () => {
  expect(readingInWords({ ...half, state: 'stopped' })).toBe('Stopped after 1.00 GB of 4.00 GB, 2 of 40 files. Nothing was kept.');
  expect(readingInWords({ ...facts, state: 'stopped' })).toBe('Stopped. Nothing was kept.');
  const list = [{ name: 'a.mov', bytes: 4_000_000_000, hash: '' }];
  expect(readingInWords({ ...half, state: 'done', ofFiles: 1, list })).toBe('Read: 1 file, 4.00 GB.');
  expect(readingInWords({ ...half, state: 'done', ofFiles: 2, list: [...list, { name: 'b.mov', bytes: 0, hash: '' }] })).toBe(
    'Read: 2 files, 4.00 GB. b.mov is empty: check whether it was written to its end.',
  );
  expect(
    readingInWords({ ...half, state: 'incomplete', ofFiles: 2, list, troubles: [{ name: 'b', sentence: 'is not there any more' }] }),
  ).toBe('1 file of 2 could not be read. Put that right and read them again.');
});

test('the part that is done, from nothing to all', () => {
  expect(readingPart(facts)).toBe(0);
  expect(readingPart({ ...half, state: 'reading' })).toBe(0.25);
  expect(readingPart({ bytes: 9, of: 8, state: 'reading' })).toBe(1);
  expect(readingPart({ bytes: 0, of: 0, state: 'done' })).toBe(1);
});

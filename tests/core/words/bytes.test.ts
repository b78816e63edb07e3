import { expect, test } from 'vitest';
import { byteFigures, bytesInWords } from '../../../core/words/bytes.ts';

test.each([
  [0, '0 bytes'],
  [1, '1 byte'],
  [999, '999 bytes'],
  [1000, '1.00 kB'],
  // In a float 1.005 is a little less.
  [1005, '1.01 kB'],
  [9994, '9.99 kB'],
  [9995, '10.0 kB'],
  [99_949, '99.9 kB'],
  [99_950, '100 kB'],
  [999_499, '999 kB'],
  [999_500, '1.00 MB'],
  [1_260_000_000_000, '1.26 TB'],
  [41_203_441_112, '41.2 GB'],
  [Number.MAX_SAFE_INTEGER, '9.01 PB'],
])('%i bytes are %s', (bytes, words) => expect(bytesInWords(bytes)).toBe(words));

test.each([
  [7, '7'],
  [1000, '1,000'],
  [41_203_441_112, '41,203,441,112'],
])('%i is written %s', (bytes, figures) => expect(byteFigures(bytes)).toBe(figures));

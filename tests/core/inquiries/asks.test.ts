/**
 * Messages with dates and words of the trade that ask nobody to film, and short ones that do.
 */
import { expect, test } from 'vitest';
import { waysOf } from '../../reader/ways.ts';
import { readAt } from './reading.ts';

test.each(waysOf('none'))('asks for none: %s', (text) =>
  expect(readAt(text)).toEqual({ isInquiry: false, fields: {}, questions: [], spans: [] }),
);

test.each([...waysOf('asks'), 'When: December 12\nWhere: Fargo\nWhat: ceilidh\nFee: $275'])('asks for work: %s', (text) =>
  expect(readAt(text).isInquiry).toBe(true),
);

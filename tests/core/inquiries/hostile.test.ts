/**
 * Texts that nobody writes are read to their end, and every span is where it says; how long that takes is measured by `npm run bench`.
 */
import { describe, expect, test } from 'vitest';
import type { Reading } from '../../../core/contract/inquiries.ts';
import { TEXT_LENGTH } from '../../../core/contract/parts.ts';
import { everyMessageAtOnce, ONE_PIECE_OVER_AND_OVER } from './long-texts.ts';
import { readAt } from './reading.ts';

function spansHold(text: string, { spans }: Reading): void {
  for (const span of spans) expect(text.slice(span.start, span.end)).toBe(span.text);
}

describe('200,000 characters on one line or many', () => {
  test.each(ONE_PIECE_OVER_AND_OVER)('%s', (_, text) => spansHold(text, readAt(text)));

  test('every message of the corpus at once, on one line and on many', () => {
    for (const text of everyMessageAtOnce()) {
      const reading = readAt(text);
      expect(reading.isInquiry).toBe(true);
      spansHold(text, reading);
    }
  });
});

describe('refusals', () => {
  test('more than 200,000 characters', () => expect(() => readAt('x'.repeat(TEXT_LENGTH + 1))).toThrow('longer than 200,000 characters'));
  test('a moment without a zone', () => expect(() => readAt('Can you film?', '2026-11-25T09:12:00')).toThrow(RangeError));
  test.each(['', ' ', '\n\n', '\u200b', '?'])('nothing to read in %j', (text) =>
    expect(readAt(text)).toEqual({ isInquiry: false, fields: {}, questions: [], spans: [] }),
  );
});

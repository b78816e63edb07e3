/**
 * The messages on which the reader was tuned, and those held out: what it promises on both.
 */
import { describe, expect, test } from 'vitest';
import { messages } from '../../reader/corpus.ts';
import { interval, score, type Count } from '../../reader/scores.ts';

const total = (counts: Iterable<readonly [string, Count]>): Count => {
  const sum = { right: 0, stated: 0, there: 0 };
  for (const [field, count] of counts) {
    if (field === 'isInquiry' || field === 'questions') continue;
    sum.right += count.right;
    sum.stated += count.stated;
    sum.there += count.there;
  }
  return sum;
};

test('at least 300 messages, each half at least 150', () => {
  expect(messages('tuned').length).toBeGreaterThanOrEqual(150);
  expect(messages('held').length).toBeGreaterThanOrEqual(150);
});

describe.each(['tuned', 'held'] as const)('%s', (half) => {
  const { counts, misses } = score(messages(half));
  const all = total(counts);
  test('precision at least 0.99 over all fields', () => expect(all.right / all.stated).toBeGreaterThanOrEqual(0.99));
  test('recall at least 0.90 over all fields', () => expect(all.right / all.there).toBeGreaterThanOrEqual(0.9));
  test('no wrong start, end or first call', () =>
    expect(misses.filter(({ field, wrong }) => wrong && ['start', 'end', 'firstCall'].includes(field))).toEqual([]));
});

test('the interval of 8 in 10 is that of Wilson (1927): 0.490 to 0.943', () => {
  const [low, high] = interval(8, 10);
  expect(low).toBeCloseTo(0.49, 2);
  expect(high).toBeCloseTo(0.943, 2);
});

import { expect, test } from 'vitest';
import type { Clock } from '../../../core/contract/desk.ts';
import type { DeskJob } from '../../../core/desk/clocks.ts';
import { laidOnDesk } from '../../../core/desk/laid.ts';
import { partedByNeed } from '../../../core/desk/needed.ts';

const NOW = Date.parse('2026-12-03T15:00:00Z');
const HOUR = 3_600_000;
const clocks = (...hours: number[]) => hours.map((hour) => ({ at: new Date(NOW + hour * HOUR).toISOString() }));
const sizes = (...hours: number[]) => {
  const { older, near, later } = partedByNeed(clocks(...hours), NOW, 'America/Chicago');
  return [older.length, near.length, later.length];
};

test('everything that bites today stands there, however much it is; tomorrow’s up to eight in all', () => {
  expect(sizes(-2, 1, 2, 3, 4, 5, 6, 7, 8, 30, 100)).toEqual([0, 9, 2]);
  expect(sizes(-2, 1, 2, 3, 30, 31, 32, 100, 200)).toEqual([0, 7, 2]);
  expect(sizes(-2, 1, 2, 3, 30, 31, 32, 33, 34, 35, 100)).toEqual([0, 8, 3]);
});

test('of much that is late the newest three stand there', () => {
  expect(sizes(-900, -90, -50, -20, -2, 1, 30, 100)).toEqual([2, 6, 0]);
  expect(sizes(-90, -50, -20, -2, 1, 30)).toEqual([0, 6, 0]);
  expect(partedByNeed(clocks(-900, -90, -50, -20, -2, 1), NOW, 'America/Chicago').older).toEqual(clocks(-900, -90));
});

test('a quiet day is filled up to six; a single later one is not parted off', () => {
  expect(sizes(1, 50, 100, 150, 200, 250, 300, 350)).toEqual([0, 6, 2]);
  expect(sizes(1, 50, 100, 150, 200, 250, 300)).toEqual([0, 7, 0]);
  expect(sizes()).toEqual([0, 0, 0]);
});

test('tomorrow ends at midnight at home', () => {
  // 15:00 UTC is 09:00 in Chicago: 39 h later it is midnight, which ends tomorrow.
  expect(sizes(1, 2, 3, 4, 5, 6, 39, 40, 41)).toEqual([0, 7, 2]);
  expect(sizes(1, 2, 3, 4, 5, 6, 40, 41)).toEqual([0, 6, 2]);
});

test('laid on the small stringline is the inquiry that waits and has a call there, not one that waits longer for a far date', () => {
  const job = (id: string, callAt: number) => ({ id, days: [{ callAt }] }) as unknown as DeskJob;
  const clock = (jobId: string, kind: Clock['kind']) => ({ jobId, kind }) as Clock;
  const jobs = [job('far', NOW + 900 * HOUR), job('ink', NOW + HOUR), job('near', NOW + 48 * HOUR), job('ends', NOW + 336 * HOUR)];
  const all = [clock('far', 'question'), clock('ink', 'call'), clock('ends', 'reply-by'), clock('near', 'reply-by')];
  expect(laidOnDesk(jobs, all, { from: NOW, to: NOW + 336 * HOUR })).toBe('near');
  expect(laidOnDesk(jobs, all.slice(0, 2), { from: NOW, to: NOW + 336 * HOUR })).toBeUndefined();
});

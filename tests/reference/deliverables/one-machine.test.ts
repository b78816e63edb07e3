/**
 * The edit schedule on the textbook cases of one machine, a half hour standing for one unit.
 * @source M. Pinedo, Scheduling: Theory, Algorithms, and Systems, chapter 3 (maximum lateness, earliest due date); J. R. Jackson, 1955; W. A. Horn, Some simple scheduling algorithms, 1974; C. L. Liu and J. W. Layland, Scheduling algorithms for multiprogramming in a hard-real-time environment, 1973
 * From memory: the set of example 3.2.5 of the first, and that periodic work is in time if and only if no more than all of the time is asked for.
 */
import { describe, expect, test } from 'vitest';
import { schedule, type Slot } from '../../../core/deliverables/schedule.ts';
import type { Stage } from '../../../core/deliverables/stages.ts';

const HALF = 30 * 60_000;
const slots: Slot[] = Array.from({ length: 60 }, (_, at) => ({ start: at * HALF, end: (at + 1) * HALF }));
const stages = (rows: readonly (readonly [release: number, due: number, work: number])[]): Stage[] =>
  rows.map(([release, due, work], index) => ({
    id: String(index + 1),
    halfHours: work,
    releaseAt: release * HALF,
    dueAt: due * HALF,
    after: [],
  }));
const finishes = (rows: Parameters<typeof stages>[0]) => {
  const plan = schedule(stages(rows), slots);
  return plan.stages.map(({ finish, lateness }) => [(finish ?? Infinity) / HALF, (lateness ?? Infinity) / HALF] as const);
};
const latest = (rows: Parameters<typeof stages>[0]) => Math.max(...finishes(rows).map(([, lateness]) => lateness));
/** The largest lateness when the works are done in this order, one after the other. */
const inOrder = (order: readonly number[], works: readonly number[], dues: readonly number[]): number => {
  let at = 0;
  return Math.max(...order.map((job) => (at += works[job - 1] ?? 0) - (dues[job - 1] ?? 0)));
};
const bare = (works: readonly number[], dues: readonly number[]) => works.map((work, index) => [0, dues[index] ?? 0, work] as const);

describe('all ready at once: sorting by due date makes the largest lateness least', () => {
  test.each([
    ['lecture set', [3, 2, 1, 4, 3, 2], [6, 8, 9, 9, 14, 15], [3, 5, 6, 10, 13, 15], 1],
    ['tutorial set', [3, 2, 1, 4, 3, 2], [6, 8, 9, 9, 10, 11], [3, 5, 6, 10, 13, 15], 4],
  ])('%s', (_, works, dues, ends, lateness) => {
    expect(finishes(bare(works, dues)).map(([finish]) => finish)).toEqual(ends);
    expect(latest(bare(works, dues))).toBe(lateness);
  });
  test.each([
    ['lecture set', [3, 2, 6, 1, 5, 4], [6, 8, 9, 9, 14, 15], 6, 1],
    ['tutorial set', [3, 2, 5, 4, 1, 6], [6, 8, 9, 9, 10, 11], 7, 4],
  ])('%s: another order of the source is late by more', (_, order, dues, other, least) => {
    const works = [3, 2, 1, 4, 3, 2];
    expect(inOrder(order, works, dues)).toBe(other);
    expect(latest(bare(works, dues))).toBe(least);
  });
  test('ten jobs: the largest lateness is 59, four are late', () => {
    const rows = bare([19, 23, 5, 31, 17, 8, 32, 41, 26, 18], [48, 75, 170, 215, 205, 240, 85, 67, 100, 95]);
    const long = Array.from({ length: 300 }, (_, at) => ({ start: at * HALF, end: (at + 1) * HALF }));
    const late = schedule(stages(rows), long).stages.filter(({ lateness }) => (lateness ?? 0) > 0);
    expect(late.map(({ id }) => id).toSorted()).toEqual(['10', '2', '7', '9']);
    expect(Math.max(...late.map(({ lateness }) => (lateness ?? 0) / HALF))).toBe(59);
  });
  test.each([
    ['shortest first would be late', [1, 5], [10, 5], 0],
    ['least slack first would be late', [1, 10], [100, 10], 0],
  ])('%s, earliest due date is not', (_, works, dues, lateness) => {
    expect(latest(bare(works, dues))).toBeLessThanOrEqual(lateness);
  });
});

describe('with releases: feasible if and only if no interval is asked for more than it has', () => {
  const first = [
    [0, 4, 2],
    [1, 3, 1],
    [2, 6, 2],
  ] as const;
  test('three jobs: done at 3, 2 and 5', () => {
    expect(finishes(first).map(([finish]) => finish)).toEqual([3, 2, 5]);
  });
  test('one more of 1 fills [0, 4] and [0, 6] without slack', () => {
    expect(latest([...first, [2, 4, 1]])).toBe(0);
  });
  test('one more of 2 asks 5 of [0, 4]: late by 1', () => {
    expect(latest([...first, [2, 4, 2]])).toBe(1);
  });
  test('four jobs, each put off for what is due sooner: the last is done at 17, late by 5', () => {
    const rows = [
      [0, 8, 4],
      [1, 12, 2],
      [3, 11, 6],
      [5, 10, 5],
    ] as const;
    expect(finishes(rows)).toEqual([
      [4, -4],
      [17, 5],
      [15, 4],
      [10, 0],
    ]);
  });
  test.each([
    ['26 of 28 units are asked for', [2, 4], [3, 7], 28, true],
    ['all 20 of 20', [2, 4], [5, 10], 20, true],
    ['22 of 20', [2, 4], [6, 10], 20, false],
  ] as const)('periodic work, each round due when its next begins, %s', (_, one, other, together, inTime) => {
    const rounds = [one, other].flatMap(([work, period]) =>
      Array.from({ length: together / period }, (__, round) => [round * period, (round + 1) * period, work] as const),
    );
    expect(latest(rounds) <= 0).toBe(inTime);
  });
  test('a long job is put off for a short one that comes later', () => {
    expect(
      latest([
        [0, 10, 5],
        [1, 3, 1],
      ]),
    ).toBeLessThanOrEqual(0);
  });
});

import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { latestStarts } from '../../../core/deliverables/latest-start.ts';
import { schedule, type Slot } from '../../../core/deliverables/schedule.ts';
import type { Stage } from '../../../core/deliverables/stages.ts';
import { tried } from '../laws.ts';
import { editCases, HALF_HOUR } from './cases.ts';
import { latestStart } from './latest-twin.ts';
import { yearOfEdits } from './year.ts';

const half = (count: number): Slot[] => Array.from({ length: count }, (_, at) => ({ start: at * HALF_HOUR, end: (at + 1) * HALF_HOUR }));
const stage = (id: string, halfHours: number, due: number, release = 0, after: string[] = []): Stage => ({
  id,
  halfHours,
  releaseAt: release * HALF_HOUR,
  dueAt: due * HALF_HOUR,
  after,
});
const starts = (stages: readonly Stage[], slots = half(20)) =>
  Object.fromEntries([...latestStarts(stages, slots)].map(([id, at]) => [id, at === null ? null : at / HALF_HOUR]));

describe('by when it must be begun', () => {
  test('alone: its hours before its date', () => {
    expect(starts([stage('a', 3, 10)])).toEqual({ a: 7 });
  });
  test('another that is due later makes room by going before', () => {
    expect(starts([stage('a', 3, 10), stage('b', 4, 12)])).toEqual({ a: 7, b: 8 });
    expect(starts([stage('a', 3, 10), stage('b', 4, 10, 6)])).toEqual({ a: 3, b: 6 });
  });
  test('what waits for it takes its hours off the end', () => {
    expect(starts([stage('ingest', 2, 99), stage('cut', 3, 10, 0, ['ingest'])])).toEqual({ ingest: 5, cut: 7 });
  });
  test('late however early it begins: no such moment; another that is late anyhow is no hindrance', () => {
    expect(starts([stage('a', 3, 2), stage('b', 2, 10)])).toEqual({ a: null, b: 8 });
  });
  test('what has no place in the calendar has no such moment; a stage without work is not named', () => {
    expect(starts([stage('a', 5, 4), stage('wait', 0, 9)], half(4))).toEqual({ a: null });
    expect(starts([stage('a', 5, 9), stage('b', 1, 2)], half(4))).toEqual({ a: null, b: 1 });
  });
  test('no open half hour', () => {
    expect(starts([stage('a', 1, 4)], [])).toEqual({ a: null });
  });
});

describe('laws', () => {
  test('all at once they are what the schedule laid anew for each half hour gives', () => {
    fc.assert(
      fc.property(editCases({ min: 1, max: 7 }, 4), ({ stages, slots }) => {
        // Half hours enough that dates may be kept, and some that are late all the same.
        const given = stages.map((each) => ({ ...each, dueAt: each.dueAt + 4 * HALF_HOUR }));
        const all = latestStarts(given, slots);
        for (const { id } of given) expect([id, all.get(id)]).toEqual([id, latestStart(id, given, slots)]);
      }),
      tried,
    );
  }, 240_000);
  test('in a year of 300 edits none begins earlier than planned, and one begun then leaves all in time', () => {
    const { stages, slots } = yearOfEdits(300);
    const plan = schedule(stages, slots);
    const all = latestStarts(stages, slots, plan);
    const late = (given: readonly Stage[]) => schedule(given, slots).stages.map(({ lateness }) => Math.max(0, lateness ?? Infinity));
    const before = late(stages);
    expect(all.size).toBe(stages.length);
    plan.stages.forEach(({ id, start }, order) => {
      const at = all.get(id) ?? null;
      if (at !== null) expect(at).toBeGreaterThanOrEqual(start ?? Infinity);
      if (at === null || order % 100 !== 0) return;
      const moved = stages.map((each) => (each.id === id ? { ...each, releaseAt: Math.max(each.releaseAt, at) } : each));
      expect(late(moved).every((each, other) => each <= (before[other] ?? 0))).toBe(true);
    });
  });
});

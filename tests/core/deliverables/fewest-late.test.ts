import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fewestLate } from '../../../core/deliverables/fewest-late.ts';
import type { Edit } from '../../../core/deliverables/late-conflicts.ts';
import { schedule, type Slot } from '../../../core/deliverables/schedule.ts';
import { tried } from '../laws.ts';
import { HALF_HOUR } from './cases.ts';

const half = (count: number, closed: readonly number[] = []): Slot[] =>
  Array.from({ length: count }, (_, at) => at)
    .filter((at) => !closed.includes(at))
    .map((at) => ({ start: at * HALF_HOUR, end: (at + 1) * HALF_HOUR }));
/** An edit of stages one after the other, each with its half hours and release. */
const edit = (id: string, due: number, ...works: readonly (readonly [halfHours: number, release: number])[]): Edit => ({
  id,
  stages: works.map(([halfHours, release], step) => ({
    id: `${id}${step}`,
    halfHours,
    releaseAt: release * HALF_HOUR,
    dueAt: due * HALF_HOUR,
    after: step === 0 ? [] : [`${id}${step - 1}`],
  })),
});
const isLate = ({ stages }: Edit, lateness: ReadonlyMap<string, number | null>) =>
  stages.some(({ id }) => (lateness.get(id) ?? Infinity) > 0);

describe('fewest late', () => {
  test('one long edit is late where two would be in order of date', () => {
    const edits = [edit('a', 6, [6, 0]), edit('b', 7, [2, 0]), edit('c', 8, [2, 0])];
    const { late, plan, proven } = fewestLate(edits, half(20));
    expect([late, proven]).toEqual([['a'], true]);
    expect(plan.blocks.map(({ stageId }) => stageId)).toEqual(['b0', 'c0', 'a0']);
    expect(plan.stages.find(({ id }) => id === 'a0')?.lateness).toBe(4 * HALF_HOUR);
  });
  test('nothing is late: it is the ordinary plan', () => {
    const edits = [edit('a', 9, [3, 0], [1, 5]), edit('b', 4, [2, 1])];
    const stages = edits.flatMap((each) => each.stages);
    expect(fewestLate(edits, half(20))).toEqual({ late: [], plan: schedule(stages, half(20)), proven: true });
  });
  test('what cannot be in time is late, and takes no room from the others', () => {
    const { late } = fewestLate([edit('a', 2, [1, 5]), edit('b', 3, [3, 0])], half(20));
    expect(late).toEqual(['a']);
  });
  test('a calendar that is too short leaves late what finds no place', () => {
    const { late, plan } = fewestLate([edit('a', 90, [5, 0]), edit('b', 99, [3, 0])], half(4));
    expect(late).toEqual(['a']);
    expect(plan.stages.map(({ unplaced }) => unplaced)).toEqual([4, 0]);
  });
  test('no edits', () => {
    expect(fewestLate([], half(4))).toEqual({ late: [], plan: { blocks: [], stages: [] }, proven: true });
  });
});

const edits = (most: number, spread: number) =>
  fc
    .array(
      fc.record({
        works: fc.array(fc.tuple(fc.integer({ min: 1, max: 4 }), fc.nat(spread)), { minLength: 1, maxLength: 3 }),
        early: fc.boolean(),
        slack: fc.nat(spread),
      }),
      { minLength: 1, maxLength: most },
    )
    .map((rows) =>
      rows.map(({ works, early, slack }, order) => {
        const given = early ? works.map(([hours]) => [hours, 0] as const) : works;
        return edit(`e${order}-`, Math.max(...given.map(([, release]) => release)) + slack, ...given);
      }),
    );

describe('laws', () => {
  test('of up to eight edits as few are late as in the best of all choices', () => {
    fc.assert(
      fc.property(edits(8, 14), fc.uniqueArray(fc.nat(30), { maxLength: 6 }), (given, closed) => {
        const slots = half(120, closed);
        const { late, plan, proven } = fewestLate(given, slots);
        expect([late.length, proven]).toEqual([fewestOfAll(given, slots), true]);
        const lateness = new Map(plan.stages.map((stage) => [stage.id, stage.lateness]));
        expect(given.filter((each) => isLate(each, lateness)).map(({ id }) => id)).toEqual(late);
      }),
      tried,
    );
  }, 240_000);
  test('of up to sixty never more are late than by date alone; what is said to be late is late, and nothing else', () => {
    fc.assert(
      fc.property(edits(60, 120), (given) => {
        const slots = half(1000);
        const { late, plan } = fewestLate(given, slots);
        const latenessOf = (one: typeof plan) => new Map(one.stages.map((stage) => [stage.id, stage.lateness]));
        const byDate = latenessOf(
          schedule(
            given.flatMap(({ stages }) => stages),
            slots,
          ),
        );
        expect(late.length).toBeLessThanOrEqual(given.filter((each) => isLate(each, byDate)).length);
        const lateness = latenessOf(plan);
        expect(given.filter((each) => isLate(each, lateness)).map(({ id }) => id)).toEqual(late);
        expect(fewestLate(given, slots)).toEqual({ late, plan, proven: expect.any(Boolean) });
      }),
      { ...tried, numRuns: Math.round(tried.numRuns / 10) },
    );
  }, 600_000);
});

/** The slow plain twin: every choice of what may be late. */
function fewestOfAll(given: readonly Edit[], slots: readonly Slot[]): number {
  let fewest = given.length;
  for (let choice = 0; choice < 2 ** given.length; choice += 1) {
    const kept = given.filter((_, order) => choice & (1 << order));
    if (given.length - kept.length >= fewest) continue;
    const plan = schedule(
      kept.flatMap(({ stages }) => stages),
      slots,
    );
    if (plan.stages.every(({ lateness }) => lateness !== null && lateness <= 0)) fewest = given.length - kept.length;
  }
  return fewest;
}

import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { schedule, type Plan, type Slot } from '../../../core/deliverables/schedule.ts';
import { CircleError, type Stage } from '../../../core/deliverables/stages.ts';
import { tried } from '../laws.ts';
import { leastLateness } from './twin.ts';

const HALF = 30 * 60_000;
/** Half hours from zero, those in `closed` left out. */
const slotsOf = (count: number, closed: readonly number[] = []): Slot[] =>
  Array.from({ length: count }, (_, at) => at)
    .filter((at) => !closed.includes(at))
    .map((at) => ({ start: at * HALF, end: (at + 1) * HALF }));
const stage = (id: string, halfHours: number, due: number, release = 0, after: string[] = []): Stage => ({
  id,
  halfHours,
  releaseAt: release * HALF,
  dueAt: due * HALF,
  after,
});
const shown = (plan: Plan) => plan.blocks.map(({ stageId, start, end }) => `${stageId} ${start / HALF}-${end / HALF}`);
const finishes = (plan: Plan) => Object.fromEntries(plan.stages.map(({ id, finish }) => [id, finish === null ? null : finish / HALF]));
const worst = (plan: Plan) => Math.max(...plan.stages.map(({ lateness }) => lateness ?? Infinity));

describe('the schedule', () => {
  test('what is due first comes first, and is put before work that has begun', () => {
    const plan = schedule([stage('long', 5, 10), stage('soon', 1, 3, 1)], slotsOf(8));
    expect(shown(plan)).toEqual(['long 0-1', 'soon 1-2', 'long 2-6']);
  });
  test('a predecessor takes the due date of what waits for it', () => {
    const plan = schedule([stage('ingest', 2, 99), stage('cut', 2, 5, 0, ['ingest']), stage('other', 2, 6)], slotsOf(8));
    expect(shown(plan)).toEqual(['ingest 0-2', 'cut 2-4', 'other 4-6']);
  });
  test('closed half hours are left out; what has no room says by how much', () => {
    const plan = schedule([stage('a', 4, 4)], slotsOf(5, [1, 2]));
    expect(shown(plan)).toEqual(['a 0-1', 'a 3-5']);
    expect(plan.stages[0]).toMatchObject({ finish: null, lateness: null, unplaced: 1 });
  });
  test('without any open half hour nothing is planned and everything is left', () => {
    expect(schedule([stage('a', 4, 4)], []).stages).toEqual([{ id: 'a', start: null, finish: null, lateness: null, unplaced: 4 }]);
  });
  test('equals stay as they were planned before', () => {
    const before = schedule([stage('b', 2, 9)], slotsOf(9)).blocks;
    expect(shown(schedule([stage('a', 2, 9), stage('b', 2, 9)], slotsOf(9), before))).toEqual(['b 0-2', 'a 2-4']);
  });
  test('a tie between plan and precedence is one order: the predecessor first', () => {
    const before = [
      { stageId: 'cut', start: HALF, end: 2 * HALF },
      { stageId: 'other', start: 3 * HALF, end: 4 * HALF },
      { stageId: 'ingest', start: 5 * HALF, end: 6 * HALF },
    ];
    const plan = schedule([stage('cut', 1, 9, 0, ['ingest']), stage('other', 1, 9), stage('ingest', 1, 9)], slotsOf(9), before);
    expect(shown(plan)).toEqual(['other 0-1', 'ingest 1-2', 'cut 2-3']);
  });
  test('stages that wait for one another are refused by name', () => {
    const circle = [stage('a', 1, 9, 0, ['c']), stage('b', 1, 9, 0, ['a']), stage('c', 1, 9, 0, ['b'])];
    expect(() => schedule(circle, slotsOf(9))).toThrow(CircleError);
    try {
      schedule(circle, slotsOf(9));
    } catch (error) {
      expect(new Set((error as CircleError).circle)).toEqual(new Set(['a', 'b', 'c']));
    }
  });
  test('not promised: a wait that begins when the cut is sent. Two films of 1 and 2, due at 3, with waits of 1 and 2 in between', () => {
    /** First the cuts; then what follows them, released by when the plan sends each cut. */
    const worstOf = (films: readonly ('A' | 'B')[]) => {
      const wait = { A: 1, B: 2 };
      const cuts = films.map((film) => stage(`${film} cut`, 1, 3));
      const sent = finishes(schedule(cuts, slotsOf(9)));
      const rest = films.map((film) => stage(`${film} rest`, 2, 3, (sent[`${film} cut`] ?? Infinity) + wait[film], [`${film} cut`]));
      return worst(schedule([...cuts, ...rest], slotsOf(9))) / HALF;
    };
    expect([worstOf(['B', 'A']), worstOf(['A', 'B'])]).toEqual([4, 3]);
  });
  test('a stage without work of its own hands on its release', () => {
    const plan = schedule([stage('cut', 1, 9), stage('wait', 0, 9, 4, ['cut']), stage('rest', 1, 9, 0, ['wait'])], slotsOf(9));
    expect(shown(plan)).toEqual(['cut 0-1', 'rest 4-5']);
  });
});

describe('laws', () => {
  const cases = fc
    .record({
      works: fc.array(
        fc.record({
          halfHours: fc.integer({ min: 1, max: 3 }),
          due: fc.integer({ min: 0, max: 14 }),
          release: fc.integer({ min: 0, max: 6 }),
        }),
        { minLength: 1, maxLength: 8 },
      ),
      waits: fc.array(fc.tuple(fc.nat(7), fc.nat(7)), { maxLength: 5 }),
      closed: fc.uniqueArray(fc.nat(16), { maxLength: 5 }),
      turn: fc.nat(7),
    })
    .filter(({ works }) => works.reduce((all, { halfHours }) => all + halfHours, 0) <= 12)
    .map(({ works, waits, closed, turn }) => {
      const stages = works.map(({ halfHours, due, release }, index) =>
        stage(
          `s${index}`,
          halfHours,
          due,
          release,
          waits.flatMap(([one, other]) => (Math.max(one, other) === index && one !== other ? [`s${Math.min(one, other)}`] : [])),
        ),
      );
      const moved = stages.map((_, index) => stages[(index + turn) % stages.length] as Stage);
      return { stages: moved, slots: slotsOf(30, closed) };
    });

  test('the largest lateness is that of the best of all schedules', () => {
    fc.assert(
      fc.property(cases, ({ stages, slots }) => {
        expect(worst(schedule(stages, slots))).toBe(leastLateness(stages, slots));
      }),
      tried,
    );
  }, 120_000);
  test('no half hour is used twice, releases and precedence are kept, all work is done', () => {
    fc.assert(
      fc.property(cases, ({ stages, slots }) => {
        const plan = schedule(stages, slots);
        const open = new Set(slots.map(({ start }) => start));
        const used = plan.blocks.flatMap(({ stageId, start, end }) =>
          Array.from({ length: (end - start) / HALF }, (_, step) => ({ stageId, at: start + step * HALF })),
        );
        expect(new Set(used.map(({ at }) => at)).size).toBe(used.length);
        for (const { at } of used) expect(open.has(at)).toBe(true);
        const done = finishes(plan);
        for (const { id, halfHours, releaseAt, after } of stages) {
          const own = used.filter(({ stageId }) => stageId === id);
          expect(own.length).toBe(halfHours);
          for (const { at } of own) {
            expect(at).toBeGreaterThanOrEqual(releaseAt);
            for (const before of after) expect(at / HALF).toBeGreaterThanOrEqual(done[before] ?? Infinity);
          }
        }
      }),
      tried,
    );
  });
  test('more open half hours never make the largest lateness worse', () => {
    fc.assert(
      fc.property(cases, ({ stages, slots }) => {
        expect(worst(schedule(stages, slotsOf(30)))).toBeLessThanOrEqual(worst(schedule(stages, slots)));
      }),
      tried,
    );
  });
  test('a plan laid again over itself is the same plan', () => {
    fc.assert(
      fc.property(cases, ({ stages, slots }) => {
        const plan = schedule(stages, slots);
        expect(schedule(stages, slots, plan.blocks)).toEqual(plan);
      }),
      tried,
    );
  });
});

/**
 * The schedule's largest lateness against an integer-program solver: it can be kept, and half an hour less cannot.
 * @source HiGHS 1.15, branch and cut for mixed-integer programs (Q. Huangfu and J. A. J. Hall, Mathematical Programming Computation 10, 2018)
 */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { schedule } from '../../../core/deliverables/schedule.ts';
import type { Stage } from '../../../core/deliverables/stages.ts';
import { editCases, HALF_HOUR, type EditCase } from '../../core/deliverables/cases.ts';
import { leastLateness } from '../../core/deliverables/twin.ts';
import { tried } from '../../core/laws.ts';
import { canKeep } from './integer-program.ts';

/** The solver takes up to a second a case: a few here, some hundreds in the long run. */
const few = { seed: tried.seed, numRuns: Math.max(6, Math.round(tried.numRuns / 40)), endOnFailure: true };
const largest = ({ stages, slots }: EditCase) => Math.max(...schedule(stages, slots).stages.map(({ lateness }) => lateness ?? Infinity));

describe('with releases, precedence and closed half hours', () => {
  test.each([
    [2, 12],
    [13, 30],
    [31, 59],
    [60, 60],
  ])(
    'of %i to %i stages the solver finds no schedule that is better',
    (min, max) => {
      fc.assert(
        fc.property(editCases({ min, max }), (given) => {
          const least = largest(given);
          expect([canKeep(given.stages, given.slots, least), canKeep(given.stages, given.slots, least - HALF_HOUR)]).toEqual([true, false]);
        }),
        few,
      );
    },
    600_000,
  );
  test('and the solver, asked by halves, comes to what all schedules of few stages come to', () => {
    fc.assert(
      fc.property(editCases({ min: 1, max: 4 }, 3), ({ stages, slots }) => {
        expect(leastByHalves(stages, slots)).toBe(leastLateness(stages, slots));
      }),
      { ...few, numRuns: few.numRuns * 4 },
    );
  }, 600_000);
});

/** The least lateness (ms) that the solver can keep, found by halving what lies between surely too little and surely enough. */
function leastByHalves(stages: readonly Stage[], slots: EditCase['slots']): number {
  let [low, high] = [-100, 100];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (canKeep(stages, slots, middle * HALF_HOUR)) high = middle;
    else low = middle;
  }
  return high * HALF_HOUR;
}

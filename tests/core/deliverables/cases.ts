/** Invented edit work of any size: releases, precedence, closed half hours. */
import * as fc from 'fast-check';
import type { Slot } from '../../../core/deliverables/schedule.ts';
import type { Stage } from '../../../core/deliverables/stages.ts';

export const HALF_HOUR = 30 * 60_000;
export type EditCase = { stages: Stage[]; slots: Slot[] };

/**
 * Stages, each behind those that it waits for, and half hours of which some are closed, enough for all the work.
 * @param count how many stages, at least and at most
 * @param work how many half hours a stage has at most
 */
export function editCases(count: { min: number; max: number }, work = 6): fc.Arbitrary<EditCase> {
  return fc.integer(count).chain((size) =>
    fc
      .record({
        works: fc.array(
          fc.record({
            halfHours: fc.integer({ min: 1, max: work }),
            release: fc.nat(size * 3),
            due: fc.nat(size * 5),
            waits: fc.array(fc.integer({ min: 1, max: 6 }), { maxLength: 2 }),
          }),
          { minLength: size, maxLength: size },
        ),
        closed: fc.uniqueArray(fc.nat(size * 5), { maxLength: size * 2 }),
      })
      .map(({ works, closed }) => {
        const stages = works.map(({ halfHours, release, due, waits }, number) => ({
          id: `s${number}`,
          halfHours,
          releaseAt: release * HALF_HOUR,
          dueAt: due * HALF_HOUR,
          after: [...new Set(waits.filter((back) => back <= number).map((back) => `s${number - back}`))],
        }));
        const all = works.reduce((sum, { halfHours }) => sum + halfHours, 0) + size * 3 + closed.length;
        const shut = new Set(closed);
        const slots = Array.from({ length: all }, (_, at) => at)
          .filter((at) => !shut.has(at))
          .map((at) => ({ start: at * HALF_HOUR, end: (at + 1) * HALF_HOUR }));
        return { stages, slots };
      }),
  );
}

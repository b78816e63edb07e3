/**
 * Fewest late on the textbook sets of one machine with all jobs ready at once.
 * @source J. M. Moore, An n job, one machine sequencing algorithm for minimizing the number of late jobs, Management Science 15(1), 1968; a stored exercise of ten jobs
 * From memory: the set of five jobs, M. Pinedo, Scheduling: Theory, Algorithms, and Systems, example 3.3.3.
 */
import { expect, test } from 'vitest';
import { fewestLate } from '../../../core/deliverables/fewest-late.ts';
import { HALF_HOUR } from '../../core/deliverables/cases.ts';

const slots = Array.from({ length: 300 }, (_, at) => ({ start: at * HALF_HOUR, end: (at + 1) * HALF_HOUR }));
const planned = (works: readonly number[], dues: readonly number[]) => {
  const edits = works.map((halfHours, order) => {
    const id = String(order + 1);
    return { id, stages: [{ id, halfHours, releaseAt: 0, dueAt: (dues[order] ?? 0) * HALF_HOUR, after: [] }] };
  });
  const { late, plan, proven } = fewestLate(edits, slots);
  const inTime = plan.blocks.filter(({ stageId }) => !late.includes(stageId));
  return { late, proven, inTime: inTime.map(({ stageId }) => Number(stageId)), done: (inTime.at(-1)?.end ?? 0) / HALF_HOUR };
};

test('five jobs: the second and the first are dropped', () => {
  expect(planned([7, 8, 4, 6, 6], [9, 17, 18, 19, 21])).toEqual({ late: ['1', '2'], proven: true, inTime: [3, 4, 5], done: 16 });
});
test('ten jobs: two are late where four would be by date, the last in time is done at 147', () => {
  const works = [19, 23, 5, 31, 17, 8, 32, 41, 26, 18];
  expect(planned(works, [48, 75, 170, 215, 205, 240, 85, 67, 100, 95])).toEqual({
    late: ['7', '8'],
    proven: true,
    inTime: [1, 2, 10, 9, 3, 5, 4, 6],
    done: 147,
  });
});

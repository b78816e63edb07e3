/**
 * How much is done to plan a year anew, as on each key that is pressed: counted by what is run, not timed. Twice the edits may cost twice
 * the work and the logarithm's growth, not more.
 */
import { Session } from 'node:inspector/promises';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { schedule } from '../../../core/deliverables/schedule.ts';
import { yearOfEdits } from './year.ts';

const session = new Session();
beforeAll(async () => {
  session.connect();
  await session.post('Profiler.enable');
  await session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: true });
});
afterAll(() => session.disconnect());

/** Times that any piece of core/deliverables is run. */
async function counted(act: () => unknown): Promise<number> {
  await session.post('Profiler.takePreciseCoverage');
  act();
  const { result } = await session.post('Profiler.takePreciseCoverage');
  const functions = result.filter(({ url }) => url.includes('/core/deliverables/')).flatMap((script) => script.functions);
  return functions.flatMap(({ ranges }) => ranges).reduce((sum, { count }) => sum + count, 0);
}
const nLogN = (size: number) => size * Math.log2(size);

test.each([
  ['as they come', 0],
  ['all there from the start', 1],
])('300 edits of a year cost no more than n log n of what 75 cost, %s', async (_, early) => {
  const cost: number[] = [];
  for (const edits of [75, 150, 300, 600]) {
    const year = yearOfEdits(edits);
    const stages = early ? year.stages.map((stage) => ({ ...stage, releaseAt: 0 })) : year.stages;
    const run = await counted(() => schedule(stages, year.slots));
    expect(run).toBeGreaterThan(edits * 10);
    cost.push(run / nLogN(stages.length + year.slots.length));
  }
  const [first = 0, ...more] = cost;
  // Years differ in how full they are; work that grew as the square would come to six times as much here.
  for (const each of more) expect(each).toBeLessThan(first * 1.5);
});
test('the half hours of a year cost no more where 20 times as many are pinned', async () => {
  const [few, many] = [yearOfEdits(30), yearOfEdits(600)];
  expect(many.slots.length).toBeGreaterThan(few.slots.length);
  const cost = [await counted(() => yearOfEdits(30)), await counted(() => yearOfEdits(600))] as const;
  expect(cost[1] / many.slots.length).toBeLessThan((cost[0] / few.slots.length) * 1.5);
});

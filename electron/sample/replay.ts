/**
 * The sample year told in order of time through the program's own procedures, the clock standing at each step where it stood then.
 */
import { setImmediate as breathe } from 'node:timers/promises';
import { sample } from '../../assets/sample/index.ts';
import type { Context } from '../api/context.ts';
import { placeFinder, type Cast, type Told } from './cast.ts';
import { doDeed, firstDateOf } from './deeds.ts';
import { editSteps } from './edit-steps.ts';
import { houseSteps, type Step } from './house.ts';
import { momentOf, todayAt } from './dates.ts';

/** How far the telling is, in steps. */
export type Progress = { done: number; total: number };

/**
 * Tell the sample into an empty store.
 * @param base context whose store is filled; its clock is not read
 * @param now epoch milliseconds of the day that the sample is told for; what lies after it has not happened
 */
export async function replay(base: Context, now: number, onStep: (progress: Progress) => void): Promise<void> {
  let clock = now;
  const context: Context = { ...base, now: () => clock };
  const place = placeFinder(context);
  const { zone } = await place(sample.setup.home);
  const cast: Cast = { context, today: todayAt(now, zone, sample.jobs), clients: new Map(), place };
  const steps = [...houseSteps(cast), ...jobSteps(cast)].filter(({ at }) => at <= now).sort((a, b) => a.at - b.at);
  for (const [index, { at, act }] of steps.entries()) {
    clock = at;
    await act();
    onStep({ done: index + 1, total: steps.length });
    // The door goes on answering meanwhile.
    await breathe();
  }
}

function jobSteps(cast: Cast): Step[] {
  return sample.jobs.flatMap((job) => {
    const told: Told = { job, id: '', first: firstDateOf(job, cast) };
    const steps = job.steps.map(([at, deed, given]) => ({
      at: momentOf(at, told.first, cast.today),
      act: () => doDeed(cast, told, deed, given),
    }));
    return [...steps, ...editSteps(cast, told)];
  });
}

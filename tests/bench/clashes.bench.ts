/**
 * All clashes among 100,000 intervals, in one pass, against a general-purpose interval tree that is filled and asked for each of them.
 */
import { Interval, IntervalTree } from '@flatten-js/interval-tree';
import { meetingPairs } from '../../core/fit/meeting.ts';
import { pair, report } from './harness.ts';

const COUNT = 100_000;
const HOUR = 3_600_000;

/** The same on every computer: a linear congruential generator (Numerical Recipes' constants). */
function dice(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state % below;
  };
}

const roll = dice(20_261_126);
/** Bookings of one to ten days, strewn so that each meets about four others. */
const spans = Array.from({ length: COUNT }, () => {
  const startAt = roll(COUNT * 60) * HOUR;
  return { startAt, endAt: startAt + (1 + roll(240)) * HOUR };
});

function byTree(): number {
  const tree = new IntervalTree<number>();
  // Its intervals are closed: a last instant that belongs to them makes touching no overlap.
  spans.forEach(({ startAt, endAt }, index) => tree.insert(new Interval(startAt, endAt - 1), index));
  let met = 0;
  for (const { startAt, endAt } of spans) met += tree.search(new Interval(startAt, endAt - 1)).length - 1;
  return met / 2;
}

report(
  await pair({
    name: `all clashes among ${COUNT.toLocaleString('en')} intervals`,
    against: 'an interval tree from the registry, filled and asked for each interval',
    aim: 0.5,
    rounds: 3,
    ours: () => meetingPairs(spans).length,
    theirs: byTree,
    prove: () => {
      const [ours, theirs] = [meetingPairs(spans).length, byTree()];
      if (ours !== theirs) throw new Error(`${ours} pairs against ${theirs}`);
    },
  }),
);

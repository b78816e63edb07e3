/**
 * The edit schedule of 500 deliverables, 2,000 stages, against an integer-program solver on the same instance, which must come to the same
 * largest lateness; and a year of 300 planned anew as on each key that is pressed, against what a screen of 60 Hz allows a frame and
 * against the 100 ms up to which an answer is felt to be at once (J. Nielsen, Usability Engineering, chapter 5, 1993).
 */
import { latestStarts } from '../../core/deliverables/latest-start.ts';
import { schedule } from '../../core/deliverables/schedule.ts';
import { yearOfEdits } from '../core/deliverables/year.ts';
import { canKeep } from '../reference/deliverables/integer-program.ts';
import { pair, report, within } from './harness.ts';

const FRAME_MS = 16.7;
const AT_ONCE_MS = 100;
const HALF_HOUR = 30 * 60_000;
const ROUNDS = 7;
const KEYS = 40;

const large = yearOfEdits(500);
const largest = () => Math.max(...schedule(large.stages, large.slots).stages.map(({ lateness }) => lateness ?? Infinity));
const least = largest();
const solved = () => [canKeep(large.stages, large.slots, least), canKeep(large.stages, large.slots, least - HALF_HOUR)];

const year = yearOfEdits(300);
const plan = () => schedule(year.stages, year.slots);
const whole = () => {
  const { stages, slots } = yearOfEdits(300);
  return latestStarts(stages, slots, schedule(stages, slots));
};

report(
  await pair({
    name: `edit schedule, 500 deliverables, ${large.stages.length} stages: the least largest lateness, ${(least / 3_600_000).toFixed(1)} h`,
    against: 'an integer-program solver told that lateness, which says that it can be kept and half an hour less cannot; it plans nothing',
    aim: 0.1,
    rounds: 3,
    ours: largest,
    theirs: solved,
    prove: () => {
      if (solved().join() !== 'true,false') throw new Error('the solver does not come to the same largest lateness');
    },
  }),
  within(FRAME_MS, keys(plan), {
    name: 'edit schedule, a year of 300 deliverables planned anew: 95 of 100 keys',
    against: 'what a screen of 60 Hz allows a frame',
  }),
  within(AT_ONCE_MS, keys(whole), {
    name: 'the same with the year made, its half hours and all latest starts: 95 of 100 keys',
    against: 'the 100 ms up to which an answer is felt to be at once',
  }),
);

/** The times of some keys in each of some rounds, milliseconds; the first round is not counted. */
function keys(act: () => unknown): number[][] {
  const rounds = Array.from({ length: ROUNDS + 1 }, () =>
    Array.from({ length: KEYS }, () => {
      const began = performance.now();
      act();
      return performance.now() - began;
    }),
  );
  return rounds.slice(1);
}

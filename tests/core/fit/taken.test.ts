import { expect, test } from 'vitest';
import type { TryOn } from '../../../core/contract/try-on.ts';
import { assess, type FitInput } from '../../../core/fit/check.ts';
import { movedBy } from '../../../core/fit/moved.ts';
import { nearestDates } from '../../../core/fit/nearest.ts';
import { dateLater } from '../../../core/time/wall.ts';
import { inputOf } from '../../situations/shape.ts';
import { duluth, fargo, milwaukee } from '../trips/places.ts';
import { CASES, DAY, generatedYear, YEAR_START } from './generated.ts';

const WITHIN = 8;
const SHIFTS = Array.from({ length: WITHIN }, (_, index) => [-index - 1, index + 1]).flat();

/** Every date by the whole check. */
function slowly(input: FitInput): string[] {
  const answers = SHIFTS.flatMap((shift) => {
    const moved = movedBy(input.candidate, shift);
    if (!moved || moved.days.some(({ callAt }) => callAt <= input.now)) return [];
    const { answer } = assess({ ...input, candidate: { ...moved, legs: [] }, replyBy: null });
    return answer === 'not possible' ? [] : [`${shift} ${answer}`];
  });
  return [...answers.filter((each) => each.endsWith(' free')), ...answers.filter((each) => each.endsWith(' free if'))];
}
const quickly = (input: FitInput) => nearestDates(input, WITHIN, 99).map(({ shiftDays, answer }) => `${shiftDays} ${answer}`);

test(`dates that are skipped are those that are not possible, in ${CASES / 4} generated years, tried on or not`, () => {
  let left = 0;
  for (let seed = 1; seed <= CASES / 4; seed += 1) {
    const { book, candidate } = generatedYear(seed);
    const [day] = candidate.days;
    const jobId = book.jobs[0]?.id;
    const tries: TryOn[] = [
      {},
      { withoutJobs: [jobId ?? ''] },
      { firstCallLaterMinutes: 300 },
      { hands: [{ handId: 'nobody', dates: [dateLater(day?.date ?? '', 1)] }] },
    ];
    const input = { book, candidate, now: YEAR_START - 400 * DAY, replyBy: null, tryOn: tries[seed % tries.length] };
    const found = quickly(input);
    expect(`${seed}: ${found.join()}`).toBe(`${seed}: ${slowly(input).join()}`);
    left += SHIFTS.length - found.length;
  }
  expect(left).toBeGreaterThan(CASES / 4);
});

test('over a change of the clocks as well', () => {
  const input = inputOf({
    name: '',
    home: duluth,
    answer: 'free',
    findings: [],
    booked: [{ title: 'Night market', place: duluth, days: ['2027-03-13 20:00-04:00', '2027-03-15 01:30-02:30'] }],
    candidate: { place: duluth, days: ['2027-03-10 02:30-09:00', '2027-03-11 04:00-09:00'] },
  });
  const found = quickly(input);
  expect(found).toEqual(slowly(input));
  expect(found.length).toBeGreaterThan(0);
});

test('a year of days against fifty jobs is skipped without the check: over each of 180 dates one of them lies', () => {
  const from = (date: string, later: number) => dateLater(date, later);
  const booked = Array.from({ length: 50 }, (_, index) => ({
    title: `Job ${index}`,
    place: [duluth, fargo, milwaukee][index % 3] ?? duluth,
    days: [`${from('2026-05-20', index * 9)} 09:00-17:00`],
  }));
  const days = Array.from({ length: 366 }, (_, index) => `${from('2026-06-01', index)} 08:00-18:00`);
  const input = inputOf({ name: '', home: duluth, answer: 'free', findings: [], booked, candidate: { place: fargo, days } });
  const once = timed(() => assess(input));
  expect(timed(() => expect(nearestDates(input, 90, 6)).toEqual([]))).toBeLessThan(20 * once);
});

/** Milliseconds; the whole check of each date would take 180 times as long as one. */
function timed(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

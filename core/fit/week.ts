/**
 * Paid time and own driving in any 168 hours. A caution over sixty (common practice).
 */
import type { Finding, Lift } from '../contract/fit.ts';
import type { Place } from '../contract/parts.ts';
import { lengthInWords } from '../words/amounts.ts';
import { momentAt } from '../words/moments.ts';
import { handLift } from './lifts.ts';
import type { Work } from './work.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const WEEK = 168 * HOUR;
const LIMIT = 60 * HOUR;

/** The fullest 168 hours that the candidate makes fuller. A sum over a sliding window is largest where it begins or ends with some work. */
export function weekFindings(work: readonly Work[], without: readonly Work[], home: Place): Finding[] {
  const counted = work.filter((item) => item.counts);
  const before = without.filter((item) => item.counts);
  let fullest = { start: 0, length: LIMIT };
  for (const start of counted.flatMap((item) => [item.startAt, item.endAt - WEEK])) {
    const length = within(counted, start);
    if (length > fullest.length && length > within(before, start)) fullest = { start, length };
  }
  if (fullest.length === LIMIT) return [];
  const inAWeek = Math.ceil(fullest.length / MINUTE);
  return [
    {
      kind: 'sixty hours',
      hardness: 'know',
      concerns: [],
      numbers: { inAWeek, limit: LIMIT / MINUTE },
      sentence: `In the seven days from ${momentAt(fullest.start, home, home)} you would work and drive ${lengthInWords(inAWeek)}, over 60 h.`,
      lifts: lastOwnDay(counted, fullest.start),
    },
  ];
}

/** A hand for the last day of the candidate that falls into it. */
function lastOwnDay(work: readonly Work[], start: number): Lift[] {
  const last = work.findLast((item) => item.own && item.date !== null && item.startAt < start + WEEK && item.endAt > start);
  return last?.date ? [handLift([{ date: last.date }])] : [];
}

function within(work: readonly Work[], start: number): number {
  return work.reduce((sum, { startAt, endAt }) => sum + Math.max(0, Math.min(endAt, start + WEEK) - Math.max(startAt, start)), 0);
}

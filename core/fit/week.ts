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

/**
 * The fullest 168 hours that the candidate makes fuller. Where it takes ways away, so that the worst of all the windows that meet it gets
 * better, it worsens nothing by filling one of them.
 */
export function weekFindings(work: readonly Work[], without: readonly Work[], home: Place): Finding[] {
  const counted = work.filter((item) => item.counts);
  const before = without.filter((item) => item.counts);
  let fullest = { start: 0, length: LIMIT };
  for (const start of edgesOf(counted)) {
    const length = within(counted, start);
    if (length <= fullest.length || length <= within(before, start)) continue;
    if (worstMeeting(start, counted) >= worstMeeting(start, before)) fullest = { start, length };
  }
  if (fullest.length === LIMIT) return [];
  const inAWeek = Math.ceil(fullest.length / MINUTE);
  const edited = counted.some(
    (item) => item.date === null && item.place === item.to && item.startAt < fullest.start + WEEK && item.endAt > fullest.start,
  );
  const worked = edited ? 'work, drive and edit' : 'work and drive';
  return [
    {
      kind: 'sixty hours',
      hardness: 'know',
      concerns: [],
      numbers: { inAWeek, limit: LIMIT / MINUTE },
      sentence: `In the seven days from ${momentAt(fullest.start, home, home)} you would ${worked} ${lengthInWords(inAWeek)}, over 60 h.`,
      lifts: lastOwnDay(counted, fullest.start),
    },
  ];
}

/** A hand for the last day of the candidate that falls into it. */
function lastOwnDay(work: readonly Work[], start: number): Lift[] {
  const last = work.findLast((item) => item.own && item.date !== null && item.startAt < start + WEEK && item.endAt > start);
  return last?.date ? [handLift([{ date: last.date }])] : [];
}

/** A sum over a sliding window is largest where it begins or ends with some work. */
function edgesOf(work: readonly Work[]): number[] {
  return work.flatMap((item) => [item.startAt, item.endAt - WEEK]);
}

/** The fullest of the windows that have time in common with the one from here. */
function worstMeeting(start: number, work: readonly Work[]): number {
  const meeting = edgesOf(work).filter((edge) => Math.abs(edge - start) < WEEK);
  return Math.max(0, ...meeting.map((edge) => within(work, edge)));
}

function within(work: readonly Work[], start: number): number {
  return work.reduce((sum, { startAt, endAt }) => sum + Math.max(0, Math.min(endAt, start + WEEK) - Math.max(startAt, start)), 0);
}

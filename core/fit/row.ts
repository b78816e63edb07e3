/**
 * Days in a row: a date counts if it has paid time or more than four hours of travel. A caution from the seventh (common practice).
 */
import type { Finding, Lift } from '../contract/fit.ts';
import type { Place } from '../contract/parts.ts';
import { wallAt } from '../time/read.ts';
import { nextDate } from '../time/wall.ts';
import { dateInWords, withoutYear } from '../words/dates.ts';
import type { BookJob } from './book.ts';
import { handLift } from './lifts.ts';
import type { Work } from './work.ts';

const SEVENTH = 7;
const TRAVEL_COUNTS = 4 * 3_600_000;

/** Runs that the candidate makes or lengthens. */
export function rowFindings(work: readonly Work[], without: readonly Work[], candidate: BookJob, home: Place): Finding[] {
  const old = new Set(datesOf(without, home));
  const own = new Set(
    datesOf(
      work.filter((item) => item.own),
      home,
    ),
  );
  return runsOf(datesOf(work, home))
    .filter((run) => run.length >= SEVENTH && run.some((date) => own.has(date) && !old.has(date)))
    .map((run) => {
      const from = run[0] ?? '';
      const to = run.at(-1) ?? '';
      return {
        kind: 'seventh day',
        hardness: 'know',
        concerns: [],
        numbers: { daysInARow: run.length, from, to },
        sentence: `That makes ${run.length} days in a row without one off, from ${dateInWords(from)} to ${dateInWords(to)}.`,
        lifts: dayOff(run, candidate),
      };
    });
}

/** The candidate's date that leaves the shortest runs on both sides: called off, where it is not the only one, or a hand's. */
function dayOff(run: readonly string[], { days }: BookJob): Lift[] {
  const longest = (date: string) => Math.max(run.indexOf(date), run.length - 1 - run.indexOf(date));
  const best = days
    .filter(({ date }) => run.includes(date))
    .sort((a, b) => longest(a.date) - longest(b.date) || (a.date < b.date ? -1 : 1))[0];
  if (!best) return [];
  const { date } = best;
  const off = days.filter((day) => day.date === date).map(({ kind }) => ({ jobId: null, date, kind, to: null }));
  const alone = off.length === days.length;
  return [
    ...(alone ? [] : [{ kind: 'day off', label: `Ask for ${withoutYear(dateInWords(date))} off`, tryOn: { daysMoved: off } }]),
    handLift([best]),
  ];
}

function datesOf(work: readonly Work[], home: Place): string[] {
  const travel = new Map<string, number>();
  const dates = new Set<string>();
  for (const item of work) {
    if (item.date !== null) dates.add(item.date);
    else for (const [date, length] of byDate(item, home.zone)) travel.set(date, (travel.get(date) ?? 0) + length);
  }
  for (const [date, length] of travel) if (length > TRAVEL_COUNTS) dates.add(date);
  return [...dates].sort();
}

function* byDate({ startAt, endAt }: Work, zone: string): Generator<[string, number]> {
  let date = wallAt(startAt, zone).slice(0, 10);
  for (let from = startAt; from < endAt; date = nextDate(date)) {
    const midnight = Temporal.PlainDate.from(nextDate(date)).toZonedDateTime(zone).epochMilliseconds;
    yield [date, Math.min(midnight, endAt) - from];
    from = Math.min(midnight, endAt);
  }
}

function runsOf(dates: readonly string[]): string[][] {
  const runs: string[][] = [];
  for (const date of dates) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last && nextDate(last) === date) run.push(date);
    else runs.push([date]);
  }
  return runs;
}

/**
 * Part 3 of the check: long duty, many days in a row, many hours in a week. Cautions only, never permission.
 * The limits are common practice; published limits for commercial drivers stand beside them in the tests.
 */
import type { Finding } from '../contract/fit.ts';
import type { Place } from '../contract/parts.ts';
import { wallAt } from '../time/read.ts';
import { dateLater, nextDate } from '../time/wall.ts';
import { lengthInWords } from '../words/amounts.ts';
import { dateInWords } from '../words/dates.ts';
import { momentAt } from '../words/moments.ts';
import type { BookJob } from './book.ts';
import { concerning } from './findings.ts';
import { movesOf, type Ground, type Move } from './moves.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const LONGEST_DUTY = 14 * HOUR;
const DAYS_IN_A_ROW = 7;
const TRAVEL_COUNTS = 4 * HOUR;
const WEEK = 168 * HOUR;
const HOURS_IN_A_WEEK = 60 * HOUR;

/** Paid time or movement. */
type Work = { startAt: number; endAt: number; place: Place; to: Place; own: boolean; date: string | null; counts: boolean };

/** Cautions that the candidate causes or worsens; of the others only ink counts. */
export function loadFindings(candidate: BookJob, ink: readonly BookJob[], ground: Ground): Finding[] {
  const without = ink.flatMap((job) =>
    workOf(
      job,
      ink.filter((other) => other !== job),
      ground,
      false,
    ),
  );
  const fixed = [...ink, candidate];
  const planned = fixed.flatMap((job) =>
    workOf(
      job,
      fixed.filter((other) => other !== job),
      ground,
      job === candidate,
    ),
  );
  return [
    ...dutyFindings(candidate, ink, ground),
    ...rowFindings(planned, without, ground.home),
    ...weekFindings(planned, without, candidate, ground.home),
  ];
}

function workOf(job: BookJob, fixed: readonly BookJob[], ground: Ground, own: boolean): Work[] {
  const paid = job.days.map((day): Work => ({
    startAt: day.callAt,
    endAt: day.wrapAt,
    place: job.place,
    to: job.place,
    own,
    date: day.date,
    counts: true,
  }));
  // A paid travel day is that movement itself.
  const travelled = job.days.filter((day) => day.kind === 'travel');
  const moves = movesOf(job, fixed, ground).moves.filter(
    (move) => !travelled.some((day) => day.callAt < move.end && day.wrapAt > move.start),
  );
  return [...paid, ...moves.map((move) => workOfMove(move, own))];
}

function workOfMove(move: Move, own: boolean): Work {
  return { startAt: move.start, endAt: move.end, place: move.from, to: move.to, own, date: null, counts: move.mode === 'drive' };
}

/**
 * Duty as it is when the way is driven on the day itself: from door-out to the wrap, or from the call to door-in.
 */
function dutyFindings(candidate: BookJob, ink: readonly BookJob[], ground: Ground): Finding[] {
  const fixed = [...ink, candidate];
  const before = spansOf(
    ink.flatMap((job) =>
      workOnTheDay(
        job,
        ink.filter((other) => other !== job),
        ground,
        false,
      ),
    ),
    ground,
  );
  const spans = spansOf(
    fixed.flatMap((job) =>
      workOnTheDay(
        job,
        fixed.filter((other) => other !== job),
        ground,
        job === candidate,
      ),
    ),
    ground,
  );
  return spans
    .filter((span) => span.own && span.endAt - span.startAt > LONGEST_DUTY)
    .filter((span) => !before.some((old) => old.startAt <= span.startAt && old.endAt >= span.endAt))
    .map((span): Finding => {
      const duty = Math.ceil((span.endAt - span.startAt) / MINUTE);
      const driving = Math.ceil(
        span.work.filter((work) => work.date === null).reduce((sum, work) => sum + work.endAt - work.startAt, 0) / MINUTE,
      );
      const first = span.work[0];
      const last = span.work.at(-1);
      const lifts: Finding['lifts'] = [];
      if (first?.date === null) lifts.push({ kind: 'travel before', label: 'Travel the day before' });
      if (last?.date === null) lifts.push({ kind: 'travel after', label: 'Travel home the day after' });
      if (driving === 0) lifts.push({ kind: 'hand', label: 'Ask a hand to share the day' });
      return {
        kind: 'duty',
        hardness: 'know',
        concerns: concerning(candidate),
        numbers: { duty, limit: LONGEST_DUTY / MINUTE, driving },
        sentence: `From ${momentAt(span.startAt, first?.place ?? ground.home, ground.home)} to ${momentAt(span.endAt, last?.to ?? ground.home, ground.home)} are ${lengthInWords(duty)} without a rest${driving > 0 ? `, ${lengthInWords(driving)} of them on the road if it is travelled on the day` : ''}: over 14 h, mind the drive.`,
        lifts,
      };
    });
}

/** Paid time with the ways laid right before the first call and right after the last wrap, where no neighbour takes their place. */
function workOnTheDay(job: BookJob, fixed: readonly BookJob[], ground: Ground, own: boolean): Work[] {
  const planned = workOf(job, fixed, ground, own);
  const paid = planned.filter((work) => work.date !== null);
  const first = paid[0];
  const last = paid.at(-1);
  return planned.map((work) => {
    const length = work.endAt - work.startAt;
    if (work.date === null && first && work.place.key === ground.home.key && work.to.key === job.place.key && work.endAt <= first.startAt)
      return { ...work, startAt: first.startAt - length, endAt: first.startAt };
    if (work.date === null && last && work.to.key === ground.home.key && work.place.key === job.place.key && work.startAt >= last.endAt)
      return { ...work, startAt: last.endAt, endAt: last.endAt + length };
    return work;
  });
}

type Span = { startAt: number; endAt: number; own: boolean; work: Work[] };

/** From the first movement or call after a rest to the end of the last before the next. */
function spansOf(work: readonly Work[], { restMinutes }: Ground): Span[] {
  const sorted = [...work].sort((a, b) => a.startAt - b.startAt || a.endAt - b.endAt);
  const spans: Span[] = [];
  for (const item of sorted) {
    const span = spans.at(-1);
    if (!span || item.startAt - span.endAt >= restMinutes * MINUTE)
      spans.push({ startAt: item.startAt, endAt: item.endAt, own: item.own, work: [item] });
    else {
      span.endAt = Math.max(span.endAt, item.endAt);
      span.own ||= item.own;
      span.work.push(item);
    }
  }
  return spans;
}

/** A date counts if it has paid time or more than four hours of travel. */
function rowFindings(planned: readonly Work[], without: readonly Work[], home: Place): Finding[] {
  const dates = datesOf(planned, home);
  const old = new Set(datesOf(without, home));
  const own = new Set(
    datesOf(
      planned.filter((work) => work.own),
      home,
    ),
  );
  return runsOf(dates)
    .filter((run) => run.length >= DAYS_IN_A_ROW && run.some((date) => own.has(date) && !old.has(date)))
    .map((run): Finding => ({
      kind: 'seventh day',
      hardness: 'know',
      concerns: [],
      numbers: { daysInARow: run.length, from: run[0] ?? '', to: run.at(-1) ?? '' },
      sentence: `That makes ${run.length} days in a row without one off, from ${dateInWords(run[0] ?? '')} to ${dateInWords(run.at(-1) ?? '')}.`,
      lifts: [{ kind: 'day off', label: 'Keep a day free, or ask a hand for one' }],
    }));
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

function* byDate({ startAt, endAt }: { startAt: number; endAt: number }, zone: string): Generator<[string, number]> {
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
    if (run && dateLater(run.at(-1) ?? '', 1) === date) run.push(date);
    else runs.push([date]);
  }
  return runs;
}

/** Paid time and own driving in the fullest 168 hours that the candidate makes fuller. */
function weekFindings(planned: readonly Work[], without: readonly Work[], candidate: BookJob, home: Place): Finding[] {
  const counted = planned.filter((work) => work.counts);
  const before = without.filter((work) => work.counts);
  const starts = counted.flatMap((work) => [work.startAt, work.endAt - WEEK]);
  let fullest = { start: 0, length: 0 };
  for (const start of starts) {
    const length = within(counted, start);
    if (length > fullest.length && length > HOURS_IN_A_WEEK && length > within(before, start)) fullest = { start, length };
  }
  if (fullest.length === 0) return [];
  const minutes = Math.ceil(fullest.length / MINUTE);
  return [
    {
      kind: 'sixty hours',
      hardness: 'know',
      concerns: concerning(candidate),
      numbers: { inAWeek: minutes, limit: HOURS_IN_A_WEEK / MINUTE },
      sentence: `In the seven days from ${momentAt(fullest.start, home, home)} you would work and drive ${lengthInWords(minutes)}: over 60 h.`,
      lifts: [{ kind: 'hand', label: 'Ask a hand for part of it' }],
    },
  ];
}

function within(work: readonly Work[], start: number): number {
  return work.reduce((sum, { startAt, endAt }) => sum + Math.max(0, Math.min(endAt, start + WEEK) - Math.max(startAt, start)), 0);
}

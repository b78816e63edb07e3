/**
 * Duty: from the first movement or call after a rest to the end of the last before the next. A caution over fourteen hours.
 * The limit is common practice; published limits for commercial drivers stand beside it in the tests.
 */
import type { Finding, Lift } from '../contract/fit.ts';
import { lengthInWords } from '../words/amounts.ts';
import { momentAt } from '../words/moments.ts';
import type { BookJob } from './book.ts';
import { concerning } from './findings.ts';
import { handLift } from './lifts.ts';
import type { Ground } from './moves.ts';
import { travelAfter, travelBefore } from './travel-days.ts';
import { workOnTheDay, type Work } from './work.ts';

const MINUTE = 60_000;
/** In minutes. */
export const LONGEST_DUTY = 14 * 60;

type Span = { startAt: number; endAt: number; own: boolean; work: Work[] };

/** Spans that the candidate makes or lengthens, with the ways travelled on the day itself. */
export function dutyFindings(candidate: BookJob, ink: readonly BookJob[], ground: Ground): Finding[] {
  const before = spansOf(workOnTheDay(ink, null, ground).filter(short), ground);
  const work = workOnTheDay([...ink, candidate], candidate, ground);
  const long = work.filter((item) => item.own && !short(item)).map((item) => longWay(item, candidate));
  const spans = spansOf(work.filter(short), ground)
    .filter((span) => span.own && span.endAt - span.startAt > LONGEST_DUTY * MINUTE)
    .filter((span) => !before.some((old) => old.startAt <= span.startAt && old.endAt >= span.endAt));
  return [...long, ...spans.map((span) => longDuty(span, candidate, ground))];
}

/** A way of more than a day's length is never travelled in one go. */
function short(work: Work): boolean {
  return work.date !== null || work.endAt - work.startAt <= LONGEST_DUTY * MINUTE;
}

function spansOf(sorted: readonly Work[], { restMinutes }: Ground): Span[] {
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

function longDuty({ startAt, endAt, work }: Span, candidate: BookJob, ground: Ground): Finding {
  const { home } = ground;
  const duty = minutes(endAt - startAt);
  const driving = minutes(work.filter((item) => item.date === null).reduce((sum, item) => sum + item.endAt - item.startAt, 0));
  const first = work[0];
  const last = work.at(-1);
  const lifts: Lift[] = [];
  if (first?.own && first.date === null) lifts.push(...travelBefore(first, work, ground));
  if (last?.own && last.date === null) lifts.push(...travelAfter(last, work, ground));
  const own = work.flatMap((item) => (item.own && item.date !== null ? [{ date: item.date }] : []));
  if (own.length > 0) lifts.push(handLift(own));
  const road = driving > 0 ? `, ${lengthInWords(driving)} of them on the way if it is travelled on the day` : '';
  return {
    kind: 'duty',
    hardness: 'know',
    concerns: concerning(candidate),
    numbers: { duty, limit: LONGEST_DUTY, driving },
    sentence: `From ${momentAt(startAt, first?.place ?? home, home)} to ${momentAt(endAt, last?.to ?? home, home)} there are ${lengthInWords(duty)} without a rest${road}. Over 14 h, nobody should be driving.`,
    lifts,
  };
}

function longWay({ startAt, endAt, place, to, estimated }: Work, candidate: BookJob): Finding {
  const duty = minutes(endAt - startAt);
  return {
    kind: 'duty',
    hardness: 'know',
    concerns: concerning(candidate),
    numbers: { duty, limit: LONGEST_DUTY, driving: duty },
    sentence: `The way from ${place.name} to ${to.name} takes ${estimated ? 'up to an estimated ' : ''}${lengthInWords(duty)}: it needs nights of its own, or a flight.`,
    lifts: estimated ? [{ kind: 'type way', label: `Type the real time from ${place.name} to ${to.name}`, way: { from: place, to } }] : [],
  };
}

function minutes(ms: number): number {
  return Math.ceil(ms / MINUTE);
}

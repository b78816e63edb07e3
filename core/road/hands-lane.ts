/**
 * The lane of hands: whom I have where, said yes or in pencil.
 */
import type { HandBar } from '../contract/road.ts';
import type { BookHand, BookJob } from '../fit/book.ts';
import { instantText } from '../time/read.ts';
import { staysOf } from '../trips/stays.ts';
import { rowsOf } from './kit-lane.ts';

type Stretch = { hand: BookHand; job: BookJob; startAt: number; endAt: number };

/** Bars between two instants (epoch ms), by time, one for each run of dates; each in the first row where it touches no other. */
export function handsLane(hands: readonly BookHand[], from: number, to: number): HandBar[] {
  const bars = hands
    .flatMap((hand) =>
      (hand.jobs ?? []).flatMap((job) => staysOf(job.days).map(({ startAt, endAt }): Stretch => ({ hand, job, startAt, endAt }))),
    )
    .filter(({ startAt, endAt }) => startAt < to && endAt > from)
    .toSorted((a, b) => a.startAt - b.startAt || a.endAt - b.endAt || (a.hand.name < b.hand.name ? -1 : 1));
  const rows = rowsOf(bars.map(({ startAt, endAt }) => ({ start: startAt, end: endAt })));
  return bars.map(({ hand, job, startAt, endAt }, index) => ({
    handId: hand.id,
    name: hand.name,
    jobId: job.id,
    title: job.title,
    firmness: job.firmness,
    start: instantText(startAt),
    end: instantText(endAt),
    row: rows[index] ?? 0,
  }));
}

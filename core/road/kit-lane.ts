/**
 * The kit lane of the road: what is out with which job, of how many, from packing until it is home again or goes straight on.
 */
import type { KitBar } from '../contract/road.ts';
import type { Book, BookJob, KitItem } from '../fit/book.ts';
import { kitFindings, PACK_BEFORE } from '../fit/kit.ts';
import { laneOf } from '../fit/lane.ts';
import { instantText } from '../time/read.ts';
import type { Line, Lines } from './lines.ts';

type Outing = { job: BookJob; start: number; end: number; startKey: string; endKey: string };
type Packed = { job: BookJob; packAt: number; backAt: number; onward: boolean };

/**
 * Bars between two instants (epoch ms), by time, each in the first row where it touches no other.
 * Kit goes straight on where the job before hands it over on the road, or is home less than the time of packing before the next leaves.
 */
export function kitLane(book: Book, candidate: BookJob | null, { lines, others }: Lines, from: number, to: number): KitBar[] {
  const home = book.home.key;
  const items = book.kit ?? [];
  const outings = lines
    .filter(({ job }) => (job.kit ?? []).some(({ count }) => count > 0))
    .flatMap((line) => outingsOf(line, home))
    .sort((a, b) => a.start - b.start || a.end - b.end);
  const fixed = outings.filter(({ job }) => job.firmness === 'ink' || job === candidate);
  const bars = outings
    .map((outing) => packed(outing, fixed, home))
    .filter(({ packAt, backAt }) => packAt < to && backAt > from)
    .sort((a, b) => a.packAt - b.packAt || a.backAt - b.backAt);
  const rows = rowsOf(bars.map(({ packAt, backAt }) => ({ start: packAt, end: backAt })));
  return bars.map((bar, index) => ({
    jobId: bar.job.id,
    title: bar.job.title,
    firmness: bar.job === candidate ? 'candidate' : bar.job.firmness,
    start: instantText(bar.packAt),
    end: instantText(bar.backAt),
    row: rows[index] ?? 0,
    words: `${bar.onward ? 'goes straight on: ' : ''}${thingsInWords(bar.job, items)}`,
    short: shortOf(bar, { ...book, jobs: others }, items),
  }));
}

/** A job is out from its first step to its last; where it is at home for longer than packing takes, it goes out anew. Edit days take none. */
function outingsOf({ job, blocks, moves }: Line, home: string): Outing[] {
  const paid = blocks.filter(({ kind }) => kind !== 'edit');
  const steps: Outing[] = [
    ...paid.map(({ start, end, placeKey }) => ({ job, start, end, startKey: placeKey, endKey: placeKey })),
    ...moves.map(({ start, end, from, to }) => ({ job, start, end, startKey: from.key, endKey: to.key })),
  ].sort((a, b) => a.start - b.start || a.end - b.end);
  const outings: Outing[] = [];
  for (const step of steps) {
    const last = outings.at(-1);
    const wasHome = last !== undefined && last.endKey === home && step.startKey === home && step.start - last.end > PACK_BEFORE;
    if (!last || wasHome) outings.push({ ...step });
    else if (step.end >= last.end) Object.assign(last, { end: step.end, endKey: step.endKey });
  }
  return outings;
}

function packed({ job, start, end, startKey }: Outing, fixed: readonly Outing[], home: string): Packed {
  const before = fixed.findLast((other) => other.job !== job && other.end <= start);
  const meets = before !== undefined && before.endKey === startKey && sharesKit(before.job, job);
  const straight = meets && (startKey !== home || before.end > start - PACK_BEFORE);
  if (straight) return { job, packAt: before.end, backAt: end, onward: true };
  return { job, packAt: startKey === home ? start - PACK_BEFORE : start, backAt: end, onward: false };
}

const sharesKit = (a: BookJob, b: BookJob): boolean =>
  (b.kit ?? []).some((need) => need.count > 0 && (a.kit ?? []).some((other) => other.item === need.item && other.count > 0));

/** "Camera set, 4 of 4 Transmitter, 3 of 5 Light": a thing that there is only one of stands by its name alone. */
function thingsInWords(job: BookJob, items: readonly KitItem[]): string {
  return (job.kit ?? [])
    .filter(({ count }) => count > 0)
    .map(({ item, count }) => {
      const known = items.find(({ id }) => id === item);
      if (!known) return `${count} ${item}, not on the list`;
      return known.owned === 1 && count === 1 ? known.name : `${count} of ${known.owned} ${known.name}`;
    })
    .join(', ');
}

/** What the check finds short, as far as it has to be settled by this job. */
function shortOf({ job, packAt, backAt }: Packed, book: Book, items: readonly KitItem[]): KitBar['short'] {
  return kitFindings(job, laneOf(book, job), items, [{ packAt, backAt }], book.home)
    .filter(({ hardness }) => hardness !== 'know')
    .map(({ numbers, sentence }) => ({ words: `${numbers['item']} short by ${numbers['short']}`, sentence }));
}

/** The first row, counted from 0, in which each of these spans touches none before it. Spans must come by their start. */
export function rowsOf(spans: readonly { start: number; end: number }[]): number[] {
  const ends: number[] = [];
  return spans.map(({ start, end }) => {
    const free = ends.findIndex((taken) => taken <= start);
    const row = free === -1 ? ends.length : free;
    ends[row] = end;
    return row;
  });
}

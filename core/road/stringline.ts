/**
 * The stringline as data: a time-distance diagram with a line for each place, by distance from home.
 */
import type { Place } from '../contract/parts.ts';
import type { Stringline } from '../contract/road.ts';
import type { Book, BookJob } from '../fit/book.ts';
import type { Ground } from '../fit/moves.ts';
import { distanceKm } from '../places/distance.ts';
import { instantText } from '../time/read.ts';
import { clashesOf } from './clashes.ts';
import { linesOf, type Lines, type LinesInput } from './lines.ts';

export type StringlineInput = LinesInput & {
  /** Half-open, epoch ms. */
  from: number;
  to: number;
  now: number;
};

/** Everything that shows between two instants. Moves and blocks are given whole, also where they reach over the edge. */
export function stringlineOf({ book, candidate, from, to, now }: StringlineInput, known?: Lines): Stringline {
  const { lines, others, ground } = known ?? linesOf({ book, candidate });
  const inSight = ({ start, end }: { start: number; end: number }) => start < to && end > from;
  const jobs = lines
    .map(({ job, blocks, moves, rests }) => ({
      job,
      blocks: blocks.filter(inSight),
      moves: moves.filter(inSight),
      rests: rests.filter(inSight),
    }))
    .filter(({ blocks, moves }) => blocks.length > 0 || moves.length > 0);
  const places = placesOf(
    book.home,
    jobs.flatMap(({ job, moves }) => [job.place, ...moves.flatMap((move) => [move.from, move.to])]),
    from,
  );
  const order = pencilOrder(lines.map(({ job }) => job));
  return {
    from: instantText(from),
    to: instantText(to),
    now: instantText(now),
    zone: book.home.zone,
    places,
    jobs: jobs.map(({ job, blocks, moves, rests }) => ({
      jobId: job.id,
      title: job.title,
      firmness: job === candidate ? 'candidate' : job.firmness,
      note: noteOf(job, job === candidate, order),
      blocks: blocks.map(({ placeKey, start, end, kind }) => ({ placeKey, start: instantText(start), end: instantText(end), kind })),
      moves: moves.map((move) => ({
        fromKey: move.from.key,
        toKey: move.to.key,
        start: instantText(move.start),
        end: instantText(move.end),
        mode: move.mode,
        source: move.source,
      })),
      rests: rests.map((rest) => ({ placeKey: rest.place.key, start: instantText(rest.start), end: instantText(rest.end) })),
    })),
    clashes: clashesIn(candidate ? [candidate] : others, { ...book, jobs: others }, ground, instantText(from), instantText(to)),
  };
}

/** A pair that clashes is ringed once. */
function clashesIn(jobs: readonly BookJob[], book: Book, ground: Ground, from: string, to: string): Stringline['clashes'] {
  const seen = new Set<string>();
  return jobs
    .flatMap((job) => clashesOf(job, book, ground))
    .filter((clash) => clash.start < to && clash.end > from)
    .filter((clash) => {
      const key = `${[...clash.jobIds].sort().join()} ${clash.start}`;
      return !seen.has(key) && seen.add(key);
    });
}

/** Home first, then by distance. */
function placesOf(home: Place, places: readonly Place[], from: number): Stringline['places'] {
  const once = new Map([home, ...places].map((place) => [place.key, place]));
  return [...once.values()]
    .map((place) => ({
      place,
      km: Math.round(distanceKm(home, place)),
      shiftMinutes: offsetAt(from, place) - offsetAt(from, home),
      home: place.key === home.key,
    }))
    .sort((a, b) => Number(b.home) - Number(a.home) || a.km - b.km || (a.place.key < b.place.key ? -1 : 1));
}

function offsetAt(at: number, { zone }: Place): number {
  return Math.round(Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO(zone).offsetNanoseconds / 60e9);
}

function pencilOrder(jobs: readonly BookJob[]): BookJob[] {
  return jobs.filter((job) => job.firmness === 'pencil').sort((a, b) => (a.pencilledAt ?? 0) - (b.pencilledAt ?? 0));
}

function noteOf(job: BookJob, candidate: boolean, order: readonly BookJob[]): string {
  if (job.firmness === 'ink') return 'inked';
  if (candidate) return 'candidate';
  const before = order
    .slice(0, order.indexOf(job))
    .filter((other) => other.days.some((day) => job.days.some((mine) => mine.date === day.date)));
  return ['first pencil', 'second pencil', 'third pencil'][before.length] ?? `pencil ${before.length + 1}`;
}

/** The stringline with its instants as numbers, read once, so that every frame of a zoom only multiplies. */
import type { Stringline } from '../../../core/contract/road.ts';
import { epochOf } from '../../../core/time/read.ts';

type Job = Stringline['jobs'][number];
export type Span = { start: number; end: number };
type Block = Span & { placeKey: string; kind: string };
type Way = Span & { fromKey: string; toKey: string };
type Stand = Span & { placeKey: string };
/** One job: its paid time, its ways, where it stands still and where it rests. Instants are epoch ms. */
export type StripJob = Span & {
  key: string;
  title: string;
  note: string;
  firmness: Job['firmness'];
  blocks: Block[];
  ways: Way[];
  stands: Stand[];
  rests: Stand[];
};
type StripClash = Span & { placeKey: string; short: string; sentence: string };
export type Strip = Span & {
  now: number;
  zone: string;
  places: Stringline['places'];
  jobs: StripJob[];
  clashes: StripClash[];
};

/** Read a stringline for drawing. */
export function stripOf(data: Stringline): Strip {
  return {
    ...timed({ start: data.from, end: data.to }),
    now: epochOf(data.now),
    zone: data.zone,
    places: data.places,
    jobs: data.jobs.map(jobOf),
    clashes: data.clashes.map(timed),
  };
}

function jobOf(job: Job): StripJob {
  const blocks = job.blocks.map(timed);
  const ways = job.moves.map(timed);
  const spans: Span[] = [...blocks, ...ways];
  return {
    key: job.jobId ?? 'candidate',
    title: job.title,
    note: job.note,
    firmness: job.firmness,
    blocks,
    ways,
    stands: standing(blocks, ways),
    rests: job.rests.map(timed),
    start: Math.min(...spans.map(({ start }) => start)),
    end: Math.max(...spans.map(({ end }) => end)),
  };
}

/** The stretches in which a job stays where it is: between one step's end and the next one's start at the same place. */
function standing(blocks: readonly Block[], ways: readonly Way[]): Stand[] {
  const steps = [
    // Editing waits for no train: being at home before and after it is not part of the job.
    ...blocks.filter(({ kind }) => kind !== 'edit').map((each) => ({ ...each, fromKey: each.placeKey, toKey: each.placeKey })),
    ...ways,
  ].sort((a, b) => a.start - b.start);
  return steps.flatMap((step, index) => {
    const next = steps[index + 1];
    return next && next.fromKey === step.toKey && next.start > step.end ? [{ placeKey: step.toKey, start: step.end, end: next.start }] : [];
  });
}

/** The same with its two instants as numbers. */
export function timed<T extends { start: string; end: string }>(each: T): Omit<T, 'start' | 'end'> & Span {
  return { ...each, start: epochOf(each.start), end: epochOf(each.end) };
}

/** Half-open: touching is not overlapping. */
export const meets = (a: Span, b: Span): boolean => a.start < b.end && b.start < a.end;

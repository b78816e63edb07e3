/**
 * What finished edits of a template really took, so that the next quote is better: the median and the range, over those with time on record.
 */
import { formatNumber } from '../money/format.ts';
import { exact } from '../money/exact.ts';
import type { Numbers } from './make-stages.ts';
import { countInWords } from '../words/amounts.ts';

/** A finished edit: whole minutes spent by what they went to, the film's length in minutes, and rounds that had notes. */
export type FinishedEdit = { finishedMinutes: number; ingest: number; editing: number; notes: number; rounds: number };
/** Hours, rounded to hundredths; `count` edits stand behind them. */
type Figure = { count: number; median: number; least: number; most: number };
type Past = {
  edits: number;
  /** Edit hours for a finished minute. */
  perMinute: Figure | null;
  ingest: Figure | null;
  perRound: Figure | null;
};

/** An edit without time on a part says nothing about that part. */
export function pastOf(edits: readonly FinishedEdit[]): Past {
  return {
    edits: edits.filter(({ ingest, editing, notes }) => ingest + editing + notes > 0).length,
    perMinute: figureOf(
      edits.filter((edit) => edit.editing > 0 && edit.finishedMinutes > 0).map((edit) => edit.editing / edit.finishedMinutes),
    ),
    ingest: figureOf(edits.filter((edit) => edit.ingest > 0).map((edit) => edit.ingest)),
    perRound: figureOf(edits.filter((edit) => edit.notes > 0 && edit.rounds > 0).map((edit) => edit.notes / edit.rounds)),
  };
}

/** Of minutes; null where there are none. The median of an even count is the mean of the middle two. */
function figureOf(minutes: readonly number[]): Figure | null {
  const sorted = minutes.toSorted((a, b) => a - b);
  const [least, most] = [sorted[0], sorted.at(-1)];
  if (least === undefined || most === undefined) return null;
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? most;
  const median = sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? upper) + upper) / 2;
  return { count: sorted.length, median: inHours(median), least: inHours(least), most: inHours(most) };
}

const inHours = (minutes: number): number => Math.round((minutes / 60) * 100) / 100;

/** Numbers of an edit with the medians of past ones in the place of what was estimated; a part without a figure stays as it is. */
export function asPastTook<N extends Pick<Numbers, 'editHoursPerMinute' | 'ingestHours' | 'hoursPerRound'>>(
  numbers: N,
  past: Omit<Past, 'edits'>,
): N {
  return {
    ...numbers,
    ...(past.perMinute ? { editHoursPerMinute: String(past.perMinute.median) } : {}),
    ...(past.ingest ? { ingestHours: String(past.ingest.median) } : {}),
    ...(past.perRound ? { hoursPerRound: String(past.perRound.median) } : {}),
  };
}

/** One sentence a figure; none for what has no time on record. */
export function pastInWords({ perMinute, ingest, perRound }: Past): string[] {
  return [
    perMinute && `Editing took ${figureInWords(perMinute)} for a finished minute.`,
    ingest && `Ingest took ${figureInWords(ingest)}.`,
    perRound && `A round of notes took ${figureInWords(perRound)}.`,
  ].filter((sentence) => sentence !== null);
}

/** "1.25 h (0.8 to 2 over 5 edits)", "1.25 h (one edit)", "1 h (each of 4 edits)". */
function figureInWords({ count, median, least, most }: Figure): string {
  const [middle, low, high] = [median, least, most].map((hours) => formatNumber(exact(String(hours))));
  if (count > 1 && low === high) return `${middle} h (each of ${countInWords(count, 'edit')})`;
  return count === 1 ? `${middle} h (one edit)` : `${middle} h (${low} to ${high} over ${countInWords(count, 'edit')})`;
}

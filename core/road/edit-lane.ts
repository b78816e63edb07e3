/**
 * The edit lane of the road: hours of editing on each date against what a day holds, and those that lose their day to the candidate.
 */
import type { EditLane } from '../contract/road.ts';
import type { BookJob } from '../fit/book.ts';
import { instantText, wallAt } from '../time/read.ts';
import { dateLater } from '../time/wall.ts';
import { datesInWords } from '../words/dates.ts';
import type { Line } from './lines.ts';

/** Editing planned for a date at home. Hours go in halves. */
export type EditPiece = { date: string; hours: number; jobId: string | null; title: string };

const HALF_HOUR = 30 * 60_000;

/** The hours of the edit days of a job, by started half hour. */
export function editPieces(job: BookJob): EditPiece[] {
  return job.days
    .filter((day) => day.kind === 'edit')
    .map((day) => ({
      date: day.date,
      hours: Math.ceil((day.wrapAt - day.callAt) / HALF_HOUR) / 2,
      jobId: job.id,
      title: job.title,
    }));
}

type Planned = { jobId: string; start: number; end: number };

/**
 * Planned editing by date at home and job, in halves.
 * @param blocks stretches of editing, epoch ms; one over midnight counts on both its dates
 */
export function plannedPieces(blocks: readonly Planned[], titleOf: (jobId: string) => string, zone: string): EditPiece[] {
  const pieces = new Map<string, EditPiece>();
  for (const { jobId, start, end } of blocks)
    for (let at = start; at < end; at += HALF_HOUR) {
      const date = wallAt(at, zone).slice(0, 10);
      const piece = pieces.get(`${date} ${jobId}`) ?? { date, hours: 0, jobId, title: titleOf(jobId) };
      piece.hours += 0.5;
      pieces.set(`${date} ${jobId}`, piece);
    }
  return [...pieces.values()];
}

/** The dates at home on which a job works away from the edit desk or is on its way, in order. */
export function datesTaken({ blocks, moves }: Line, zone: string): string[] {
  const spans = [...blocks.filter(({ kind }) => kind !== 'edit'), ...moves];
  const dates = spans.flatMap(({ start, end }) => {
    const last = wallAt(end - 1, zone).slice(0, 10);
    const all = [wallAt(start, zone).slice(0, 10)];
    while ((all.at(-1) ?? last) < last) all.push(dateLater(all.at(-1) ?? last, 1));
    return all;
  });
  return [...new Set(dates)].sort();
}

/**
 * Days with editing on them, in order.
 * @param ceiling hours of editing that a day holds, or null where that is not known
 * @param taken dates that the candidate takes
 */
export function editLane(pieces: readonly EditPiece[], ceiling: number | null, taken: readonly string[], zone: string): EditLane {
  const days = [...Map.groupBy(pieces, ({ date }) => date)]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([date, parts]) => {
      const hours = parts.reduce((sum, part) => sum + part.hours, 0);
      return {
        date,
        start: midnight(date, zone),
        end: midnight(dateLater(date, 1), zone),
        hours,
        over: ceiling !== null && hours > ceiling,
        lost: taken.includes(date),
        parts: parts.map(({ jobId, title, hours }) => ({ jobId, title, hours })),
      };
    });
  const lost = days.filter((day) => day.lost);
  const hours = lost.reduce((sum, day) => sum + day.hours, 0);
  return {
    ceiling,
    days,
    lost:
      hours === 0
        ? ''
        : `${hours} h of editing ${lost.length === 1 ? 'lose their day' : 'lose their days'}: ${datesInWords(lost.map((day) => day.date))}.`,
  };
}

const midnight = (date: string, zone: string): string => instantText(Temporal.PlainDate.from(date).toZonedDateTime(zone).epochMilliseconds);

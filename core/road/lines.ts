/**
 * The line of each job on the road: its blocks of paid time, the ways that it needs and where it rests.
 */
import type { Book, BookJob } from '../fit/book.ts';
import { rowOf } from '../fit/lane.ts';
import { movesOf, type Ground, type Moves } from '../fit/moves.ts';
import { wayFinder } from '../trips/ways.ts';

export type LinesInput = {
  book: Book;
  /** Laid on; its own state on the books, if any, is left out. */
  candidate: BookJob | null;
};
type Block = { placeKey: string; start: number; end: number; kind: BookJob['days'][number]['kind'] };
/** Instants are epoch ms. */
export type Line = Moves & { job: BookJob; blocks: Block[] };
/** Every line, the books without the candidate, and the ground that ways are found on. */
export type Lines = { lines: Line[]; others: BookJob[]; ground: Ground };

/** Lines of all jobs. A pencil is drawn as if it were the only one beside the ink and the candidate. */
export function linesOf({ book, candidate }: LinesInput): Lines {
  const others = book.jobs.filter((job) => candidate === null || job.id === null || job.id !== candidate.id);
  const shown = [...others, ...(candidate ? [candidate] : [])];
  const ground: Ground = { home: book.home, find: wayFinder(book.ways), restMinutes: book.restMinutes, kit: book.kit };
  const fixed = shown.filter((job) => job.firmness === 'ink' || job === candidate);
  const fixedRow = rowOf(fixed);
  const lines = shown.map((job) => ({
    job,
    blocks: blocksOf(job, book.home.key),
    ...movesOf(job, fixed.includes(job) ? fixedRow : rowOf([job, ...fixed]), ground),
  }));
  return { lines, others, ground };
}

/** Editing can be done anywhere and is drawn at home. */
function blocksOf(job: BookJob, homeKey: string): Block[] {
  return job.days.map((day) => ({
    placeKey: day.kind === 'edit' ? homeKey : job.place.key,
    start: day.callAt,
    end: day.wrapAt,
    kind: day.kind,
  }));
}

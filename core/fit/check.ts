/**
 * Does it fit? The candidate against everything on the books, as findings with their numbers.
 */
import type { FitResult, TryOn } from '../contract/fit.ts';
import type { Moment } from '../contract/parts.ts';
import { wayFinder } from '../trips/ways.ts';
import type { Book, BookJob } from './book.ts';
import { findingOf, neighboursOf } from './between.ts';
import { departureFindings, replyByFindings } from './clocks.ts';
import { answerOf, inOrder } from './findings.ts';
import { fineSentence } from './fine.ts';
import { laneOf } from './lane.ts';
import { movableFindings, overlapFindings } from './overlap.ts';
import { triedOn } from './try-on.ts';

export type FitInput = {
  book: Book;
  candidate: BookJob;
  tryOn?: TryOn | undefined;
  /** Epoch ms. */
  now: number;
  replyBy: Moment | null;
};

/**
 * Check one candidate. A job that is on the books itself is left out by its id.
 * @throws RangeError when the candidate has no day
 */
export function checkFit(input: FitInput): FitResult {
  const { book, candidate } = triedOn(input.book, input.candidate, input.tryOn);
  const { home } = book;
  const find = wayFinder(book.ways);
  const lane = laneOf(book, candidate);
  const others = book.jobs.filter((job) => candidate.id === null || job.id !== candidate.id);
  const neighbours = neighboursOf(lane, { home, find, restMinutes: book.restMinutes, mustGoHome: false });
  const findings = inOrder([
    ...overlapFindings(lane, home),
    ...movableFindings(lane, candidate, others, home),
    ...neighbours.flatMap((pair) => findingOf(pair, home)),
    ...departureFindings(lane, home, find, input.now),
    ...replyByFindings(input.replyBy, input.now, home),
  ]);
  const stays = lane.filter((entry) => entry.standing === 'own').length;
  return { answer: answerOf(findings), findings, fine: fineSentence(findings, neighbours, stays), missing: [] };
}

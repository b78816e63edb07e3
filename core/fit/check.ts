/**
 * Does it fit? The candidate against everything on the books, as findings with their numbers.
 */
import type { FitResult } from '../contract/fit.ts';
import type { TryOn } from '../contract/try-on.ts';
import type { Moment } from '../contract/parts.ts';
import { wayFinder } from '../trips/ways.ts';
import type { Book, BookJob } from './book.ts';
import { findingOf, neighboursOf } from './between.ts';
import { chainFindings } from './chain.ts';
import { withCutOnSite } from './cut-on-site.ts';
import { departureFindings, pastFindings, replyByFindings } from './clocks.ts';
import { editFindings, plannedWork } from './edits.ts';
import { answerOf, inOrder } from './findings.ts';
import { fineSentence } from './fine.ts';
import { givenUpFindings } from './given-up.ts';
import { handFindings, withHands } from './hands.ts';
import { importedFindings } from './imported.ts';
import { kitFindings } from './kit.ts';
import { kitSpans } from './kit-spans.ts';
import { laneOf } from './lane.ts';
import { legByLegFindings } from './leg-by-leg.ts';
import { loadFindings } from './load.ts';
import { movesOf, type Ground } from './moves.ts';
import { offered } from './offered.ts';
import { movableFindings, overlapFindings } from './overlap.ts';
import { paperFindings } from './papers/findings.ts';
import { personalFindings } from './personal.ts';
import { givenUp, triedOn } from './try-on.ts';

export type FitInput = {
  book: Book;
  candidate: BookJob;
  tryOn?: TryOn | undefined;
  /** Epoch ms. */
  now: number;
  replyBy: Moment | null;
};

/**
 * Check one candidate, with the lifts that would help. A job that is on the books itself is left out by its id.
 * @throws RangeError when the candidate has no day
 * @throws WallTimeError where a day that is tried on falls on a wall time that does not exist or occurs twice
 */
export function checkFit(input: FitInput): FitResult {
  const tried = input.tryOn ?? {};
  return offered(assess(input), tried, input.now, (tryOn) => assess({ ...input, tryOn }, false));
}

/** A job with every day that its kit is needed on, whoever does it. */
function withHandDays(job: BookJob): BookJob {
  return job.handDays ? { ...job, days: [...job.days, ...job.handDays] } : job;
}

/**
 * The same without asking of each lift whether it would help.
 * @param searched lifts that have to be searched for are asked for too
 */
export function assess(input: FitInput, searched = true): FitResult {
  const { book, candidate, mine, covers } = triedOn(input.book, input.candidate, input.tryOn);
  const { home } = book;
  const find = wayFinder(book.ways);
  const lane = laneOf(book, mine);
  const others = book.jobs.filter((job) => candidate.id === null || job.id !== candidate.id);
  const ground: Ground = { home, find, restMinutes: book.restMinutes, kit: book.kit };
  const neighbours = neighboursOf(lane, ground);
  const ink = others.filter((job) => job.firmness === 'ink');
  const { moves } = movesOf(
    mine,
    lane.filter(({ standing }) => standing === 'ink' || standing === 'own'),
    ground,
  );
  const over = overlapFindings(lane, home);
  // Where one cannot be in two places anyway, hours and days in a row say nothing.
  const impossible = over.some((finding) => finding.hardness === 'blocks');
  const cut = (job: BookJob): BookJob => withCutOnSite(job, book.edits);
  // The kit is needed on the days of a hand too.
  const handed = mine !== candidate || book.jobs.some(({ handDays }) => handDays);
  const kitLane = handed ? laneOf({ ...book, jobs: book.jobs.map(withHandDays) }, candidate) : lane;
  const found = inOrder([
    ...over,
    ...movableFindings(lane, mine, others, home),
    ...legByLegFindings(lane, ground),
    ...neighbours.flatMap((pair) => findingOf(pair, home, book.kit ?? [])),
    ...personalFindings(book.personal ?? [], lane, moves, home),
    ...importedFindings(book.imported ?? [], lane, moves, home),
    ...kitFindings(candidate, kitLane, book.kit ?? [], kitSpans(candidate, moves, home), home),
    ...paperFindings({ book, candidate, mine, moves, covers, tryOn: input.tryOn, now: input.now }),
    ...editFindings({ book, mine, moves, tryOn: input.tryOn, searched }),
    ...chainFindings(mine),
    ...departureFindings(lane, home, find, input.now),
    ...pastFindings(candidate, home, input.now),
    ...(input.tryOn?.stillOpen ? [] : replyByFindings(input.replyBy, input.now, home)),
    ...(impossible ? [] : loadFindings(cut(mine), ink.map(cut), ground, plannedWork({ book, mine, moves, tryOn: input.tryOn }))),
    ...handFindings(covers, candidate, book, find, input.now),
    ...givenUpFindings(givenUp(input.book, input.candidate, input.tryOn), home),
  ]);
  const findings = withHands(found, book, candidate);
  return { answer: answerOf(findings), findings, fine: fineSentence(findings, neighbours, mine.days), missing: [] };
}

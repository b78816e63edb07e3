/**
 * Part 5 of the check: documents, for me and for each hand who would cover days. What is on file is held against the days and the
 * countries, and whom to ask is said; never that one may enter, work or fly.
 */
import type { Finding } from '../../contract/fit.ts';
import type { TryOn } from '../../contract/try-on.ts';
import { daysLeft } from '../../documents/lead.ts';
import { wayFinder } from '../../trips/ways.ts';
import type { Book, BookJob } from '../book.ts';
import { laneOf } from '../lane.ts';
import { movesOf, type Move } from '../moves.ts';
import { triedOn, type Cover } from '../try-on.ts';
import { passportFindings, rightToWorkFindings } from './border.ts';
import { customsFindings } from './goods.ts';
import type { Holder } from './holder.ts';
import { insuranceFindings, licenceFindings } from './insurance.ts';
import { abroadOf } from './trip.ts';

type Papers = {
  book: Book;
  /** With every day, whoever works it: the kit goes on all of them. */
  candidate: BookJob;
  mine: BookJob;
  moves: readonly Move[];
  covers: readonly Cover[];
  tryOn: TryOn | undefined;
  /** Epoch ms. */
  now: number;
};

const noHolidays = (): ReadonlySet<string> => new Set();

/** Nothing where no documents are looked at. */
export function paperFindings({ book, candidate, mine, moves, covers, tryOn, now }: Papers): Finding[] {
  const { documents, home } = book;
  if (!documents) return [];
  const tried = tryOn?.documents ?? [];
  const holderOf = (job: BookJob, of: readonly Move[], handId: string | null, from = home): Holder => {
    const trip = abroadOf(job, of, from);
    return {
      job,
      home: from,
      trip,
      documents: documents.filter((one) => one.handId === handId),
      tried: handId === null ? tried : [],
      left: () => daysLeft(now, trip.callAt, home.zone, book.holidays ?? noHolidays),
    };
  };
  const ofJob = holderOf(candidate, moves, null);
  const me = mine.days.length > 0 ? [holderOf(mine, moves, null)] : [];
  const hands = [...Map.groupBy(covers, ({ handId }) => handId)].flatMap(([handId, own]) => {
    const hand = book.hands?.find(({ id }) => id === handId);
    const days = own.flatMap((cover) => cover.days);
    if (!hand?.home || days.length === 0) return [];
    const job = { ...candidate, days, legs: [] };
    return [...passportFindings(holderOf(job, [], handId, hand.home)), ...rightToWorkFindings(holderOf(job, [], handId, hand.home))].map(
      (finding): Finding => ({ ...finding, hardness: 'know', sentence: `For ${hand.name}: ${finding.sentence}`, lifts: [] }),
    );
  });
  return [
    ...me.flatMap((holder) => [...passportFindings(holder), ...rightToWorkFindings(holder)]),
    ...customsFindings(ofJob, tryOn?.customsList === true),
    ...insuranceFindings(ofJob),
    ...me.flatMap(licenceFindings),
    ...hands,
  ];
}

/** The same of a job by itself, as if nothing else were on the books. `now` in epoch ms. */
export function papersAlone(book: Book, job: BookJob, now: number): Finding[] {
  const alone = { ...book, jobs: [] };
  const { candidate, mine, covers } = triedOn(alone, job);
  const ground = { home: book.home, find: wayFinder(book.ways), restMinutes: book.restMinutes };
  const { moves } = movesOf(mine, laneOf(alone, mine), ground);
  return paperFindings({ book: alone, candidate, mine, moves, covers, tryOn: undefined, now });
}

/**
 * Where the stringline is ringed: what the check finds between the candidate, pencils and ink, with the few words beside the ring.
 */
import type { Stringline } from '../contract/road.ts';
import { findingOf, neighboursOf, type Neighbour } from '../fit/between.ts';
import type { Book, BookJob } from '../fit/book.ts';
import { laneOf, type StayEntry } from '../fit/lane.ts';
import { meetingPairs } from '../fit/meeting.ts';
import { overlapFindings } from '../fit/overlap.ts';
import { instantText } from '../time/read.ts';
import { lengthInWords } from '../words/amounts.ts';
import type { Ground } from '../fit/moves.ts';

type Clash = Stringline['clashes'][number];
const MINUTE = 60_000;

/** Clashes of one job with the others of the book. */
export function clashesOf(job: BookJob, book: Book, ground: Ground): Clash[] {
  const lane = laneOf(book, job);
  const late = neighboursOf(lane, ground).flatMap((pair) => betweenClash(pair, book));
  const atOnce = meetingPairs(lane.filter((entry) => entry.kind === 'stay')).flatMap(([one, other]) => {
    const [own, met] = one.standing === 'own' ? [one, other] : [other, one];
    return own.standing === 'own' && met.standing !== 'own' ? [atOnceClash(own, met, book)] : [];
  });
  return [...atOnce, ...late];
}

function atOnceClash(own: StayEntry, other: StayEntry, book: Book): Clash {
  const start = Math.max(own.startAt, other.startAt);
  const end = Math.min(own.endAt, other.endAt);
  const sentence = overlapFindings([own, other], book.home)[0]?.sentence ?? '';
  return clash(own.from.key, start, end, `${lengthInWords(Math.ceil((end - start) / MINUTE))} at once`, sentence, [own.job, other.job]);
}

function betweenClash(pair: Neighbour, book: Book): Clash[] {
  const finding = findingOf(pair, book.home)[0];
  if (!finding || finding.hardness === 'know') return [];
  const late = Math.ceil(-pair.slack);
  const short = pair.route.long === 0 ? `${lengthInWords(late)} short of rest` : `there ${lengthInWords(late)} late`;
  return [
    clash(pair.after.from.key, pair.after.startAt, pair.after.startAt + late * MINUTE, short, finding.sentence, [
      pair.own.job,
      pair.other.job,
    ]),
  ];
}

function clash(placeKey: string, start: number, end: number, short: string, sentence: string, jobs: readonly BookJob[]): Clash {
  return {
    placeKey,
    start: instantText(start),
    end: instantText(end),
    short,
    sentence,
    jobIds: jobs.flatMap(({ id }) => (id === null ? [] : [id])),
  };
}

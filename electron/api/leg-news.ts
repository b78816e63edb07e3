/**
 * A delay or a cancellation typed for a ticketed leg, and what it breaks.
 */
import type { Clock } from '../../core/contract/desk.ts';
import type { Leg, LegFields } from '../../core/contract/trips.ts';
import { legClock } from '../../core/desk/leg-clock.ts';
import type { BookJob, BookLeg } from '../../core/fit/book.ts';
import { assess } from '../../core/fit/check.ts';
import { instantText } from '../../core/time/read.ts';
import { chainTroubles } from '../../core/trips/chain.ts';
import { placedLeg, ticketsAndWays } from '../../core/trips/legs.ts';
import { asTicketed, newsInWords } from '../../core/trips/news.ts';
import { staysOf } from '../../core/trips/stays.ts';
import { jobById } from '../../db/jobs.ts';
import { writeHistory } from '../../db/keeping.ts';
import { keepLeg, legById, legsOfJob, legsWithNews } from '../../db/legs.ts';
import type { ReadableDb } from '../../db/store.ts';
import { bookNear, jobOnBooks, spanOf } from './book.ts';
import { deed } from './deed.ts';
import { os } from './os.ts';
import { notFound, refused, stale } from './trouble.ts';
import { placedLegs } from './unsaved.ts';

export const legNews = os.trips.legNews.handler(({ input: { id, version, told }, context }) =>
  deed(context, 'trips.legNews', {}, (db) => {
    const before = legById(db, id);
    if (!before) throw notFound('This leg');
    if (before.version !== version) throw stale('This leg', before, told);
    if (before.source !== 'ticketed')
      throw refused(
        'This leg is typed: it says how long the way takes, and stands at no time.',
        'Change the leg, or type its ticket first.',
      );
    const ticketed = asTicketed(before);
    const fields: LegFields = told.kind === 'moved' ? { ...ticketed, depart: told.depart, arrive: told.arrive } : ticketed;
    const [placed] = placedLegs([fields], 'told');
    if (!placed) throw notFound('This leg');
    const now = context.now();
    const was = { depart: ticketed.depart, arrive: ticketed.arrive };
    const news = told.kind === 'as ticketed' ? null : { kind: told.kind, at: instantText(now), was };
    const leg = keepLeg(db, before.jobId, before, fields, { departAt: placed.departAt, arriveAt: placed.arriveAt, now }, news);
    const sentence = news
      ? `${newsInWords(fields, news)}.`
      : `The ${fields.mode} from ${fields.from.name} to ${fields.to.name} goes as ticketed.`;
    writeHistory(db, { at: now, subject: 'job', subjectId: before.jobId, deed: 'trips.legNews', sentence, before });
    return { leg };
  }),
);

/** Clocks of tickets that were moved or cancelled and have not left yet, where that breaks something. `now` in epoch ms. */
export function legClocks(db: ReadableDb, now: number): Clock[] {
  return legsWithNews(db, now).flatMap((leg) => {
    const job = jobById(db, leg.jobId, now);
    if (!job || (job.state !== 'inked' && job.state !== 'pencilled')) return [];
    const placed = placedLeg(leg);
    const leavesAt = typeof placed === 'string' ? now : placed.departAt;
    const clock = legClock({ leg, job, broken: brokenBy(db, leg, job, now), leavesAt, now });
    return clock ? [clock] : [];
  });
}

/** What is broken on the job and was not with this leg as it was ticketed, in sentences. */
function brokenBy(db: ReadableDb, leg: Leg, job: Parameters<typeof jobOnBooks>[1], now: number): string[] {
  const known = jobOnBooks(db, job);
  if (!known) return [];
  const { candidate, ways } = known;
  const near = bookNear(db, { ...spanOf(candidate.days), now, leaveOutJob: job.id });
  const book = { ...near, ways: [...ways, ...near.ways] };
  const troublesOf = (legs: readonly BookLeg[]): string[] => {
    const asIf: BookJob = { ...candidate, legs: [...legs] };
    const { findings } = assess({ book, candidate: asIf, tryOn: undefined, now, replyBy: null });
    const hard = findings.filter(({ hardness }) => hardness !== 'know').map(({ sentence }) => sentence);
    return [...chainTroubles(legs, staysOf(candidate.days)), ...hard];
  };
  const legs = legsOfJob(db, job.id);
  const then = new Set(troublesOf(ticketsOf(legs, leg)));
  const broken = troublesOf(candidate.legs ?? []).filter((sentence) => !then.has(sentence));
  return isReplaced(leg, legs) ? broken : [...broken, 'Nothing stands in its place but the estimated way.'];
}

/** Whether a leg goes, or another goes in its place. */
function isReplaced(leg: Leg, legs: readonly Leg[]): boolean {
  if (leg.news?.kind !== 'cancelled') return true;
  return legs.some(
    ({ id, news, from, to }) => id !== leg.id && news?.kind !== 'cancelled' && (from.key === leg.from.key || to.key === leg.to.key),
  );
}

/** The tickets of a job with one of them as it was bought. */
function ticketsOf(legs: readonly Leg[], one: Leg): BookLeg[] {
  const placed = legs
    .filter(({ id, news }) => id === one.id || news?.kind !== 'cancelled')
    .map((leg) => placedLeg(leg.id === one.id ? asTicketed(leg) : leg, leg.id));
  return ticketsAndWays(placed.filter((each) => typeof each !== 'string')).tickets;
}

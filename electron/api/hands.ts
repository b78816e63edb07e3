/**
 * Hands on jobs: asked, pencilled, said yes; and what to do when I cannot come.
 */
import type { Clock } from '../../core/contract/desk.ts';
import type { HandOnJob, HandState, HeldJob, StandIn } from '../../core/contract/hands.ts';
import type { Job } from '../../core/contract/jobs.ts';
import type { Hand } from '../../core/contract/people.ts';
import { handClocks, type HandAsked } from '../../core/desk/hand-clocks.ts';
import type { Book, BookJob } from '../../core/fit/book.ts';
import { standIn, standIns, type StandInCheck } from '../../core/fit/hands.ts';
import { askHandText } from '../../core/people/ask-hand.ts';
import { cannotComeText } from '../../core/people/cannot-come.ts';
import { instantText } from '../../core/time/read.ts';
import { dateLater } from '../../core/time/wall.ts';
import { wayFinder } from '../../core/trips/ways.ts';
import { datesInWords } from '../../core/words/dates.ts';
import { loadBook } from '../../db/book.ts';
import { handDatesOf, keepHandDate, openHandAsks, type HandDateRow } from '../../db/hand-dates.ts';
import { daysOf } from '../../db/job-days.ts';
import { jobById } from '../../db/jobs.ts';
import { writeHistory } from '../../db/keeping.ts';
import { handById } from '../../db/people.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import { bookNear, jobOnBooks, midnight, ownSetup, spanOf } from './book.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { whole } from './job-deed.ts';
import { os } from './os.ts';
import { badInput, notFound, refused } from './trouble.ts';

const HOLDS: readonly HandState[] = ['asked', 'pencilled', 'said yes'];
const CLOSED: readonly Job['state'][] = ['let go', 'declined', 'cancelled'];
/** Days that can be asked about at once. */
const LONGEST = 120;

const of = os.hands.of.handler(({ input, context }) =>
  context.store.read((db) => ({ hands: onJob(db, whole(db, input.jobId, context.now()), context.now()) })),
);

/** Everybody who was asked for dates of a job, and what the check says of those that they hold or would hold. */
function onJob(db: ReadableDb, job: Job, now: number): HandOnJob[] {
  const byHand = Map.groupBy(handDatesOf(db, job.id), ({ handId }) => handId);
  const checked = checker(db, job, now);
  return [...byHand].flatMap(([handId, rows]) => {
    const hand = handById(db, handId);
    if (!hand) return [];
    const found = checked(
      handId,
      rows.filter(({ state }) => HOLDS.includes(state)).map(({ date }) => date),
    );
    return [
      {
        handId,
        name: hand.name,
        backup: hand.backup,
        dates: rows.map((row) => dateAsMet(row, job)),
        answer: found?.answer ?? null,
        sentences: found?.findings.map(({ sentence }) => sentence) ?? [],
      },
    ];
  });
}

const dateAsMet = ({ date, state, askedAt, at, how }: HandDateRow, job: Job): HandOnJob['dates'][number] => ({
  date,
  state,
  askedAt: instantText(askedAt),
  at: instantText(at),
  how,
  wanted: job.days.some((day) => day.date === date),
});

/** Checks a hand on dates of a job. */
function checker(db: ReadableDb, job: Job, now: number): (handId: string, dates: readonly string[]) => StandInCheck | undefined {
  const known = CLOSED.includes(job.state) ? null : jobOnBooks(db, job);
  if (!known) return () => undefined;
  const book = bookNear(db, { ...spanOf(known.candidate.days), now, leaveOutJob: job.id });
  const find = wayFinder([...known.ways, ...book.ways]);
  return (handId, dates) => {
    const hand = book.hands?.find(({ id }) => id === handId);
    const days = known.candidate.days.filter(({ date }) => dates.includes(date));
    return hand && days.length > 0 ? standIn(hand, { ...known.candidate, days }, book, find, now) : undefined;
  };
}

const ask = os.hands.ask.handler(({ input, context }) => said(context, 'hands.ask', { ...input, state: 'asked' }));
const settle = os.hands.settle.handler(({ input, context }) => said(context, 'hands.settle', input));

type Said = { jobId: string; handId: string; dates: string[]; state: HandState; how: string; key?: string | undefined };
const WORDS: Record<HandState, string> = {
  asked: 'was asked for',
  pencilled: 'holds in pencil',
  'said yes': 'said yes to',
  'said no': 'said no to',
  'let go': 'was let go for',
};

function said(context: Context, name: string, input: Said): { hands: HandOnJob[] } {
  return deed(context, name, input, (db) => {
    const now = context.now();
    const job = whole(db, input.jobId, now);
    const hand = handById(db, input.handId);
    if (!hand) throw notFound('This hand');
    refuseWhatCannotBe(db, job, hand, input);
    const before = handDatesOf(db, job.id).filter((row) => row.handId === hand.id);
    for (const date of new Set(input.dates)) keepHandDate(db, { jobId: job.id, handId: hand.id, date }, { ...input, now });
    const how = input.how === '' ? '' : ` (${input.how})`;
    const sentence = `${hand.name} ${WORDS[input.state]} ${datesInWords([...new Set(input.dates)].sort())}${how}.`;
    writeHistory(db, { at: now, subject: 'job', subjectId: job.id, deed: name, sentence, before: { hand: hand.id, dates: before } });
    return { hands: onJob(db, job, now) };
  });
}

/** A date that is given up may be one that the job has no longer; one that is held may not. */
function refuseWhatCannotBe(db: WritableDb, job: Job, hand: Hand, { dates, state }: Said): void {
  if (!HOLDS.includes(state)) {
    const known = new Set(handDatesOf(db, job.id).flatMap((row) => (row.handId === hand.id ? [row.date] : [])));
    const unknown = dates.filter((date) => !known.has(date));
    if (unknown.length > 0)
      throw refused(`${hand.name} was not asked for ${datesInWords(unknown.sort())}.`, 'Ask first, or leave these dates out.');
    return;
  }
  if (CLOSED.includes(job.state)) throw refused(`${job.title} was ${job.state}.`, 'Open it again first; nobody is needed for it now.');
  const foreign = dates.filter((date) => !job.days.some((day) => day.date === date)).sort();
  if (foreign.length > 0)
    throw badInput([{ field: 'dates', sentence: `${datesInWords(foreign)}: no date of ${job.title}. Give dates that the job has.` }]);
}

const cannotCome = os.hands.cannotCome.handler(({ input, context }) =>
  context.store.read((db) => {
    const { home, name, restHours, distance } = ownSetup(db);
    const length = Temporal.PlainDate.from(input.from).until(input.to).days;
    if (length < 0) throw badInput([{ field: 'to', sentence: 'is before the first day. Give the last day on which you cannot come.' }]);
    if (length > LONGEST)
      throw badInput([{ field: 'to', sentence: `is more than ${LONGEST} days after the first. Ask about a shorter time.` }]);
    const now = context.now();
    const span = { from: midnight(input.from, home.zone), to: midnight(dateLater(input.to, 1), home.zone) };
    const book = loadBook(db, { ...span, home, now, leaveOutJob: null, restMinutes: Math.round(Number(restHours) * 60), distance });
    const held = book.jobs
      .map((job) => ({ job, days: job.days.filter((day) => day.kind !== 'edit' && day.wrapAt > span.from && day.callAt < span.to) }))
      .filter(({ days }) => days.some((day) => day.wrapAt > now))
      .sort((a, b) => (a.days[0]?.callAt ?? 0) - (b.days[0]?.callAt ?? 0));
    return {
      jobs: held.flatMap(({ job, days }) =>
        job.id === null ? [] : [heldJob(db, whole(db, job.id, now), { ...job, days }, book, name, now)],
      ),
    };
  }),
);

function heldJob(db: ReadableDb, job: Job, part: BookJob, book: Book, from: string, now: number): HeldJob {
  const rows = handDatesOf(db, job.id);
  const checks = standIns({ ...part, role: job.role }, book, wayFinder(book.ways), now);
  const dates = [...new Set(part.days.map(({ date }) => date))];
  const others = rows.filter(({ state, date }) => state === 'said yes' && job.days.some((day) => day.date === date));
  return {
    jobId: job.id,
    title: job.title,
    state: job.state,
    place: part.place.name,
    zone: part.place.zone,
    days: part.days.map(({ date, call, wrap }) => ({ date, call, wrap })),
    byHands: others.map(({ date, handId }) => ({ date, name: handById(db, handId)?.name ?? '' })),
    contact: job.contact,
    standIns: checks.map((check) => standInOf(check, job, part, rows, from)),
    message: cannotComeText({
      contact: job.contact.name,
      title: job.title,
      dates,
      othersDates: [...new Set(others.map(({ date }) => date))],
      somebody: checks.some(({ answer }) => answer !== 'not possible'),
      inInk: job.state === 'inked',
      from,
    }),
  };
}

function standInOf({ hand, answer, cost, findings }: StandInCheck, job: Job, part: BookJob, rows: HandDateRow[], from: string): StandIn {
  const days = part.days.map(({ date, kind, call, wrap }) => ({ date, kind, call, wrap }));
  return {
    handId: hand.id,
    name: hand.name,
    backup: hand.backup,
    answer,
    cost,
    sentences: findings.map(({ sentence }) => sentence),
    asked: rows.some((row) => row.handId === hand.id && HOLDS.includes(row.state) && days.some(({ date }) => date === row.date)),
    message: askHandText({ hand, role: job.role, place: part.place, days, from }),
  };
}

/** Hands who were asked and have not answered, as clocks of the Desk. `now` in epoch ms. */
export function askClocks(db: ReadableDb, now: number, homeZone: string): Clock[] {
  const asked = Map.groupBy(openHandAsks(db), ({ jobId, handId }) => `${jobId} ${handId}`);
  const waiting = [...asked.values()].flatMap((rows): HandAsked[] => {
    const [first] = rows;
    const job = first && jobById(db, first.jobId, now);
    if (!first || !job || CLOSED.includes(job.state)) return [];
    const days = daysOf(db, job.id).filter(({ date }) => rows.some((row) => row.date === date));
    const { handId, askedAt } = first;
    const name = handById(db, handId)?.name ?? '';
    const firstCallAt = Math.min(...days.map(({ callAt }) => callAt));
    return days.length > 0 ? [{ handId, name, job, dates: days.map(({ date }) => date), askedAt, firstCallAt }] : [];
  });
  return handClocks(waiting, now, homeZone);
}

export const hands = { of, ask, settle, cannotCome };

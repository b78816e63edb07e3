/**
 * What bites next, the next fourteen days, and this month's figures.
 */
import type { FitResult } from '../../core/contract/fit.ts';
import type { Job } from '../../core/contract/jobs.ts';
import type { Stringline } from '../../core/contract/road.ts';
import { clocksOf, SHOWN, type DeskJob } from '../../core/desk/clocks.ts';
import { laidOnDesk } from '../../core/desk/laid.ts';
import { monthOf } from '../../core/desk/month.ts';
import type { Book } from '../../core/fit/book.ts';
import { assess } from '../../core/fit/check.ts';
import { stringlineOf } from '../../core/road/stringline.ts';
import { epochOf, wallAt } from '../../core/time/read.ts';
import { dateLater } from '../../core/time/wall.ts';
import { deskJobIds } from '../../db/desk.ts';
import { daysOf } from '../../db/job-days.ts';
import { jobById, momentAt, newestQuote } from '../../db/jobs.ts';
import { anyOpenEdit } from '../../db/open-edits.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb } from '../../db/store.ts';
import { bookNear, jobForBook, midnight, spanOf } from './book.ts';
import { bringBack, calendarTroubles, clockLines, linesOf, putAway } from './desk-lines.ts';
import type { Context } from './context.ts';
import { editClocksNow } from './edit-clocks.ts';
import { editsBeside, plannedNow } from './edit-plan.ts';
import { handOverClocks } from './hand-over-clocks.ts';
import { askClocks } from './hands.ts';
import { homeZone } from './job-facts.ts';
import { legClocks } from './leg-news.ts';
import { os } from './os.ts';
import { moneyOnDesk } from './money-clocks.ts';
import { kitClocks } from './packs.ts';
import { forgottenClocks, furtherClocks, notesClocks } from './notes-clocks.ts';
import { paperClocks } from './paper-clocks.ts';
import { standingOf } from './pencils.ts';

type Answer = FitResult['answer'];

const AHEAD_DAYS = 14;
/** So many open inquiries are checked against the books; more are listed without their answer. */
const CHECKED = 20;

const see = os.desk.see.handler(({ context }) =>
  context.store.read((db) => {
    const now = context.now();
    const setup = setupRow(db)?.fields;
    const zone = homeZone(db, context);
    const jobs = jobsOnDesk(db, now, zone);
    const planned = setup && anyOpenEdit(db) ? plannedNow(db, context) : null;
    const answers = setup ? answersTo(db, context, jobs, planned?.ground) : new Map<string, Answer | null>();
    const pencils = setup ? pencilsAmong(db, jobs, now) : new Map<string, Pencilled>();
    const asDeskJobs = jobs.map((job) => deskJob(db, job, answers.get(job.id) ?? null, pencils.get(job.id)));
    const ofJobs = clocksOf(asDeskJobs, now, zone);
    const money = setup ? moneyOnDesk(db, setup, now, wallAt(now, zone).slice(0, 10)) : null;
    const clocks = [
      ...ofJobs,
      ...kitClocks(db, now, zone),
      ...askClocks(db, now, zone),
      ...(setup ? legClocks(db, now) : []),
      ...notesClocks(db, context),
      ...(planned ? editClocksNow(db, planned) : []),
      ...handOverClocks(db, context),
      ...furtherClocks(db, now, zone),
      ...forgottenClocks(db, now, zone),
      ...(setup ? paperClocks(db, setup, now) : []),
      ...(money?.clocks ?? []),
    ].sort((a, b) => epochOf(a.at) - epochOf(b.at));
    const span = daysAhead(now, zone);
    const laid = laidOnDesk(asDeskJobs, clocks, span);
    const urgent = jobs.find(({ id }) => id === laid);
    return {
      now: momentAt(now, zone),
      clocks,
      lines: [...calendarTroubles(db), ...clockLines(db), ...(setup ? linesOf(db, jobs, now, zone) : [])],
      stringline: setup ? nextDays(db, urgent, now, span) : null,
      month: setup && money ? { ...monthOf(asDeskJobs, now, { zone, currency: setup.currency }), ...money.month } : null,
    };
  }),
);

function jobsOnDesk(db: ReadableDb, now: number, zone: string): Job[] {
  const today = wallAt(now, zone).slice(0, 10);
  const monthBegins = midnight(`${today.slice(0, 7)}-01`, zone);
  const monthEnds = midnight(dateLater(`${today.slice(0, 7)}-28`, 4), zone);
  const to = Math.max(monthEnds, midnight(dateLater(today, AHEAD_DAYS + 1), zone));
  const ids = deskJobIds(db, { from: monthBegins, to, runningSince: now - SHOWN });
  return ids.flatMap((id) => jobById(db, id, now) ?? []);
}

function deskJob(db: ReadableDb, job: Job, answer: Answer | null, pencilled: Pencilled | undefined): DeskJob {
  return {
    id: job.id,
    version: job.version,
    title: job.title,
    stage: job.state === 'ran out' ? 'pencilled' : job.state,
    place: job.place,
    days: daysOf(db, job.id),
    questions: job.questions,
    receivedAt: epochOf(job.received.at),
    replyByAt: job.replyBy ? epochOf(job.replyBy.at) : null,
    heldUntil: job.pencil?.state === 'live' || job.pencil?.state === 'ran out' ? epochOf(job.pencil.expires.at) : null,
    challengedUntil: pencilled?.challengedUntil ?? null,
    among: pencilled?.among ?? null,
    quoteValidUntil: newestQuote(db, job.id)?.validUntilAt ?? null,
    total: job.total,
    answer,
  };
}

type Pencilled = Pick<DeskJob, 'challengedUntil' | 'among'>;

/** How live pencils stand among each other, over all their dates, and which of them are challenged. */
function pencilsAmong(db: ReadableDb, jobs: readonly Job[], now: number): Map<string, Pencilled> {
  const live = jobs.filter((job) => job.pencil?.state === 'live').slice(0, CHECKED);
  return new Map(
    live.map((job) => {
      const { ranks, challenge } = standingOf(db, job, now);
      const titles = (others: 'before' | 'behind') => [...new Set(ranks.flatMap((rank) => rank[others].map(({ title }) => title)))];
      const challengedUntil = challenge ? epochOf(challenge.until.at) : null;
      return [job.id, { challengedUntil, among: { before: titles('before'), behind: titles('behind') } }];
    }),
  );
}

/** What the check says to open inquiries, where place and days are known. */
function answersTo(db: ReadableDb, context: Context, jobs: readonly Job[], edits: Book['edits']): Map<string, Answer | null> {
  const waiting = jobs.filter((job) => job.state === 'inquiry').slice(0, CHECKED);
  return new Map(waiting.map((job) => [job.id, answerTo(db, context, job, edits)]));
}

function answerTo(db: ReadableDb, context: Context, job: Job, edits: Book['edits']): Answer | null {
  const candidate = jobForBook(db, job);
  if (!candidate) return null;
  const now = context.now();
  const book = bookNear(db, { ...spanOf(candidate.days), now, leaveOutJob: job.id });
  const promised = edits ? { edits } : editsBeside(db, context, now, candidate);
  return assess({ book: { ...book, ...promised }, candidate, tryOn: undefined, now, replyBy: job.replyBy }, false).answer;
}

/** From today's midnight at home on, epoch ms. */
function daysAhead(now: number, zone: string): { from: number; to: number } {
  const today = wallAt(now, zone).slice(0, 10);
  return { from: midnight(today, zone), to: midnight(dateLater(today, AHEAD_DAYS), zone) };
}

/** The small stringline of a span, with the most urgent inquiry laid on it. */
function nextDays(db: ReadableDb, inquiry: Job | undefined, now: number, span: { from: number; to: number }): Stringline {
  const book = bookNear(db, { ...span, now, leaveOutJob: inquiry?.id ?? null });
  return stringlineOf({ book, candidate: inquiry ? jobForBook(db, inquiry) : null, ...span, now });
}

export const desk = { see, putAway, bringBack };

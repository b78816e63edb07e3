/**
 * What bites next: every running clock of the jobs on the books, each with the action that stops it.
 */
import type { Clock } from '../contract/desk.ts';
import type { FitResult } from '../contract/fit.ts';
import type { Question } from '../contract/inquiries.ts';
import type { Money, Place } from '../contract/parts.ts';
import type { BookDay } from '../fit/book.ts';
import { stateOf, type Stage } from '../jobs/state.ts';
import { formatMoney } from '../money/format.ts';
import { instantText } from '../time/read.ts';
import { daysOnSite } from '../trips/stays.ts';
import { countInWords } from '../words/amounts.ts';
import { datesInWords } from '../words/dates.ts';
import { joined } from '../words/lists.ts';
import { clockAt } from '../words/moments.ts';
import { dayWords, whenWords } from './when.ts';

const DAY = 86_400_000;
/** Common practice: an inquiry that names no reply-by is answered within a day. */
const ANSWER_WITHIN = DAY;
/** How long a clock that has run out stays on the Desk, and how far ahead calls are shown, milliseconds. */
export const SHOWN = 14 * DAY;

/** A job as the Desk needs it; instants in epoch milliseconds. */
export type DeskJob = {
  id: string;
  version: number;
  title: string;
  stage: Stage;
  place: Place | null;
  days: readonly BookDay[];
  questions: readonly Question[];
  receivedAt: number;
  replyByAt: number | null;
  heldUntil: number | null;
  /** Until when the holder was asked for a yes or no. */
  challengedUntil: number | null;
  /** Where a live pencil stands among others on its dates, where that was asked: titles of those before it and behind it. */
  among: { before: readonly string[]; behind: readonly string[] } | null;
  /** Valid-until of the newest made quote. */
  quoteValidUntil: number | null;
  total: Money | null;
  /** What the check says, where it was asked. */
  answer: FitResult['answer'] | null;
};

/** Clocks in order of their instants, so that the longest late stands first. `homeZone` is the zone in which times at home are said. */
export function clocksOf(jobs: readonly DeskJob[], now: number, homeZone: string): Clock[] {
  return jobs
    .flatMap((job) => clockOf(job, now, homeZone) ?? [])
    .filter(({ at }) => at > now - SHOWN)
    .sort((a, b) => a.at - b.at || (a.job.title < b.job.title ? -1 : 1))
    .map(({ kind, at, job, sentence, second, action }) => ({
      id: `${kind}:${job.id}`,
      kind,
      at: instantText(at),
      late: at <= now,
      jobId: job.id,
      jobVersion: job.version,
      sentence,
      second,
      action,
    }));
}

type Running = { kind: Clock['kind']; at: number; job: DeskJob; sentence: string; second: string; action: string };

/** A job has at most one clock: what its state waits for. */
function clockOf(job: DeskJob, now: number, homeZone: string): Running | undefined {
  const state = stateOf(job.stage, job.heldUntil, now);
  if (state === 'inquiry') return replyClock(job, now, homeZone);
  if (state === 'inked') return callClock(job, now, homeZone);
  if (state === 'quoted') return quoteClock(job, now, homeZone);
  return state === 'pencilled' || state === 'ran out' ? pencilClock(job, state, now, homeZone) : undefined;
}

/** A quote that nobody said yes or no to; without a pencil it holds no dates. */
function quoteClock(job: DeskJob, now: number, homeZone: string): Running | undefined {
  const at = job.quoteValidUntil;
  if (at === null) return undefined;
  const sentence = `${job.title}: quote ${at <= now ? 'was ' : ''}valid until ${whenWords(at, homeZone, now)}`;
  return { kind: 'quote', at, job, sentence, second: joinedParts([...whenAndWhere(job), price(job), 'no dates held']), action: 'open' };
}

function pencilClock(job: DeskJob, state: 'pencilled' | 'ran out', now: number, homeZone: string): Running | undefined {
  const at = job.heldUntil;
  if (at === null) return undefined;
  const when = whenWords(at, homeZone, now);
  if (state === 'ran out') {
    const second = joinedParts([...whenAndWhere(job), 'holds nothing now; renewed it goes last']);
    return { kind: 'ran out', at, job, sentence: `${job.title}: pencil ran out ${when}`, second, action: 'renew' };
  }
  const second = joinedParts([rankWords(job), ...whenAndWhere(job), price(job)]);
  const asked = job.challengedUntil;
  if (asked !== null && asked < at) {
    const until = whenWords(asked, homeZone, now);
    const sentence =
      asked <= now ? `${job.title}: no answer by ${until}; it may be let go` : `${job.title}: asked for a yes or no by ${until}`;
    return { kind: 'challenge', at: asked, job, sentence, second, action: 'ask-or-let-go' };
  }
  return { kind: 'pencil', at, job, sentence: `${job.title}: pencil runs out ${when}`, second, action: 'ask-or-let-go' };
}

/** Who stands before a pencil or waits behind it; no words for a pencil that is alone. */
function rankWords({ among }: DeskJob): string {
  if (!among) return '';
  if (among.before.length > 0) return `behind ${joined(among.before)}`;
  return among.behind.length > 0 ? `${joined(among.behind)} ${among.behind.length === 1 ? 'waits' : 'wait'} behind it` : '';
}

function replyClock(job: DeskJob, now: number, homeZone: string): Running {
  const named = job.replyByAt !== null;
  const at = job.replyByAt ?? Math.min(job.receivedAt + ANSWER_WITHIN, job.days[0]?.callAt ?? Infinity);
  const sentence = named
    ? `${job.title}: reply by ${whenWords(at, homeZone, now)}`
    : `${job.title}: not answered, came ${whenWords(job.receivedAt, homeZone, now)}`;
  const open = job.questions.length > 0 ? `${countInWords(job.questions.length, 'question')} open` : '';
  const second = joinedParts([job.answer ? answerWords[job.answer] : '', ...whenAndWhere(job), open]);
  return { kind: named ? 'reply-by' : 'question', at, job, sentence, second, action: 'answer' };
}

const answerWords: Record<FitResult['answer'], string> = { free: 'Free', 'free if': 'Free if …', 'not possible': 'Not possible' };

/** The next call in ink, said in the clock of the place, with the one at home beside it where they differ. */
function callClock(job: DeskJob, now: number, homeZone: string): Running | undefined {
  const day = job.days.find(({ callAt }) => callAt > now);
  if (!day || day.callAt > now + SHOWN) return undefined;
  const place = { zone: job.place?.zone ?? homeZone };
  const home = { zone: homeZone };
  const date = dayWords(day.callAt, place.zone, now);
  const sentence = `Call ${date ? `${date} ` : ''}${clockAt(day.callAt, place, home)}, ${job.title}${whichDay(job, day)}`;
  const second = joinedParts([job.place?.name ?? '', `wrap ${day.wrap.slice(11)}`]);
  return { kind: 'call', at: day.callAt, job, sentence, second, action: 'open' };
}

/** Of several days: "day 2 of 3" on site, else what kind of day it is. */
function whichDay({ days }: DeskJob, day: BookDay): string {
  if (days.length === 1) return '';
  const onSite = daysOnSite(days);
  const index = onSite.indexOf(day);
  if (index === -1) return `, ${day.kind} day`;
  return onSite.length > 1 ? `, day ${index + 1} of ${onSite.length}` : '';
}

function whenAndWhere(job: DeskJob): string[] {
  return [job.days.length > 0 ? datesInWords(job.days.map((day) => day.date)) : '', job.place?.name ?? ''];
}

function price({ total }: DeskJob): string {
  return total ? formatMoney(total, { code: true }) : '';
}

const joinedParts = (parts: readonly string[]) => parts.filter((part) => part !== '').join('; ');

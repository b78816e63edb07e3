/**
 * What was handed over: a clock until it is approved, and one for the originals that are kept to a date.
 */
import type { Clock } from '../contract/desk.ts';
import { notesDue, windowEnds, type RoundCalendars } from '../deliverables/rounds.ts';
import { instantText } from '../time/read.ts';
import { dateIn, nextDate } from '../time/wall.ts';
import { dateInWords } from '../words/dates.ts';
import { dayWords, whenWords } from './when.ts';

type OfJob = { id: string; version: number; title: string };

/** `at` in epoch milliseconds; the client has the window of a round, in business days, to say yes. */
export type Handed = { id: string; job: OfJob; name: string; at: number; windowDays: number };

/** Late once the window is over: common practice is to ask then, not to take silence for a yes. @param now epoch milliseconds */
export function approvalClock({ id, job, name, at: handedAt, windowDays }: Handed, calendars: RoundCalendars, now: number): Clock {
  const { zone } = calendars;
  const at = windowEnds(notesDue(handedAt, windowDays, calendars), zone);
  return {
    id: `approval:${id}`,
    kind: 'approval',
    at: instantText(at),
    late: at <= now,
    jobId: job.id,
    jobVersion: job.version,
    sentence: `${name}: handed over, not approved`,
    second: `handed over ${dayWords(handedAt, zone, now) || 'today'}; ${at <= now ? 'ask whether it is good' : `a yes is due by ${whenWords(at, zone, now)}`}; ${job.title}`,
    action: 'approval',
  };
}

/** `until` is the last date on which originals are kept, at home. */
export type KeptOriginals = { id: string; job: OfJob; name: string; until: string };

/** Never late: originals that may go do no harm, and wait for the end of today. @param now epoch milliseconds */
export function originalsClock({ id, job, name, until }: KeptOriginals, zone: string, now: number): Clock {
  const today = dateIn(zone, now);
  const over = until < today;
  return {
    id: `originals:${id}`,
    kind: 'originals',
    at: instantText(windowEnds(over ? today : until, zone)),
    late: false,
    jobId: job.id,
    jobVersion: job.version,
    sentence: `${name}: originals may go ${over ? 'now' : `on ${dateInWords(nextDate(until))}`}`,
    second: `kept until ${dateInWords(until)}; ${job.title}`,
    action: 'originals',
  };
}

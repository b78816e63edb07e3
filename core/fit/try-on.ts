/**
 * Changes that are tried on before anything is saved.
 */
import type { TryOn } from '../contract/fit.ts';
import { wallAt } from '../time/read.ts';
import type { Book, BookDay, BookJob } from './book.ts';

const MINUTE = 60_000;

/** The book and the candidate as they would be. A call is never moved past its wrap, nor a wrap before its call. */
export function triedOn(book: Book, candidate: BookJob, tryOn: TryOn = {}): { book: Book; candidate: BookJob } {
  const restMinutes = tryOn.restMinutes ?? book.restMinutes;
  const ways = tryOn.ways ? [...tryOn.ways, ...book.ways.filter((way) => !tryOn.ways?.some((typed) => samePair(typed, way)))] : book.ways;
  const jobs = tryOn.withoutJobs ? book.jobs.filter((job) => job.id === null || !tryOn.withoutJobs?.includes(job.id)) : book.jobs;
  const later = (tryOn.firstCallLaterMinutes ?? 0) * MINUTE;
  const earlier = (tryOn.lastWrapEarlierMinutes ?? 0) * MINUTE;
  const days = [...candidate.days].sort((a, b) => a.callAt - b.callAt);
  const moved = withLaterCall(withEarlierWrap(days, earlier, candidate.place.zone), later, candidate.place.zone);
  return { book: { ...book, restMinutes, ways, jobs }, candidate: { ...candidate, days: moved } };
}

/** Days that would be over before the new call are left out; the last always stays, a minute long at least. */
function withLaterCall(days: readonly BookDay[], later: number, zone: string): BookDay[] {
  const first = days[0];
  if (!first || later === 0) return [...days];
  const call = first.callAt + later;
  const kept = days.filter((day, index) => day.wrapAt > call || index === days.length - 1);
  return kept.map((day) => (day.callAt >= call ? day : calledAt(day, Math.min(call, day.wrapAt - MINUTE), zone)));
}

function withEarlierWrap(days: readonly BookDay[], earlier: number, zone: string): BookDay[] {
  const last = days.at(-1);
  if (!last || earlier === 0) return [...days];
  const wrapAt = Math.max(last.callAt + MINUTE, last.wrapAt - earlier);
  return [...days.slice(0, -1), { ...last, wrapAt, wrap: wallAt(wrapAt, zone) }];
}

function calledAt(day: BookDay, callAt: number, zone: string): BookDay {
  const call = wallAt(callAt, zone);
  return { ...day, callAt, call, date: call.slice(0, 10) };
}

function samePair(a: { fromKey: string; toKey: string }, b: { fromKey: string; toKey: string }): boolean {
  return (a.fromKey === b.fromKey && a.toKey === b.toKey) || (a.fromKey === b.toKey && a.toKey === b.fromKey);
}

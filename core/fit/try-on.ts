/**
 * Changes that are tried on before anything is saved.
 */
import type { TryOn } from '../contract/fit.ts';
import { wallAt } from '../time/read.ts';
import type { Book, BookDay, BookJob, KitItem, KitNeed } from './book.ts';

const MINUTE = 60_000;

/** The book and the candidate as they would be. A call is never moved past its wrap, nor a wrap before its call. */
export function triedOn(book: Book, candidate: BookJob, tryOn: TryOn = {}): { book: Book; candidate: BookJob } {
  const restMinutes = tryOn.restMinutes ?? book.restMinutes;
  const ways = tryOn.ways ? [...tryOn.ways, ...book.ways.filter((way) => !tryOn.ways?.some((typed) => samePair(typed, way)))] : book.ways;
  const jobs = tryOn.withoutJobs ? book.jobs.filter((job) => job.id === null || !tryOn.withoutJobs?.includes(job.id)) : book.jobs;
  const kit = withExtra(book.kit ?? [], tryOn.kitExtra ?? []);
  const later = (tryOn.firstCallLaterMinutes ?? 0) * MINUTE;
  const earlier = (tryOn.lastWrapEarlierMinutes ?? 0) * MINUTE;
  const days = [...candidate.days].sort((a, b) => a.callAt - b.callAt);
  const moved = withLaterCall(withEarlierWrap(days, earlier, candidate.place.zone), later, candidate.place.zone);
  return {
    book: { ...book, restMinutes, ways, jobs, kit },
    candidate: { ...candidate, days: moved, kit: withInstead(candidate.kit ?? [], tryOn.kitInstead ?? []) },
  };
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

/** Things as if more of them were owned; one that is not on the list is put on it. */
function withExtra(items: readonly KitItem[], extra: readonly KitNeed[]): KitItem[] {
  const known = items.map((item) => ({ ...item, owned: item.owned + countOf(extra, item.id) }));
  const unknown = extra.filter((need) => !items.some((item) => item.id === need.item));
  return [
    ...known,
    ...unknown.map(({ item, count }) => ({
      id: item,
      name: item,
      owned: count,
      resetMinutes: 0,
      resetOnRoad: true,
      does: '',
      subHire: '',
      services: [],
    })),
  ];
}

/** Needs with some of one thing met by another. */
function withInstead(needs: readonly KitNeed[], instead: readonly { item: string; other: string; count: number }[]): KitNeed[] {
  const less = needs.map((need) => ({ ...need, count: Math.max(0, need.count - countOf(instead, need.item)) }));
  const others = instead.map(({ other, count }) => ({ item: other, count }));
  return others.reduce((all, need) => {
    const known = all.find((item) => item.item === need.item);
    return known ? all.map((item) => (item === known ? { ...item, count: item.count + need.count } : item)) : [...all, need];
  }, less);
}

function countOf(needs: readonly KitNeed[], item: string): number {
  return needs.filter((need) => need.item === item).reduce((sum, need) => sum + need.count, 0);
}

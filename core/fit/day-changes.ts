/**
 * Days as they would be: a later first call, an earlier last wrap, days moved or called off, or all of them on other dates.
 */
import type { DayMoved, TryOn } from '../contract/try-on.ts';
import { instantOf, wallAt, WallTimeError } from '../time/read.ts';
import { dateLater } from '../time/wall.ts';
import { staysOf } from '../trips/stays.ts';
import type { BookDay } from './book.ts';

const MINUTE = 60_000;

type DayChanges = Pick<TryOn, 'firstCallLaterMinutes' | 'lastWrapEarlierMinutes' | 'shiftDays' | 'daysMoved'>;

/**
 * A candidate's days with changes laid on, in order. A call is never moved past its wrap, nor a wrap before its call, and one day always stays.
 * @throws WallTimeError where a wall time does not exist, or occurs twice, on the other date
 */
export function changedDays(days: readonly BookDay[], zone: string, changes: DayChanges): BookDay[] {
  const moved = movedDays(days, zone, changes.daysMoved?.filter(({ jobId }) => jobId === null) ?? []);
  const shifted = changes.shiftDays ? moved.map((day) => dayLater(day, changes.shiftDays ?? 0, zone)) : moved;
  const sorted = shifted.sort((a, b) => a.callAt - b.callAt);
  const earlier = withEarlierWrap(sorted, (changes.lastWrapEarlierMinutes ?? 0) * MINUTE, zone);
  return withLaterCall(earlier, (changes.firstCallLaterMinutes ?? 0) * MINUTE, zone);
}

/**
 * Days with some of them moved to other dates, or called off; where none would be left, they stay as they are.
 * @throws WallTimeError as `changedDays`
 */
export function movedDays(days: readonly BookDay[], zone: string, moves: readonly Omit<DayMoved, 'jobId'>[]): BookDay[] {
  const left = days.flatMap((day) => {
    const move = moves.find(({ date, kind }) => date === day.date && kind === day.kind);
    if (!move) return [day];
    return move.to === null ? [] : [dayLater(day, daysBetween(day.date, move.to), zone)];
  });
  return left.length > 0 ? left : [...days];
}

/** A day with its wall times on another date; null where one of them does not exist there, or occurs twice. */
export function dayMovedTo(day: BookDay, to: string, zone: string): BookDay | null {
  try {
    return dayLater(day, daysBetween(day.date, to), zone);
  } catch (error) {
    if (error instanceof WallTimeError) return null;
    throw error;
  }
}

/**
 * The same wall times so many days later.
 * @throws WallTimeError as `changedDays`
 */
function dayLater(day: BookDay, shift: number, zone: string): BookDay {
  const moved = (wall: string) => `${dateLater(wall.slice(0, 10), shift)}${wall.slice(10)}`;
  const call = moved(day.call);
  const wrap = moved(day.wrap);
  return {
    ...day,
    date: dateLater(day.date, shift),
    call,
    wrap,
    callAt: instantOf(call, zone).epochMilliseconds,
    wrapAt: instantOf(wrap, zone).epochMilliseconds,
  };
}

/** Days on site that would be over before the new call are left out; the last always stays, a minute long at least. */
function withLaterCall(days: readonly BookDay[], later: number, zone: string): BookDay[] {
  const first = staysOf(days)[0];
  if (!first || later === 0) return [...days];
  const call = first.startAt + later;
  const onSite = staysOf(days).flatMap((stay) => stay.days);
  const last = onSite.at(-1);
  const kept = days.filter((day) => !onSite.includes(day) || day.wrapAt > call || day === last);
  return kept.map((day) => (!onSite.includes(day) || day.callAt >= call ? day : calledAt(day, Math.min(call, day.wrapAt - MINUTE), zone)));
}

function withEarlierWrap(days: readonly BookDay[], earlier: number, zone: string): BookDay[] {
  const last = staysOf(days).at(-1)?.days.at(-1);
  if (!last || earlier === 0) return [...days];
  const wrapAt = Math.max(last.callAt + MINUTE, last.wrapAt - earlier);
  return days.map((day) => (day === last ? { ...day, wrapAt, wrap: wallAt(wrapAt, zone) } : day));
}

function calledAt(day: BookDay, callAt: number, zone: string): BookDay {
  const call = wallAt(callAt, zone);
  return { ...day, callAt, call, date: call.slice(0, 10) };
}

function daysBetween(from: string, to: string): number {
  return Temporal.PlainDate.from(from).until(to, { largestUnit: 'day' }).days;
}

/**
 * The per-diem log by date, over the trips of jobs: two jobs without home in between are one trip.
 */
import { ratesAt } from '../allowances/localities.ts';
import { perDiemOf, type DateAway } from '../allowances/per-diem.ts';
import type { PerDiemRow } from '../contract/expenses.ts';
import type { Place } from '../contract/parts.ts';
import type { BookDay } from '../fit/book.ts';
import type { QuotedTrip } from '../quotes/trip.ts';
import { wallAt } from '../time/read.ts';
import { nextDate } from '../time/wall.ts';

/** A job's time away from home, epoch milliseconds. */
export type Away = { jobId: string; title: string; place: Place; doorOutAt: number; doorInAt: number };

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

/** The time away on a job: one trip, or one for each day where one is home every night; nothing at home. */
export function awayOf(job: { id: string; title: string; place: Place }, days: readonly BookDay[], trip: QuotedTrip): Away[] {
  if (!trip.away) return [];
  const of = { jobId: job.id, title: job.title, place: job.place };
  const daily = trip.legs.filter(({ name }) => name === 'out').length > 1;
  if (!daily) return [{ ...of, doorOutAt: trip.doorOutAt, doorInAt: trip.doorInAt }];
  return days
    .filter(({ kind }) => kind !== 'edit')
    .map(({ callAt, wrapAt }) => ({ ...of, doorOutAt: callAt - trip.outMinutes * MINUTE, doorInAt: wrapAt + trip.backMinutes * MINUTE }));
}

/**
 * One row for each date that is allowed something, or whose rate is not known; dates are those of the clock at home.
 * Meals that were furnished are not known here.
 */
export function perDiemLog(trips: readonly Away[], home: Place): PerDiemRow[] {
  return chainsOf(trips).flatMap((chain) => rowsOf(chain, home));
}

/** Trips in order, those that touch joined. */
function chainsOf(trips: readonly Away[]): [Away, ...Away[]][] {
  const chains: [Away, ...Away[]][] = [];
  for (const trip of trips.toSorted((a, b) => a.doorOutAt - b.doorOutAt)) {
    const chain = chains.at(-1);
    if (chain && trip.doorOutAt <= Math.max(...chain.map(({ doorInAt }) => doorInAt))) chain.push(trip);
    else chains.push([trip]);
  }
  return chains;
}

function rowsOf(chain: [Away, ...Away[]], home: Place): PerDiemRow[] {
  const from = chain[0].doorOutAt;
  const to = Math.max(...chain.map(({ doorInAt }) => doorInAt));
  const dates = datesBetween(from, to, home.zone);
  const last = dates.at(-1);
  const jobOn = (date: string): Away => {
    // Where the next night is spent; the last date goes by the night before it.
    const midnight = startOf(date === last && dates.length > 1 ? date : nextDate(date), home.zone);
    return chain.findLast(({ doorOutAt }) => doorOutAt < midnight) ?? chain[0];
  };
  const away = dates.map((date): DateAway => ({ date, place: jobOn(date).place.name, furnished: [] }));
  const rates = chain.flatMap(({ place }) => ratesAt(place, home.country));
  const lines = perDiemOf({ hoursAway: (to - from) / HOUR, nights: nightsBetween(from, to, home.zone), dates: away }, rates);
  return lines.map(({ date, amount, reason }) => {
    const { jobId, title, place } = jobOn(date);
    return { jobId, title, date, place: place.name, amount, reason };
  });
}

function datesBetween(from: number, to: number, zone: string): string[] {
  const dates: string[] = [];
  for (let date = wallAt(from, zone).slice(0, 10); startOf(date, zone) < to; date = nextDate(date)) dates.push(date);
  return dates;
}

/** How often the clock at home shows 04:00 between leaving and being back. */
function nightsBetween(from: number, to: number, zone: string): number {
  return datesBetween(from, to, zone).filter((date) => {
    const night = Temporal.PlainDateTime.from(`${date}T04:00`).toZonedDateTime(zone).epochMilliseconds;
    return from < night && night < to;
  }).length;
}

const startOf = (date: string, zone: string): number => Temporal.PlainDate.from(date).toZonedDateTime(zone).epochMilliseconds;

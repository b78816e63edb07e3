/**
 * How much of the road is shown: from a day to a year, anywhere in time. Instants and lengths are milliseconds.
 */
import { wallAt } from '../time/read.ts';
import { dateLater } from '../time/wall.ts';

export type View = { start: number; end: number };

export const DAY_MS = 86_400_000;
const SHORTEST = 23 * 3_600_000;
const LONGEST = 366 * DAY_MS;
/** Dates are kept for the years 1900 to 2199; the windows around a view stay within. */
const EARLIEST = Temporal.Instant.from('1903-01-01T00:00:00Z').epochMilliseconds;
const LATEST = Temporal.Instant.from('2197-01-01T00:00:00Z').epochMilliseconds;

/** The shortcuts by their length in dates. */
export const zooms = { day: 1, week: 7, fortnight: 14, season: 91, year: 365 } as const;
export type Zoom = keyof typeof zooms;

/** The view moved; earlier below zero. */
export function panned({ start, end }: View, by: number): View {
  const held = Math.min(LATEST - end, Math.max(EARLIEST - start, by));
  return { start: start + held, end: end + held };
}

/**
 * The view with so much more (above 1) or less (below 1) in it, the instant `about` staying where it is.
 * Never less than a day nor more than a year.
 */
export function zoomed({ start, end }: View, times: number, about: number): View {
  const length = Math.min(LONGEST, Math.max(SHORTEST, (end - start) * times));
  const share = (about - start) / (end - start);
  const from = about - share * length;
  return panned({ start: from, end: from + length }, 0);
}

/** The view moved just so far that an instant lies in it, a tenth of it away from the edge; unmoved where it does already. */
export function inSight(view: View, at: number): View {
  const edge = (view.end - view.start) / 10;
  if (at >= view.start && at < view.end) return view;
  return panned(view, at < view.start ? at - edge - view.start : at + edge - view.end);
}

/** A shortcut's view: a little before the day looked at, so that what just was is still seen, from midnight to midnight at home. */
export function viewOf(day: string, zoom: Zoom, zone: string): View {
  const from = dateLater(day, -Math.floor(zooms[zoom] / 5));
  return { start: midnight(from, zone), end: midnight(dateLater(from, zooms[zoom]), zone) };
}

/** The same length of time, looking at a day as `viewOf` does. */
export function lookingAt(day: string, { start, end }: View, zone: string): View {
  const from = midnight(dateLater(day, -Math.floor(Math.round((end - start) / DAY_MS) / 5)), zone);
  return { start: from, end: from + (end - start) };
}

/** The shortcut whose length a view has, to the two hours that a change of the clock can make; null between them. */
export function zoomOf({ start, end }: View): Zoom | null {
  const names = Object.keys(zooms) as Zoom[];
  return names.find((name) => Math.abs((end - start) / DAY_MS - zooms[name]) < 0.09) ?? null;
}

/** The date at home that a view looks at, as `viewOf` takes it. */
export function dayOf({ start, end }: View, zone: string): string {
  const length = Math.round((end - start) / DAY_MS);
  return dateLater(wallAt(Math.round(start), zone).slice(0, 10), Math.floor(length / 5));
}

/** The dates at home that show in a view, in order. */
export function datesOf({ start, end }: View, zone: string): string[] {
  const first = wallAt(Math.round(start), zone).slice(0, 10);
  const last = wallAt(Math.round(end) - 60_000, zone).slice(0, 10);
  const all = [first];
  while ((all.at(-1) ?? last) < last) all.push(dateLater(all.at(-1) ?? last, 1));
  return all;
}

export type Window = { from: string; days: number };

/**
 * The dates to ask for: at least twice what is shown, beginning on a coarse grid, so that moving and zooming seldom ask again.
 */
export function windowAround({ start, end }: View): Window {
  const wanted = (2 * (end - start)) / DAY_MS;
  const days = [60, 184].find((each) => each >= wanted) ?? 750;
  const step = Math.floor(days / 8);
  const middle = (start + end) / 2 / DAY_MS;
  const first = Math.floor((middle - days / 2) / step) * step;
  return { from: dateLater('1970-01-01', first), days };
}

function midnight(date: string, zone: string): number {
  return Temporal.PlainDate.from(date).toZonedDateTime(zone).epochMilliseconds;
}

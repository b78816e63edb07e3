/**
 * The way between two places: the same place, a way that was typed, or an estimated drive.
 * Lengths are from leaving to being there: the time before a departure and after an arrival is in them.
 */
import type { Place } from '../contract/parts.ts';
import type { Mode } from '../contract/trips.ts';
import type { BookWay } from '../fit/book.ts';
import { distanceKm } from '../places/distance.ts';
import { driveBand, LONG_ROAD, SHORT_ROAD } from './estimate.ts';

export type WaySource = 'same place' | 'typed' | 'estimated';

export type Way = {
  from: Place;
  to: Place;
  source: WaySource;
  mode: Mode;
  /** Equal to `longMinutes` unless estimated. */
  shortMinutes: number;
  /** What plans are made with. */
  longMinutes: number;
  /** Geodesic, not road. */
  km: number;
  /** As typed, else estimated between the two ends of the band. */
  roadKm: number;
  /** The distance was typed, too. */
  roadKnown: boolean;
};

export type WayFinder = (from: Place, to: Place) => Way;

/** Common practice: minutes at a station or airport before a departure, within a country and over a border, and after an arrival. */
const BEFORE = 120;
const BEFORE_OVER_A_BORDER = 180;
const AFTER = 60;

/** Time needed before a departure and after an arrival, minutes; nothing for a drive or a ride. */
export function timeAround(mode: Mode, from: Place, to: Place): { before: number; after: number } {
  if (mode === 'drive' || mode === 'ride') return { before: 0, after: 0 };
  return { before: from.country === to.country ? BEFORE : BEFORE_OVER_A_BORDER, after: AFTER };
}

/**
 * A finder of ways that remembers what it worked out. A typed way beats an estimate; of several typed for a pair the quickest counts.
 */
export function wayFinder(ways: readonly BookWay[]): WayFinder {
  const typed = new Map<string, BookWay[]>();
  for (const way of ways) {
    const pair = pairKey(way.fromKey, way.toKey);
    typed.set(pair, [...(typed.get(pair) ?? []), way]);
  }
  const known = new Map<string, Way>();
  return (from, to) => {
    const key = `${from.key}\n${to.key}`;
    const before = known.get(key);
    if (before) return before;
    const way = findWay(from, to, typed.get(pairKey(from.key, to.key)) ?? []);
    known.set(key, way);
    return way;
  };
}

function findWay(from: Place, to: Place, typed: readonly BookWay[]): Way {
  if (from.key === to.key)
    return { from, to, source: 'same place', mode: 'ride', shortMinutes: 0, longMinutes: 0, km: 0, roadKm: 0, roadKnown: true };
  const km = distanceKm(from, to);
  const lengths = typed.map((way) => ({ mode: way.mode, minutes: wholeMinutes(way, from, to), roadKm: way.roadKm }));
  const quickest = lengths.sort((a, b) => a.minutes - b.minutes || (a.mode < b.mode ? -1 : 1))[0];
  const road = (km * (SHORT_ROAD + LONG_ROAD)) / 2;
  if (!quickest) return { from, to, source: 'estimated', mode: 'drive', ...driveBand(km), km, roadKm: road, roadKnown: false };
  const { mode, minutes } = quickest;
  // A leg says how long its way takes, a way that was typed before how far it is.
  const roadKm = quickest.roadKm ?? lengths.find((way) => way.mode === mode && way.roadKm !== undefined)?.roadKm;
  return {
    from,
    to,
    source: 'typed',
    mode,
    shortMinutes: minutes,
    longMinutes: minutes,
    km,
    roadKm: roadKm ?? road,
    roadKnown: roadKm !== undefined,
  };
}

function wholeMinutes(way: BookWay, from: Place, to: Place): number {
  const { before, after } = timeAround(way.mode, from, to);
  return way.minutes + (way.before ?? before) + (way.after ?? after);
}

/** The same for both directions. */
function pairKey(a: string, b: string): string {
  return a < b ? `${a}\n${b}` : `${b}\n${a}`;
}

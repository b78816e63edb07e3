/**
 * Can one get from one stay to the next, and rest between? The chain of fixed tickets between the two is walked gap by gap;
 * in each gap the way is direct or by home.
 */
import type { Place } from '../contract/parts.ts';
import type { Way, WayFinder } from '../trips/ways.ts';
import type { KitItem, KitNeed } from './book.ts';
import { mustGoHomeForKit } from './kit.ts';
import type { LaneEntry, StayEntry, TicketEntry } from './lane.ts';

const MINUTE = 60_000;
/** Common practice: changing kit at home takes this, minutes, on top of the ways there and on. */
const KIT_CHANGE = 30;

/** A way through a gap, minutes. `known` when all of it was typed or is no way at all; then short and long are equal. `road` when none of it is flown, sailed or by rail. */
type Route = { short: number; long: number; known: boolean; byHome: boolean; km: number; road: boolean };

/**
 * `fits`; `short`: only in the short estimate; `rest`: the way fits, rest does not; `doubt`: an estimated way fits in neither end;
 * `never`: a typed or ticketed way does not fit even without rest.
 */
type Verdict = 'fits' | 'short' | 'rest' | 'doubt' | 'never';

export type Reach = {
  verdict: Verdict;
  before: LaneEntry;
  after: LaneEntry;
  /** Minutes between wrap and call. */
  have: number;
  route: Route;
  /** Rest that is asked for, 0 where both calls are of one date. */
  rest: number;
  /** Longest unbroken rest that is left, planning with the long end; negative where there is no time for the way. */
  restLeft: number;
  /** have - (way + rest), planning with the long end. */
  slack: number;
  slackShort: number;
  /** Home must be between, because of the kit. */
  mustGoHome: boolean;
  /** What is with me after the first. */
  carried: readonly KitNeed[];
  /** The tickets between, in order, and the gap that fails if one does. */
  tickets: TicketEntry[];
  failing: { from: LaneEntry; to: LaneEntry; have: number; route: Route } | null;
  /** It is for kit alone that one goes home, and the verdict is harder for it. */
  forKit: boolean;
};

export type ReachInput = {
  home: Place;
  find: WayFinder;
  restMinutes: number;
  kit?: readonly KitItem[] | undefined;
  /** What is with me after the first stay, where that is more than its own job needs. */
  carried?: readonly KitNeed[] | undefined;
};
type WalkInput = ReachInput & { mustGoHome: boolean };

/**
 * Walk from a stay to the next, with the tickets that stand between them. One goes home at most once on the way, in the gap where that is
 * best; a ticket that begins or ends there has one there already.
 */
export function reach(before: StayEntry, after: StayEntry, tickets: readonly TicketEntry[], input: ReachInput): Reach {
  const points: LaneEntry[] = [before, ...tickets, after];
  const have = minutes(before.endAt, after.startAt);
  const rest = asksForRest(before, after) ? input.restMinutes : 0;
  const carried = input.carried ?? before.job.kit ?? [];
  const mustGoHome = mustGoHomeForKit(carried, after.job, input.kit ?? [], have);
  const isHome = (place: Place) => place.key === input.home.key;
  const atHome = pairs(points).some(([from, to]) => isHome(from.to) || isHome(to.from));
  const direct = walk(points, rest, null, { ...input, mustGoHome });
  const byHome = pairs(points)
    .map((_, gap) => walk(points, rest, gap, { ...input, mustGoHome }))
    .reduce((best, other) => (better(other, best) ? other : best));
  const best = (mustGoHome && !atHome) || better(byHome, direct) ? byHome : direct;
  const forKit = mustGoHome && best === byHome && severity(direct.verdict) < severity(byHome.verdict);
  return { ...best, before, after, tickets: [...tickets], have, rest, mustGoHome, carried, forKit };
}

type Gap = Omit<Walk, 'failing'> & { have: number };

/** The way from one fixed point to the next, direct or by home, with no rest asked for. */
export function gapBetween(from: LaneEntry, to: LaneEntry, input: ReachInput): Gap {
  const ground = { ...input, mustGoHome: false };
  const direct = walk([from, to], 0, null, ground);
  const byHome = walk([from, to], 0, 0, ground);
  return { ...(better(byHome, direct) ? byHome : direct), have: connection(from, to) ?? minutes(from.endAt, to.startAt) };
}

type Walk = Pick<Reach, 'verdict' | 'route' | 'restLeft' | 'slack' | 'slackShort' | 'failing'>;

/** @param homeIn the gap in which one goes by home, counted from 0; null for none */
function walk(points: readonly LaneEntry[], rest: number, homeIn: number | null, input: WalkInput): Walk {
  let verdict: Verdict = 'fits';
  let failing: Reach['failing'] = null;
  let restLong = -Infinity;
  let restShort = -Infinity;
  const route: Route = { short: 0, long: 0, known: true, byHome: homeIn !== null, km: 0, road: true };
  for (const [gapIndex, [from, to]] of pairs(points).entries()) {
    const part = routeOf(from, to, gapIndex === homeIn, input);
    const have = connection(from, to) ?? minutes(from.endAt, to.startAt);
    const gap: Verdict = have >= part.long ? 'fits' : have >= part.short ? 'short' : part.known ? 'never' : 'doubt';
    if (severity(gap) > severity(verdict)) {
      verdict = gap;
      failing = { from, to, have, route: part };
    }
    const berth = to.kind === 'ticket' && to.leg.berth ? minutes(to.leg.departAt, to.leg.arriveAt) : -Infinity;
    restLong = Math.max(restLong, have - part.long, berth);
    restShort = Math.max(restShort, have - part.short, berth);
    route.short += part.short;
    route.long += part.long;
    route.km += part.km;
    route.known &&= part.known;
    route.road &&= part.road;
  }
  if (severity(verdict) < severity('rest')) verdict = restShort < rest ? 'rest' : restLong < rest ? 'short' : verdict;
  return { verdict, route, restLeft: restLong, slack: restLong - rest, slackShort: restShort - rest, failing };
}

/** Two tickets that follow on at one station need no more than their own times. */
function connection(from: LaneEntry, to: LaneEntry): number | null {
  if (from.kind !== 'ticket' || to.kind !== 'ticket' || from.job !== to.job || from.to.key !== to.from.key) return null;
  return minutes(from.leg.arriveAt, to.leg.departAt);
}

function routeOf(from: LaneEntry, to: LaneEntry, byHome: boolean, { home, find, mustGoHome }: WalkInput): Route {
  const direct = find(from.to, to.from);
  if (!byHome || from.to.key === home.key || to.from.key === home.key)
    return {
      short: direct.shortMinutes,
      long: direct.longMinutes,
      known: direct.source !== 'estimated',
      byHome: false,
      km: direct.km,
      road: isRoad(direct),
    };
  const there = find(from.to, home);
  const on = find(home, to.from);
  const change = mustGoHome ? KIT_CHANGE : 0;
  return {
    short: there.shortMinutes + on.shortMinutes + change,
    long: there.longMinutes + on.longMinutes + change,
    known: there.source !== 'estimated' && on.source !== 'estimated',
    byHome: true,
    km: there.km + on.km,
    road: isRoad(there) && isRoad(on),
  };
}

function isRoad({ mode }: Way): boolean {
  return mode === 'drive' || mode === 'ride';
}

/** Rest is asked for where the two calls fall on different dates at their places. */
export function asksForRest(before: StayEntry, after: StayEntry): boolean {
  const lastCall = [...before.stay.days].sort((a, b) => b.wrapAt - a.wrapAt)[0];
  return lastCall?.date !== after.stay.days[0]?.date;
}

const ORDER: readonly Verdict[] = ['fits', 'short', 'rest', 'doubt', 'never'];
function severity(verdict: Verdict): number {
  return ORDER.indexOf(verdict);
}

/** A way that was typed is not excused by an estimate over another road. */
function better(a: Walk, b: Walk): boolean {
  if (b.route.known && !a.route.known) return false;
  return severity(a.verdict) < severity(b.verdict) || (a.verdict === b.verdict && a.slack > b.slack);
}

function pairs<T>(items: readonly T[]): [T, T][] {
  return items.slice(1).flatMap((to, index): [T, T][] => {
    const from = items[index];
    return from === undefined ? [] : [[from, to]];
  });
}

/** Whole minutes between two instants; a started minute does not count as there. */
function minutes(from: number, to: number): number {
  return Math.floor((to - from) / MINUTE);
}

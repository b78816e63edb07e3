/**
 * The moves that the jobs need, as they would be made: from home or from the stay before, and on to the next or home again.
 * A leg home is drawn by the job that it leaves, a leg out by the job that it reaches, a direct one by the softer of the two.
 */
import type { Place } from '../contract/parts.ts';
import type { BookJob } from './book.ts';
import { carriedAfter } from './carried.ts';
import { type LaneEntry, type StayEntry, type TicketEntry } from './lane.ts';
import { reach, type ReachInput } from './reach.ts';
import { departureFor, leavingAfter } from '../trips/plan.ts';

export type Move = {
  from: Place;
  to: Place;
  start: number;
  end: number;
  mode: string;
  source: 'ticketed' | 'typed' | 'estimated';
  berth: boolean;
  /** It leads to a call that it cannot reach, even on a quick road and without rest. */
  inVain?: true;
};
type Rest = { place: Place; start: number; end: number };
export type Moves = { moves: Move[]; rests: Rest[] };

export type Ground = ReachInput;

const MINUTE = 60_000;
/** A gap that leaves this much at home is spent at home. */
const WORTH_GOING_HOME = 10 * 60 * MINUTE;

/** @param row what the chain runs through, by time: the job itself, those in ink, the candidate */
export function movesOf(job: BookJob, row: readonly LaneEntry[], ground: Ground): Moves {
  const stays = row.filter((entry) => entry.kind === 'stay');
  const tickets = row.filter((entry) => entry.kind === 'ticket');
  const all: Moves = { moves: [], rests: [] };
  for (const own of stays.filter((stay) => stay.job === job)) {
    const before = nearestBefore(own, stays);
    add(all, into(own, before, tickets, { ...ground, carried: before && carriedAfter(before, stays, ground) }));
    add(all, outOf(own, nearestAfter(own, stays), tickets, { ...ground, carried: carriedAfter(own, stays, ground) }));
  }
  const ticketed = tickets.filter((ticket) => ticket.job === job).map(ticketMove);
  return { moves: [...all.moves, ...ticketed].sort((a, b) => a.start - b.start), rests: all.rests };
}

function nearestBefore(own: StayEntry, stays: readonly StayEntry[]): StayEntry | undefined {
  return stays.reduce<StayEntry | undefined>(
    (nearest, stay) => (stay !== own && stay.endAt <= own.startAt && (!nearest || stay.endAt > nearest.endAt) ? stay : nearest),
    undefined,
  );
}

function nearestAfter(own: StayEntry, stays: readonly StayEntry[]): StayEntry | undefined {
  return stays.find((stay) => stay !== own && stay.startAt >= own.endAt);
}

function into(own: StayEntry, before: StayEntry | undefined, tickets: readonly TicketEntry[], ground: Ground): Moves {
  const link = before && linkOf(before, own, tickets, ground);
  const inbound = tickets.filter(
    (ticket) => ticket.job === own.job && ticket.endAt <= own.startAt && ticket.startAt >= (before?.endAt ?? -Infinity),
  );
  if (inbound.length > 0 && link?.home !== false) return { moves: fillers([...inbound, own], ground), rests: [] };
  if (link && !link.home) return draws(own, before, true) ? link.legs : { moves: [], rests: [] };
  return { moves: outLeg(own, link, ground), rests: [] };
}

function outOf(own: StayEntry, after: StayEntry | undefined, tickets: readonly TicketEntry[], ground: Ground): Moves {
  const outbound = tickets.filter(
    (ticket) => ticket.job === own.job && ticket.startAt >= own.endAt && ticket.endAt <= (after?.startAt ?? Infinity),
  );
  const link = after && linkOf(own, after, tickets, ground);
  if (outbound.length > 0 && link?.home !== false) return { moves: fillers([own, ...outbound], ground), rests: [] };
  if (link && !link.home) return draws(own, after, false) ? link.legs : { moves: [], rests: [] };
  const way = ground.find(own.to, ground.home);
  if (way.source === 'same place') return { moves: [], rests: [] };
  const start = link ? link.leaveAt : homeward(own, way.longMinutes, ground);
  return {
    moves: [legOf(own.to, ground.home, start, ground)],
    rests: link && start > own.endAt ? [{ place: own.to, start: own.endAt, end: start }] : [],
  };
}

const SOFTNESS = { ink: 0, pencil: 1, candidate: 2 };

/** A direct leg is drawn once: by the softer job, else by the later. */
function draws(own: StayEntry, other: StayEntry, ownIsLater: boolean): boolean {
  const softer = SOFTNESS[own.job.firmness] - SOFTNESS[other.job.firmness];
  return softer > 0 || (softer === 0 && ownIsLater);
}

type Link = { home: false; legs: Moves } | HomeLink;
type HomeLink = { home: true; leaveAt: number; homeAt: number; inVain?: true };

/** How two stays are joined: straight on, or with home between. */
function linkOf(before: StayEntry, after: StayEntry, tickets: readonly TicketEntry[], ground: Ground): Link {
  const between = tickets.filter((ticket) => ticket.startAt >= before.endAt && ticket.endAt <= after.startAt);
  const { home, find } = ground;
  const back = find(before.to, home).longMinutes * MINUTE;
  const out = find(home, after.from).longMinutes * MINUTE;
  const gap = after.startAt - before.endAt;
  if (between.length > 0) return { home: false, legs: { moves: fillers([before, ...between, after], ground), rests: [] } };
  if (gap - back - out >= WORTH_GOING_HOME) {
    const leaveAt = Math.min(homeward(before, back / MINUTE, ground), after.startAt - out - back);
    return { home: true, leaveAt, homeAt: leaveAt + back };
  }
  const joined = reach(before, after, [], ground);
  // Where time is short the rest is drawn first, so that the line arrives as late as the sentence says.
  const leaveAt =
    before.endAt + Math.max(0, Math.min(joined.rest, joined.slack < 0 ? joined.rest : gap / MINUTE - joined.route.long)) * MINUTE;
  const rests = leaveAt > before.endAt ? [{ place: before.to, start: before.endAt, end: leaveAt }] : [];
  const inVain = joined.verdict === 'never' || joined.verdict === 'doubt' ? { inVain: true as const } : {};
  if (joined.route.byHome) return { home: true, leaveAt, homeAt: leaveAt + back, ...inVain };
  const moves = joined.route.long === 0 ? [] : [{ ...legOf(before.to, after.from, leaveAt, ground), ...inVain }];
  return { home: false, legs: { moves, rests } };
}

function outLeg(own: StayEntry, link: HomeLink | undefined, ground: Ground): Move[] {
  const { home, find, restMinutes } = ground;
  const way = find(home, own.from);
  const first = own.stay.days[0];
  if (way.source === 'same place' || !first) return [];
  const planned = departureFor(first, way.longMinutes * MINUTE, restMinutes * MINUTE, home, own.from);
  const leg = legOf(home, own.from, Math.max(planned, link?.homeAt ?? -Infinity), ground);
  return [link?.inVain ? { ...leg, inVain: true } : leg];
}

function homeward(own: StayEntry, wayMinutes: number, { home, restMinutes }: Ground): number {
  const last = own.stay.days.at(-1);
  return last ? leavingAfter(last, last.callAt, wayMinutes * MINUTE, restMinutes * MINUTE, home, own.to) : own.endAt;
}

/** Legs that close the gaps between fixed points, each as late as it may be. */
function fillers(points: readonly LaneEntry[], ground: Ground): Move[] {
  const first = points[0];
  const last = points.at(-1);
  const moves: Move[] = [];
  if (first?.kind === 'ticket') moves.push(...legBefore(ground.home, first.from, first.startAt, ground));
  for (const [index, point] of points.entries()) {
    const next = points[index + 1];
    if (next) moves.push(...legBefore(point.to, next.from, next.startAt, ground));
  }
  if (last?.kind === 'ticket' && last.to.key !== ground.home.key) moves.push(legOf(last.to, ground.home, last.endAt, ground));
  return moves;
}

function legBefore(from: Place, to: Place, by: number, ground: Ground): Move[] {
  const minutes = ground.find(from, to).longMinutes;
  return minutes === 0 ? [] : [legOf(from, to, by - minutes * MINUTE, ground)];
}

function legOf(from: Place, to: Place, start: number, { find }: Ground): Move {
  const way = find(from, to);
  return {
    from,
    to,
    start,
    end: start + way.longMinutes * MINUTE,
    mode: way.mode,
    source: way.source === 'typed' ? 'typed' : 'estimated',
    berth: false,
  };
}

function ticketMove({ leg }: TicketEntry): Move {
  return { from: leg.from, to: leg.to, start: leg.departAt, end: leg.arriveAt, mode: leg.mode, source: 'ticketed', berth: leg.berth };
}

function add(all: Moves, more: Moves): void {
  all.moves.push(...more.moves);
  all.rests.push(...more.rests);
}

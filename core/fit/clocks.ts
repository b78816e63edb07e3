/**
 * Part 7 of the check: what time itself says. The client's reply-by, and whether one can still be there from home.
 */
import type { Finding } from '../contract/fit.ts';
import type { Moment, Place } from '../contract/parts.ts';
import { epochOf } from '../time/read.ts';
import type { WayFinder } from '../trips/ways.ts';
import { lengthInWords } from '../words/amounts.ts';
import { momentAt } from '../words/moments.ts';
import type { BookJob } from './book.ts';
import type { LaneEntry } from './lane.ts';
import { giveUpTicket, laterCall } from './lifts.ts';

const MINUTE = 60_000;
const HALF_HOUR = 30 * MINUTE;

/** Past at now >= reply-by. */
export function replyByFindings(replyBy: Moment | null, now: number, home: Place): Finding[] {
  if (!replyBy) return [];
  const past = Math.floor((now - epochOf(replyBy.at)) / MINUTE);
  if (now < epochOf(replyBy.at)) return [];
  return [
    {
      kind: 'reply-by',
      hardness: 'settle',
      concerns: [],
      numbers: { late: past },
      sentence: `They asked to hear by ${momentAt(epochOf(replyBy.at), replyBy, home)}; that was ${past === 0 ? 'this minute' : `${lengthInWords(past)} ago`}.`,
      lifts: [{ kind: 'ask', label: 'Ask whether it is still open', tryOn: { stillOpen: true } }],
    },
  ];
}

/** A candidate whose first call is over may have the wrong year in it. */
export function pastFindings({ firmness, place, days }: BookJob, home: Place, now: number): Finding[] {
  const first = Math.min(...days.map((day) => day.callAt));
  if (firmness === 'ink' || first > now) return [];
  const past = Math.floor((now - first) / MINUTE);
  return [
    {
      kind: 'past',
      hardness: 'know',
      concerns: [],
      numbers: { past },
      sentence: `The first call, on ${momentAt(first, place, home)}, is past.`,
      lifts: [],
    },
  ];
}

/**
 * With nothing before it, the first call or ticket is reached from home, and one cannot leave before now. A pencil that has not begun
 * may go and makes nothing sooner; where one wrapped too short a while ago to be home, the neighbours say what is to be said.
 */
export function departureFindings(lane: readonly LaneEntry[], home: Place, find: WayFinder, now: number): Finding[] {
  const first = lane.find((entry) => entry.standing === 'own');
  if (!first || leavesAt(first) <= now || lane.some((entry) => keepsAway(entry, first, home, find, now))) return [];
  const way = find(home, first.from);
  const have = Math.floor((first.startAt - now) / MINUTE);
  if (have >= way.longMinutes) return [];
  // A later call is asked for at the half hour.
  const call = Math.ceil((first.startAt + (way.longMinutes - have) * MINUTE) / HALF_HOUR) * HALF_HOUR;
  const estimated = way.source === 'estimated';
  const quick = have >= way.shortMinutes;
  const ticket = first.kind === 'ticket';
  const at = momentAt(first.startAt, first.from, home);
  const what = !ticket
    ? `The first call in ${first.from.name} is in ${lengthInWords(have)}, on ${at}`
    : have < 0
      ? `You should have been at the ${first.leg.mode} from ${first.from.name} ${lengthInWords(-have)} ago, on ${at}`
      : `You must be at the ${first.leg.mode} from ${first.from.name} in ${lengthInWords(have)}, on ${at}`;
  const length = `${estimated ? `an estimated ${lengthInWords(way.shortMinutes)} to ` : ''}${lengthInWords(way.longMinutes)}`;
  const road = way.longMinutes === 0 ? '' : `; the way from ${home.name} takes ${length}${quick ? ': only if the road is quick' : ''}`;
  return [
    {
      kind: 'departure',
      hardness: estimated || ticket ? 'settle' : 'blocks',
      concerns: [],
      numbers: { have, way: way.longMinutes, wayShort: way.shortMinutes, slack: have - way.longMinutes },
      sentence: `${what}${road}.`,
      lifts: ticket ? [giveUpTicket(first)] : laterCall(first, call, home),
    },
  ];
}

/** A ticket is missed when it leaves, not when one should be there. */
function leavesAt(entry: LaneEntry): number {
  return entry.kind === 'ticket' ? entry.leg.departAt : entry.startAt;
}

/** Stands before the first of the candidate for certain, and is not so long over that one is home again. */
function keepsAway(entry: LaneEntry, first: LaneEntry, home: Place, find: WayFinder, now: number): boolean {
  if (entry === first || entry.startAt >= first.startAt) return false;
  const certain = entry.standing === 'ink' || entry.startAt <= now;
  return certain && entry.endAt + find(entry.to, home).longMinutes * MINUTE > now;
}

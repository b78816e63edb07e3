/**
 * Part 2 of the check: the neighbours before and after every stay of the candidate.
 */
import type { Finding, Lift } from '../contract/fit.ts';
import type { Place } from '../contract/parts.ts';
import { staysOf } from '../trips/stays.ts';
import { lengthInWords } from '../words/amounts.ts';
import { clockAt, momentAt, weekdayAt } from '../words/moments.ts';
import type { KitItem } from './book.ts';
import { carriedAfter } from './carried.ts';
import { concerning, softened } from './findings.ts';
import { flightLifts } from './flight.ts';
import { fetchLifts } from './kit.ts';
import { overlaps, type LaneEntry, type StayEntry, type TicketEntry } from './lane.ts';
import { giveUpTicket, handLift, laterCall, secondPencil } from './lifts.ts';
import { reach, type Reach, type ReachInput } from './reach.ts';

const MINUTE = 60_000;
/** A lift that asks for a later call asks for the half hour. */
const HALF_HOUR = 30 * MINUTE;
/** Nobody is asked to wait longer for a first call. */
const LATEST_CALL = 12 * 60 * MINUTE;
/** Less rest than this is never offered, minutes. */
const LEAST_REST = 180;

export type Neighbour = Reach & { own: StayEntry; other: StayEntry };

/** Every pair of neighbours that has to be reached, for each stay of the candidate, in order of time. */
export function neighboursOf(lane: readonly LaneEntry[], input: ReachInput): Neighbour[] {
  const stays = lane.filter((entry) => entry.kind === 'stay');
  const tickets = lane.filter((entry) => entry.kind === 'ticket');
  const carrying = (stay: StayEntry) => ({ ...input, carried: carriedAfter(stay, stays, input) });
  const found: Neighbour[] = [];
  for (const own of stays.filter((stay) => stay.standing === 'own')) {
    const before = stays.filter((stay) => stay !== own && stay.endAt <= own.startAt).sort((a, b) => b.endAt - a.endAt);
    const after = stays.filter((stay) => stay !== own && stay.startAt >= own.endAt).sort((a, b) => a.startAt - b.startAt);
    for (const other of upToTheFirstThatStands(before))
      found.push({ ...reach(other, own, between(tickets, other, own), carrying(other)), own, other });
    for (const other of upToTheFirstThatStands(after))
      found.push({ ...reach(own, other, between(tickets, own, other), carrying(own)), own, other });
  }
  return found;
}

/** Pencils may go, so what lies beyond them counts too, up to the first stay in ink or of the candidate itself, which ends the row. */
function upToTheFirstThatStands(row: readonly StayEntry[]): StayEntry[] {
  const end = row.findIndex((stay) => stay.standing === 'ink' || stay.standing === 'own');
  const upTo = end === -1 ? row : row.slice(0, end + 1);
  return upTo.filter((stay) => stay.standing !== 'own');
}

/** Tickets that stand between two stays. Those of pencils count only beside their own stay. */
function between(tickets: readonly TicketEntry[], before: StayEntry, after: StayEntry): TicketEntry[] {
  const inGap = tickets.filter((ticket) => ticket.startAt >= before.endAt && ticket.endAt <= after.startAt);
  const counted = inGap.filter(
    (ticket) => ticket.standing === 'ink' || ticket.standing === 'own' || ticket.job === before.job || ticket.job === after.job,
  );
  return counted.filter(
    (ticket, index) => !counted.slice(0, index).some((earlier) => overlaps(earlier, ticket) && earlier.job !== ticket.job),
  );
}

/** What a pair of neighbours gives to settle; nothing where one is reached rested. */
export function findingOf(pair: Neighbour, home: Place, items: readonly KitItem[] = []): Finding[] {
  if (pair.verdict === 'fits') return [];
  const ticketFails = pair.failing !== null && (pair.failing.from.kind === 'ticket' || pair.failing.to.kind === 'ticket');
  // A thing that lies at home can be hired or sent on, so going there for it never blocks.
  const hardness = pair.verdict === 'never' && !ticketFails && !pair.forKit ? 'blocks' : 'settle';
  return [
    {
      kind: ticketFails ? 'ticket' : pair.verdict === 'rest' ? 'rest' : 'between',
      hardness: softened(hardness, pair.other.standing),
      concerns: concerning(pair.other.job),
      numbers: {
        have: pair.have,
        way: pair.route.long,
        wayShort: pair.route.short,
        rest: pair.rest,
        restLeft: pair.restLeft,
        need: pair.route.long + pair.rest,
        slack: pair.slack,
        slackShort: pair.slackShort,
        km: Math.round(pair.route.km),
        source: pair.route.known ? 'typed' : 'estimated',
        by: pair.route.byHome ? 'home' : 'direct',
      },
      sentence:
        ticketFails && pair.failing
          ? ticketSentence(pair.failing.from, pair.failing.to, pair.failing.have, pair.failing.route, home)
          : sentence(pair, home),
      lifts: liftsOf(pair, home, items, ticketFails),
    },
  ];
}

function sentence(pair: Neighbour, home: Place): string {
  const { before, after, route, rest } = pair;
  const whose = after === pair.own ? 'your first call' : `the first call of ${after.job.title}`;
  const wrap = `You wrap in ${before.to.name} on ${momentAt(before.endAt, before.to, home)}.`;
  const arrival = arrivalOf(pair);
  const late = Math.ceil((arrival - after.startAt) / MINUTE);
  const restPart = rest > 0 ? `${lengthInWords(rest)} of rest` : '';
  if (route.long === 0)
    return `${wrap} ${capital(whose)} in ${after.from.name} is ${lengthInWords(pair.have)} later, at ${clockAt(after.startAt, after.from, home)}: ${lengthInWords(-pair.slack)} short of ${restPart}.`;
  const road = roadWords(pair, home);
  const needs = [restPart, road].filter((part) => part !== '').join(' and ');
  const reached = `With ${needs} you reach ${after.from.name} on ${weekdayAt(arrival, after.from, home)}, ${lengthInWords(late)} after ${whose} at ${clockAt(after.startAt, after.from, home)}`;
  if (pair.verdict === 'short') return `${wrap} ${reached}; if the road is quick it fits with ${lengthInWords(pair.slackShort)} to spare.`;
  if (pair.verdict === 'rest')
    return `${wrap} ${reached}. Without the full rest it can be done: ${lengthInWords(Math.max(0, pair.restLeft))} are left.`;
  return `${wrap} ${reached}${rest > 0 ? '. It does not fit without rest either' : ''}.`;
}

/** When one would be there, rested, planning with the long end. */
function arrivalOf(pair: Neighbour): number {
  return pair.after.startAt - pair.slack * MINUTE;
}

function roadWords({ route, tickets, forKit }: Neighbour, home: Place): string {
  const by = route.byHome ? ` by way of ${home.name}${forKit ? ' for the kit' : ''}` : '';
  const ticketed = tickets.length > 0 ? ' beside your tickets' : '';
  if (route.known || route.short === route.long)
    return `${lengthInWords(route.long)} on the ${route.road ? 'road' : 'way'}${by}${ticketed}`;
  return `an estimated ${lengthInWords(route.short)} to ${lengthInWords(route.long)} of driving${by}${ticketed}`;
}

/** @param have minutes there are */
export function ticketSentence(from: LaneEntry, to: LaneEntry, have: number, route: { long: number; known: boolean }, home: Place): string {
  const left = from.kind === 'ticket' ? `The ${from.leg.mode} lets you go in ${from.to.name}` : `You wrap in ${from.to.name}`;
  const next = to.kind === 'ticket' ? `you must be at the ${to.leg.mode} from ${to.from.name}` : `the first call in ${to.from.name} is`;
  return `${left} on ${momentAt(from.endAt, from.to, home)}; ${next} on ${weekdayAt(to.startAt, to.from, home)}. That leaves ${lengthInWords(have)}, and the way takes ${route.known ? '' : 'up to '}${lengthInWords(route.long)}.`;
}

function liftsOf(pair: Neighbour, home: Place, items: readonly KitItem[], ticketFails: boolean): Lift[] {
  const lifts: Lift[] = [];
  const { own, after, route } = pair;
  const missing = -pair.slack;
  if (ticketFails) lifts.push(...ticketsOf(pair).map(giveUpTicket));
  if (after === own && isFirst(own)) {
    const call = Math.ceil((own.startAt + missing * MINUTE) / HALF_HOUR) * HALF_HOUR;
    if (call - own.startAt <= LATEST_CALL) lifts.push(...laterCall(own, call, home));
  } else if (after !== own && isLast(own)) {
    const wrap = Math.floor((own.endAt - missing * MINUTE) / HALF_HOUR) * HALF_HOUR;
    const earlier = Math.round((own.endAt - wrap) / MINUTE);
    if (earlier <= 6 * 60 && wrap > (own.stay.days.at(-1)?.callAt ?? wrap))
      lifts.push({
        kind: 'earlier wrap',
        label: `Ask to wrap at ${clockAt(wrap, own.to, home)}`,
        tryOn: { lastWrapEarlierMinutes: earlier },
      });
  }
  const restLeft = Math.floor(pair.restLeft);
  if (pair.rest > 0 && restLeft < pair.rest && restLeft >= LEAST_REST)
    lifts.push({ kind: 'shorter rest', label: `Shorten rest to ${lengthInWords(restLeft)}`, tryOn: { restMinutes: restLeft } });
  if (!route.known && !ticketFails)
    lifts.push({
      kind: 'type way',
      label: `Type the real time from ${pair.before.to.name} to ${after.from.name}`,
      way: { from: pair.before.to, to: after.from },
    });
  if (pair.mustGoHome && route.byHome) lifts.push(...fetchLifts(pair.carried, after.job, items, pair.have));
  if (!ticketFails) lifts.push(...flightLifts(pair.before, after, pair.restLeft, home));
  if (pair.other.standing === 'outranks') lifts.push(secondPencil(pair.other.job));
  const day = pair.after === own ? own.stay.days[0] : own.stay.days.at(-1);
  if (day) lifts.push(handLift([day]));
  return lifts;
}

function ticketsOf({ failing }: Neighbour): TicketEntry[] {
  return failing ? [failing.from, failing.to].filter((entry) => entry.kind === 'ticket') : [];
}

function isFirst(own: StayEntry): boolean {
  return staysOf(own.job.days)[0]?.startAt === own.startAt;
}

function isLast(own: StayEntry): boolean {
  return staysOf(own.job.days).at(-1)?.endAt === own.endAt;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

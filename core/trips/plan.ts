/**
 * The trip that one job needs, planned from home to home for the quote: when to leave, when one is back, which dates are travel and nothing else.
 * Plans are made with the long end of an estimate, and driving is not set against sleep: where a working day and the way together
 * would be over fourteen hours, or the way would run through the night, it is driven the day before or after.
 */
import type { Place } from '../contract/parts.ts';
import type { BookDay, BookLeg, BookWay } from '../fit/book.ts';
import { wallAt } from '../time/read.ts';
import { nextDate } from '../time/wall.ts';
import { wayFinder, type Way, type WayFinder, type WaySource } from './ways.ts';

export type TripPlan = {
  /** False when the job is at home: nothing to travel. */
  away: boolean;
  source: WaySource;
  outMinutes: number;
  backMinutes: number;
  /** Kilometres of road one way: as typed, else estimated between the two ends of the band. */
  oneWayKm: number;
  /** Whether that distance was typed. */
  roadKnown: boolean;
  /** Epoch ms. */
  doorOutAt: number;
  doorInAt: number;
  /** Nights not slept at home. */
  nights: number;
  /** Dates at home that hold travel and no paid day. */
  travelDates: string[];
  hoursAway: number;
  /** The tickets that each half goes by; null where it is planned from the way. */
  tickets: { out: Ticketed | null; back: Ticketed | null };
};

/** Tickets in order of departure, and the way between home and them. */
export type Ticketed = { legs: readonly BookLeg[]; toHome: Way };

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
/** Common practice: movement and work of one day are kept within this. */
const LONGEST_DAY = 14 * HOUR;
/** Ways up to this are driven the same day whatever the hour. */
const SHORT_WAY = 2 * HOUR;
/** Nobody leaves home before this hour or comes home after midnight for a longer way. */
const EARLIEST = '05:00';
const MORNING = '09:00';
const EVENING = '20:00';
const REST = 8 * HOUR;
/** A date counts as a date of travel when it has more than this of it; the date of departure always does. */
const TRAVEL_COUNTS = 4 * HOUR;

export type TripInput = {
  home: Place;
  place: Place;
  days: readonly BookDay[];
  ways: readonly BookWay[];
  restMinutes?: number;
  /** Tickets stand: door-out is the first departure less the time before it, door-in the last arrival and the time after it. */
  tickets?: readonly BookLeg[];
};

type Half = { from: number; to: number };
type TicketedHalf = Half & { tickets: Ticketed };

/**
 * Plan the trip for a job.
 * @throws RangeError when there is no day
 */
export function planTrip({ home, place, days, ways, restMinutes, tickets = [] }: TripInput): TripPlan {
  const sorted = [...days].filter((day) => day.kind !== 'edit').sort((a, b) => a.callAt - b.callAt);
  const paid = sorted.length > 0 ? sorted : [...days].sort((a, b) => a.callAt - b.callAt);
  const first = paid[0];
  const last = paid.at(-1);
  if (!first || !last) throw new RangeError('a trip needs at least one day');
  const find = wayFinder(ways);
  const way = find(home, place);
  const back = find(place, home);
  const ground = { home, place, rest: restMinutes === undefined ? REST : restMinutes * MINUTE };
  const byTicket = ticketedOut(first, tickets, home, find);
  const out = byTicket ?? plannedOut(first, way.longMinutes * MINUTE, ground);
  const lastWrap = Math.max(...paid.map((day) => day.wrapAt));
  const backByTicket = ticketedBack(lastWrap, tickets, home, find);
  const homeward = backByTicket ?? plannedBack(last, lastWrap, out.from, back.longMinutes * MINUTE, ground);
  const away = home.key !== place.key;
  const onTheWay = [out, homeward].flatMap(({ from, to }) => datesOnTheWay(from, to, home.zone));
  return {
    away,
    source: way.source,
    outMinutes: byTicket ? minutesOf(byTicket) : way.longMinutes,
    backMinutes: backByTicket ? minutesOf(backByTicket) : back.longMinutes,
    oneWayKm: way.roadKm,
    roadKnown: way.roadKnown,
    doorOutAt: out.from,
    doorInAt: homeward.to,
    nights: away ? nightsBetween(out.from, homeward.to, place.zone) : 0,
    travelDates: away ? [...new Set(onTheWay)].filter((date) => !paid.some((day) => day.date === date)).sort() : [],
    hoursAway: (homeward.to - out.from) / HOUR,
    tickets: { out: byTicket?.tickets ?? null, back: backByTicket?.tickets ?? null },
  };
}

function minutesOf({ from, to }: Half): number {
  return (to - from) / MINUTE;
}

type Ground = { home: Place; place: Place; rest: number };

function plannedOut(first: BookDay, way: number, { home, place, rest }: Ground): Half {
  const from = first.kind === 'travel' ? first.callAt : departureFor(first, way, rest, home, place);
  return { from, to: from + way };
}

/** A paid travel day at the end is the way home: it ends where its wrap says. */
function plannedBack(last: BookDay, lastWrap: number, outAt: number, way: number, { home, place, rest }: Ground): Half {
  if (last.kind !== 'travel') {
    const from = leavingAfter(last, outAt, way, rest, home, place);
    return { from, to: from + way };
  }
  const from = Math.max(last.callAt, lastWrap - way);
  return { from, to: Math.max(lastWrap, from + way) };
}

/** Out by tickets that arrive before the first call, with the way from home to the first of them. */
function ticketedOut(first: BookDay, tickets: readonly BookLeg[], home: Place, find: WayFinder): TicketedHalf | null {
  const out = tickets.filter((leg) => leg.arriveAt <= first.callAt).sort((a, b) => a.departAt - b.departAt);
  const [start] = out;
  const end = out.at(-1);
  if (!start || !end) return null;
  const toHome = find(home, start.from);
  return {
    from: start.departAt - (start.before + toHome.longMinutes) * MINUTE,
    to: end.arriveAt + end.after * MINUTE,
    tickets: { legs: out, toHome },
  };
}

/** Home by tickets that leave after the last wrap, with the way home from the last of them. */
function ticketedBack(lastWrap: number, tickets: readonly BookLeg[], home: Place, find: WayFinder): TicketedHalf | null {
  const back = tickets.filter((leg) => leg.departAt >= lastWrap).sort((a, b) => a.departAt - b.departAt);
  const [start] = back;
  const end = back.at(-1);
  if (!start || !end) return null;
  const toHome = find(end.to, home);
  return {
    from: start.departAt - start.before * MINUTE,
    to: end.arriveAt + (end.after + toHome.longMinutes) * MINUTE,
    tickets: { legs: back, toHome },
  };
}

/** When to leave home for the first call: the same morning where that is a bearable day, else the day before, there by the evening. */
export function departureFor(first: BookDay, way: number, rest: number, home: Place, place: Place): number {
  const sameDay = first.callAt - way;
  const bearable = way + (first.wrapAt - first.callAt) <= LONGEST_DAY && wallAt(sameDay, home.zone).slice(11) >= EARLIEST;
  if (way <= SHORT_WAY || bearable) return sameDay;
  const eve = Temporal.PlainDate.from(wallAt(first.callAt, place.zone).slice(0, 10)).subtract({ days: 1 }).toString();
  return Math.min(first.callAt - rest, at(eve, EVENING, place.zone)) - way;
}

/** When to leave for home: at wrap where that is a bearable day and ends by midnight, else rested in the morning. */
export function leavingAfter(last: BookDay, outAt: number, way: number, rest: number, home: Place, place: Place): number {
  // On a one-day trip the way out is in the same day's hours.
  const began = last.callAt - outAt < REST ? Math.min(outAt, last.callAt) : last.callAt;
  const homeAt = last.wrapAt + way;
  const bearable = homeAt - began <= LONGEST_DAY && wallAt(homeAt, home.zone).slice(0, 10) <= last.date;
  if (way <= SHORT_WAY || bearable) return last.wrapAt;
  const wrapDate = wallAt(last.wrapAt, place.zone).slice(0, 10);
  const morning = [wrapDate, nextDate(wrapDate)]
    .map((date) => at(date, MORNING, place.zone))
    .find((moment) => moment >= last.wrapAt + rest);
  return morning ?? last.wrapAt + rest;
}

/** The date of departure, and later dates that hold more than four hours of the way. */
function datesOnTheWay(from: number, to: number, zone: string): string[] {
  const first = wallAt(from, zone).slice(0, 10);
  const dates = [first];
  for (let date = nextDate(first); at(date, '00:00', zone) < to; date = nextDate(date)) {
    if (Math.min(to, at(nextDate(date), '00:00', zone)) - at(date, '00:00', zone) > TRAVEL_COUNTS) dates.push(date);
  }
  return dates;
}

/** Nights away: how often the clock at the place shows 04:00 between leaving and being back. */
function nightsBetween(outAt: number, inAt: number, zone: string): number {
  let nights = 0;
  for (let date = wallAt(outAt, zone).slice(0, 10); at(date, '04:00', zone) < inAt; date = nextDate(date))
    if (at(date, '04:00', zone) > outAt) nights += 1;
  return nights;
}

/** An instant of a plan; where a clock change swallows or repeats the hour, any reading will do. */
function at(date: string, time: string, zone: string): number {
  return Temporal.PlainDateTime.from(`${date}T${time}`).toZonedDateTime(zone).epochMilliseconds;
}

/**
 * The clocks that a calendar file names: by IANA name, defined in the file (RFC 5545 3.6.5), or by the name that Windows gives them.
 */
import { RRuleTemporal } from 'rrule-temporal';
import { isZone } from '../time/read.ts';
import { plainOf, stampOf, wallOf } from './wall.ts';
import { windowsZones } from './windows-zones.ts';

/**
 * A clock: its changes of offset by instant, from one instant to another; outside of them those of its IANA zone, where it has one.
 */
export type Clock = { zone: string | null; changes: readonly Change[]; from: number; to: number };
type Change = { at: number; before: number; after: number };

const HOUR = 3_600_000;
/** An offset beyond these is a mistake (the furthest in use are -12 and +14 hours). */
const FURTHEST = 18 * HOUR;
const MOST_OBSERVANCES = 400;
const MOST_CHANGES = 2_000;

const UTC: Clock = { zone: 'UTC', changes: [], from: -Infinity, to: Infinity };

/**
 * The clock of an IANA zone, its changes known in advance from one instant to another: asking the engine for each of thousands of times
 * takes seconds.
 */
export function clockOf(zone: string, { from, to }: { from: number; to: number }): Clock {
  if (zone === 'UTC') return UTC;
  const begin = Temporal.Instant.fromEpochMilliseconds(from).toZonedDateTimeISO(zone);
  const first = offsetAt(begin);
  const changes: Change[] = [{ at: from, before: first, after: first }];
  for (let next = begin.getTimeZoneTransition('next'); next && next.epochMilliseconds < to; next = next.getTimeZoneTransition('next'))
    changes.push({ at: next.epochMilliseconds, before: changes.at(-1)?.after ?? first, after: offsetAt(next) });
  return { zone, changes, from: from + FURTHEST, to: to - FURTHEST };
}

/**
 * The instant of a wall time (as if it were UTC) on a clock, by RFC 5545 3.3.5: of a repeated time the first, of a missing one what the
 * offset before the gap gives.
 */
export function instantOn({ zone, changes, from, to }: Clock, wall: number): number {
  if (zone === 'UTC') return wall;
  if (zone !== null && (wall < from || wall >= to))
    return plainOf(wall).toZonedDateTime(zone, { disambiguation: 'compatible' }).epochMilliseconds;
  // The last change that this wall time does not lie before, as the clock showed it until then.
  const last = changes.findLast(({ at, before }) => wall - before >= at);
  if (!last) return wall - (changes[0]?.before ?? 0);
  const isMissing = wall - last.after < last.at;
  return wall - (isMissing ? last.before : last.after);
}

/** The wall time (as if it were UTC) that a clock shows at an instant. */
export function wallOn({ zone, changes, from, to }: Clock, at: number): number {
  if (zone === 'UTC') return at;
  if (zone !== null && (at < from || at >= to)) return at + offsetAt(Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO(zone));
  const last = changes.findLast((change) => change.at <= at);
  return at + (last ? last.after : (changes[0]?.before ?? 0));
}

const offsetAt = (at: Temporal.ZonedDateTime): number => at.offsetNanoseconds / 1_000_000;

/**
 * What a name means: the IANA name of a zone, a clock that the file defines, or null where nobody knows it.
 * @param defined zones that the file defines, by their name
 */
export function clockNamed(tzid: string, defined: ReadonlyMap<string, Clock>): Clock | string | null {
  if (isZone(tzid)) return tzid;
  const here = defined.get(tzid);
  if (here) return here;
  const windows = windowsZones[tzid];
  if (windows) return windows;
  // Some programs put their own name before that of the zone: "/example.org/20260101/Europe/Berlin".
  const parts = tzid.split('/').filter((part) => part !== '');
  const tail = [3, 2].map((length) => parts.slice(-length).join('/')).find((name) => parts.length > 2 && isZone(name));
  return tail ?? null;
}

type Observance = { start: number; before: number; after: number; rule: string | null; more: number[] };

/**
 * Read the lines of one VTIMEZONE.
 * @param window epoch milliseconds; changes of the clock are worked out for it and the years beside it
 * @returns its name and its clock
 * @throws Error where it has no name, no offset, or an offset that cannot be
 */
export function readZone(lines: readonly string[], window: { from: number; to: number }): { tzid: string; clock: Clock } {
  const { tzid, observances } = observancesOf(lines);
  if (tzid === '' || observances.length === 0) throw new Error('a zone without name or offsets');
  const changes = observances.flatMap((each) => changesOf(each, window)).sort((a, b) => a.at - b.at);
  if (changes.length > MOST_CHANGES) throw new Error('too many changes');
  return { tzid, clock: { zone: null, changes, from: -Infinity, to: Infinity } };
}

function observancesOf(lines: readonly string[]): { tzid: string; observances: Observance[] } {
  const observances: Observance[] = [];
  let tzid = '';
  let open: Partial<Observance> | null = null;
  for (const line of lines) {
    const colon = line.indexOf(':');
    const name = line.slice(0, colon).split(';')[0]?.toUpperCase();
    const value = line.slice(colon + 1).trim();
    if (name === 'TZID' && !open) tzid = value;
    else if (name === 'BEGIN') open = {};
    else if (name === 'END' && open) {
      const { start, before, after, rule = null, more = [] } = open;
      if (start === undefined || before === undefined || after === undefined) throw new Error('an offset that is not said');
      if (observances.length >= MOST_OBSERVANCES) throw new Error('too many offsets');
      observances.push({ start, before, after, rule, more });
      open = null;
    } else if (open && name === 'DTSTART') open.start = written(value);
    else if (open && name === 'TZOFFSETFROM') open.before = offsetOf(value);
    else if (open && name === 'TZOFFSETTO') open.after = offsetOf(value);
    else if (open && name === 'RRULE') open.rule = value;
    else if (open && name === 'RDATE') open.more = [...(open.more ?? []), ...value.split(',').map(written)];
  }
  return { tzid, observances };
}

/** When an observance sets in, in and around the window, and where it began. */
function changesOf({ start, before, after, rule, more }: Observance, { from, to }: { from: number; to: number }): Change[] {
  const year = 366 * 24 * HOUR;
  const walls = [start, ...more, ...(rule === null ? [] : wallsOf(start, rule, before, from - 2 * year, to + year))];
  return [...new Set(walls)].map((wall) => ({ at: wall - before, before, after }));
}

/** UNTIL of an observance is in UTC, its wall times run on the offset before the change (RFC 5545 3.6.5). */
function wallsOf(start: number, rule: string, before: number, from: number, to: number): number[] {
  const onWall = rule.replace(/UNTIL=(\d{8}T\d{6})Z/i, (_, until: string) => `UNTIL=${stampOf(written(until) + before)}Z`);
  const dtstart = Temporal.Instant.fromEpochMilliseconds(start).toZonedDateTimeISO('UTC');
  const rules = new RRuleTemporal({
    rruleString: `RRULE:${onWall}`,
    dtstart,
    tzid: 'UTC',
    temporal: Temporal,
    maxIterations: 10_000,
    cache: false,
  });
  const [after, till] = [from, to].map((at) => Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO('UTC'));
  if (!after || !till) return [];
  return rules
    .between(after, till, true)
    .slice(0, 1000)
    .map((each) => each.epochMilliseconds);
}

function written(value: string): number {
  const found = /^(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z?$/.exec(value);
  if (!found) throw new Error('a time that is none');
  return wallOf(`${found.slice(1, 4).join('-')}T${found.slice(4, 7).join(':')}`);
}

function offsetOf(value: string): number {
  const found = /^([+-])(\d\d)(\d\d)(\d\d)?$/.exec(value);
  if (!found) throw new Error('an offset that is none');
  const ms = ((Number(found[2]) * 60 + Number(found[3])) * 60 + Number(found[4] ?? 0)) * 1000;
  if (ms > FURTHEST) throw new Error('an offset that is none');
  return found[1] === '-' ? -ms : ms;
}

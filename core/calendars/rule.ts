/**
 * The occurrences of a repeating event in a window, as wall times on its own clock. The rule itself is worked out by a library; here
 * stands what it leaves to others: ends that are written on another clock, and a bound on what a hostile rule may cost.
 */
import { RRuleTemporal } from 'rrule-temporal';
import { type Clock, instantOn, wallOn } from './clocks.ts';
import type { When } from './event.ts';
import { plainOf, stampOf, wallOf } from './wall.ts';

export type Window = { from: number; to: number };
/** Wall times as if they were UTC, ascending; `cut` where there were more than are kept. */
export type Occurrences = { walls: number[]; cut: boolean };

/** As many occurrences of one event are kept: a daily one has 1,461 in four years. */
export const MOST_OCCURRENCES = 4_000;
const MOST_STEPS = 20_000;
const DAY = 86_400_000;
const HOUR = 3_600_000;
/** How much of a rule is worked out at once, of one that runs through the day and of another. */
const SLOW_STEP = 400 * DAY;
const STEP: Readonly<Record<string, number>> = { HOURLY: 16 * DAY, MINUTELY: DAY, SECONDLY: DAY / 24 };
const PARTS = new Set(
  'FREQ UNTIL COUNT INTERVAL BYSECOND BYMINUTE BYHOUR BYDAY BYMONTHDAY BYYEARDAY BYWEEKNO BYMONTH BYSETPOS WKST'.split(' '),
);

/**
 * @param start the first occurrence, which counts whether the rule gives it or not
 * @param window epoch milliseconds; of a rule that runs through the day, only from `today` on, as far as the bound goes
 * @throws Error where the rule cannot be read
 */
export function occurrencesOf(rule: string, start: When, clock: Clock, window: Window, today: number): Occurrences {
  const parts = partsOf(rule);
  const fast = STEP[parts.get('FREQ') ?? ''];
  // A rule by days runs on wall times alone. Where occurrences are counted, or run through the day, those that the clock skips matter.
  const isCounted = parts.has('COUNT') || fast !== undefined;
  const zone = (!start.isDate && isCounted && clock.zone) || 'UTC';
  const inZone = (wall: number) => plainOf(wall).toZonedDateTime(zone, { disambiguation: 'compatible' });
  const until = parts.get('UNTIL');
  const last = until === undefined ? null : untilOf(until, start, clock);
  // Two hours more on wall times, because a clock may show an hour twice; instants decide below.
  if (last !== null) parts.set('UNTIL', `${stampOf(zone === 'UTC' ? last.wall + 2 * HOUR : last.at)}Z`);
  const rruleString = `RRULE:${[...parts].map(([name, value]) => `${name}=${value}`).join(';')}`;
  // Without the engine's own Temporal its results are of another class, of which only two numbers are taken: ten times as fast.
  const rules = new RRuleTemporal({
    rruleString,
    dtstart: inZone(start.wall),
    tzid: zone,
    // The start is the first occurrence (RFC 5545 3.8.5.3) and so one of those that are counted, whether the rule gives it or not.
    includeDtstart: parts.has('COUNT'),
    maxIterations: MOST_STEPS,
    // A bound of our own takes the library off its quick ways, so it is set only where times of day multiply what must be looked at.
    ...(fast || parts.has('BYHOUR') || parts.has('BYMINUTE') || parts.has('BYSECOND') ? { maxCandidateEvaluations: 4 * MOST_STEPS } : {}),
    cache: false,
  });
  const isThere = (wall: number): boolean => {
    if (start.isDate) return last === null || wall <= last.wall;
    const at = instantOn(clock, wall);
    return wallOn(clock, at) === wall && (last === null || at <= last.at);
  };
  const from = Math.max(wallOn(clock, fast ? Math.max(window.from, today) : window.from), start.wall);
  const windowEnds = wallOn(clock, window.to);
  const to = Math.min(windowEnds, last === null ? Infinity : last.wall + DAY);
  // The start is the first occurrence, also where the rule ends before it.
  const walls: number[] = start.wall >= from && start.wall < windowEnds ? [start.wall] : [];
  // Taken in steps, so that it ends where enough is known.
  const step = fast ?? SLOW_STEP;
  for (let begin = from; begin < to; begin += step) {
    const found = within(rules, inZone(begin), inZone(Math.min(begin + step, to)));
    for (const wall of found ?? []) if (wall !== walls.at(-1) && wall >= from && wall < to && isThere(wall)) walls.push(wall);
    if (!found || walls.length > MOST_OCCURRENCES) return { walls: walls.slice(0, MOST_OCCURRENCES), cut: true };
  }
  return { walls, cut: false };
}

/** Nothing where it would take more steps than any honest rule does. */
function within(rules: RRuleTemporal, from: Temporal.ZonedDateTime, to: Temporal.ZonedDateTime): number[] | null {
  try {
    return rules.between(from, to, true).map(wallIn);
  } catch (error) {
    if (error instanceof Error && error.message.startsWith('Maximum')) return null;
    throw error;
  }
}

/** @throws Error where it is no rule, or one that nobody can follow */
function partsOf(rule: string): Map<string, string> {
  if (rule.length > 2_000) throw new Error('a rule too long');
  const parts = new Map<string, string>();
  for (const part of rule.toUpperCase().split(';')) {
    const [name = '', value = ''] = part.trim().split('=');
    if (PARTS.has(name) && value !== '') parts.set(name, value);
  }
  // FREQ is required; the order of the parts says nothing (RFC 5545 3.3.10).
  if (!parts.has('FREQ')) throw new Error('a rule without frequency');
  return parts;
}

const UNTIL = /^(\d{4})(\d\d)(\d\d)(?:T(\d\d)(\d\d)(\d\d)(Z?))?$/;

/** The last moment: in UTC, on the clock of the event, or through a whole date, which many programs write though the start has a time. */
function untilOf(until: string, start: When, clock: Clock): { wall: number; at: number } {
  const found = UNTIL.exec(until);
  if (!found) throw new Error('an end that is none');
  const [, year, month, day, hour, minute, second, utc] = found;
  const written = wallOf(`${year}-${month}-${day}T${hour ?? '00'}:${minute ?? '00'}:${second ?? '00'}`);
  if (start.isDate) {
    const wall = hour !== undefined && utc ? wallOn(clock, written) : written;
    return { wall: wall - (wall % DAY), at: wall - (wall % DAY) };
  }
  if (hour === undefined) return { wall: written + DAY - 1000, at: instantOn(clock, written + DAY - 1000) };
  return utc ? { wall: wallOn(clock, written), at: written } : { wall: written, at: instantOn(clock, written) };
}

const wallIn = (zoned: { epochMilliseconds: number; offsetNanoseconds: number }) =>
  zoned.epochMilliseconds + zoned.offsetNanoseconds / 1_000_000;

/**
 * One event of a calendar file as its properties say it, before anything is placed on a clock.
 */
import ICAL from 'ical.js';

/** A date, or a time on some clock, as it was written. */
export type When = {
  /** Wall time as if it were UTC, epoch milliseconds; of a date its midnight. */
  wall: number;
  isDate: boolean;
  /** Written with a Z. */
  isUtc: boolean;
  /** Name of the clock; null where it floats, is a date or in UTC. */
  tzid: string | null;
};
/** A length as RFC 5545 3.3.6 means it: days are nominal, the rest is exact. */
export type Length = { days: number; ms: number };
type Extra = { at: When; end: When | null; length: Length | null };

export type CalendarEvent = {
  uid: string;
  title: string;
  start: When;
  end: When | null;
  length: Length | null;
  /** The value of RRULE as it was written; null where it does not recur. */
  rule: string | null;
  more: Extra[];
  except: When[];
  /** Which occurrence it stands for, and whether for all later ones too. */
  instead: { of: When; andLater: boolean } | null;
  sequence: number;
  /** It takes no time from anybody. */
  counts: 'busy' | 'tentative' | 'free' | 'cancelled';
};

/** Longest title that is kept, characters. */
const TITLE = 200;
const LONGEST_UID = 1_000;
type Property = [name: string, params: Record<string, string | string[]>, type: string, ...values: unknown[]];

/**
 * Read the lines of one VEVENT.
 * @throws Error where what it says of itself cannot be: no start, a date that does not exist, a line that is none
 */
export function readEvent(lines: readonly string[]): CalendarEvent {
  const named = new Map<string, Property[]>();
  let rule: string | null = null;
  for (const line of lines) {
    // The rule is read where it is expanded; it has no parameters (RFC 5545 3.8.5.3 leaves room for some that say nothing here).
    if (/^RRULE[:;]/i.test(line)) {
      rule ??= line.slice(line.indexOf(':') + 1).trim();
      continue;
    }
    const property = ICAL.parse.property(line) as Property;
    const same = named.get(property[0]);
    if (same) same.push(property);
    else named.set(property[0], [property]);
  }
  const one = (name: string): Property | undefined => named.get(name)?.[0];
  const text = (name: string): string => {
    const value = one(name)?.[3];
    return typeof value === 'string' || typeof value === 'number' ? `${value}` : '';
  };
  const whens = (name: string): When[] => (named.get(name) ?? []).flatMap((each) => each.slice(3).map((value) => whenOf(value, each)));
  const [start] = whens('dtstart');
  if (!start) throw new Error('no start');
  const [instead] = whens('recurrence-id');
  const uid = text('uid').slice(0, LONGEST_UID);
  const length = one('duration');
  return {
    // RFC 5545 3.8.4.7 asks for a UID; without one an event stands for itself alone.
    uid: uid === '' ? `${text('summary').slice(0, TITLE)} ${start.wall}` : uid,
    title: titleOf(text('summary')),
    start,
    end: whens('dtend')[0] ?? null,
    length: length ? lengthOf(String(length[3])) : null,
    rule,
    more: (named.get('rdate') ?? []).flatMap((each) => each.slice(3).map((value) => extraOf(value, each))),
    except: whens('exdate'),
    instead: instead ? { of: instead, andLater: one('recurrence-id')?.[1]['range'] === 'THISANDFUTURE' } : null,
    sequence: Number(text('sequence')) || 0,
    counts: countsAs(text('status'), text('transp'), text('x-microsoft-cdo-busystatus')),
  };
}

function countsAs(status: string, transparency: string, busy: string): CalendarEvent['counts'] {
  if (status.toUpperCase() === 'CANCELLED') return 'cancelled';
  if (transparency.toUpperCase() === 'TRANSPARENT' || busy.toUpperCase() === 'FREE') return 'free';
  return status.toUpperCase() === 'TENTATIVE' || busy.toUpperCase() === 'TENTATIVE' ? 'tentative' : 'busy';
}

/** One line without what cannot be seen. */
function titleOf(summary: string): string {
  const title = summary
    .slice(0, 4 * TITLE)
    .replace(/[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2066-\u2069\ufeff]+/g, ' ')
    .trim();
  const shown = title.length > TITLE ? `${title.slice(0, TITLE - 1).replace(/[\ud800-\udbff]$/, '')}…` : title;
  return shown === '' ? 'An event without a title' : shown;
}

const WHEN = /^(\d{4}-\d\d-\d\d)(?:T(\d\d):(\d\d):(\d\d)(Z?))?$/;

function whenOf(value: unknown, [, params]: Property): When {
  const found = WHEN.exec(String(value));
  if (!found) throw new Error('a time that is none');
  const [, date = '', hour, minute, second, utc] = found;
  const day = Temporal.PlainDate.from(date, { overflow: 'reject' });
  if (day.year < 1900 || day.year > 2199) throw new Error('a date too far away');
  const midnight = day.toZonedDateTime('UTC').epochMilliseconds;
  if (hour === undefined) return { wall: midnight, isDate: true, isUtc: false, tzid: null };
  const [h, m, s] = [Number(hour), Number(minute), Number(second)];
  // 60 is a leap second (RFC 5545 3.3.12).
  if (h > 23 || m > 59 || s > 60) throw new Error('a time that is none');
  const tzid = params['tzid'];
  return {
    wall: midnight + ((h * 60 + m) * 60 + Math.min(s, 59)) * 1000,
    isDate: false,
    isUtc: utc === 'Z',
    tzid: utc === 'Z' || typeof tzid !== 'string' ? null : tzid,
  };
}

function extraOf(value: unknown, property: Property): Extra {
  if (!Array.isArray(value)) return { at: whenOf(value, property), end: null, length: null };
  const [at, to] = value as [string, string];
  return to.startsWith('P') || to.startsWith('+P')
    ? { at: whenOf(at, property), end: null, length: lengthOf(to) }
    : { at: whenOf(at, property), end: whenOf(to, property), length: null };
}

const LENGTH = /^\+?P(?:(\d{1,6})W)?(?:(\d{1,6})D)?(?:T(?:(\d{1,6})H)?(?:(\d{1,6})M)?(?:(\d{1,8})S)?)?$/;

function lengthOf(value: string): Length {
  const found = LENGTH.exec(value);
  if (!found) throw new Error('a length that is none');
  const [weeks, days, hours, minutes, seconds] = found.slice(1).map((part) => Number(part ?? 0));
  return { days: (weeks ?? 0) * 7 + (days ?? 0), ms: (((hours ?? 0) * 60 + (minutes ?? 0)) * 60 + (seconds ?? 0)) * 1000 };
}

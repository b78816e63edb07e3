/**
 * Times of day in a text, single or from one to the other, and which of them are only numbers until a neighbour says otherwise.
 */
import type { Token } from '../parts/tokens.ts';
import { timeAt, type ClockTime } from './at.ts';

export type TimeMention = {
  first: number;
  next: number;
  start: number;
  end: number;
  from: ClockTime;
  to?: ClockTime;
  /** Nothing but a number: needs a cue right before it. */
  bare: boolean;
  /** A zone named after it: "5pm ET". */
  zone?: string;
};

type Tokens = readonly Token[];

const joins = new Set(['to', '-', 'until', 'till', 'til', 'through', 'thru', 'bis', 'à', 'hasta', 'tot', 'alle', 'às']);

/** Zones as people write them after a time; a summer and a winter name stand for the same clock on the wall. IANA time zone database. */
const zoneWords = new Map<string, string>([
  ['et', 'America/New_York'],
  ['est', 'America/New_York'],
  ['edt', 'America/New_York'],
  ['eastern', 'America/New_York'],
  ['ct', 'America/Chicago'],
  ['cdt', 'America/Chicago'],
  ['central', 'America/Chicago'],
  ['cst', 'America/Chicago'],
  ['mt', 'America/Denver'],
  ['mst', 'America/Denver'],
  ['mdt', 'America/Denver'],
  ['mountain', 'America/Denver'],
  ['pt', 'America/Los_Angeles'],
  ['pst', 'America/Los_Angeles'],
  ['pdt', 'America/Los_Angeles'],
  ['pacific', 'America/Los_Angeles'],
  ['gmt', 'UTC'],
  ['utc', 'UTC'],
  ['bst', 'Europe/London'],
  ['cet', 'Europe/Paris'],
  ['cest', 'Europe/Paris'],
  ['eet', 'Europe/Athens'],
  ['akst', 'America/Anchorage'],
  ['hst', 'Pacific/Honolulu'],
  ['ast', 'America/Halifax'],
  ['nst', 'America/St_Johns'],
  ['aest', 'Australia/Brisbane'],
  ['aedt', 'Australia/Sydney'],
  ['awst', 'Australia/Perth'],
  ['nzst', 'Pacific/Auckland'],
  ['nzdt', 'Pacific/Auckland'],
  ['jst', 'Asia/Tokyo'],
  ['sgt', 'Asia/Singapore'],
  ['hkt', 'Asia/Hong_Kong'],
]);

/** Zones of countries and regions before "time". IANA time zone database. */
const areaZones = new Map<string, string>([
  ['uk', 'Europe/London'],
  ['british', 'Europe/London'],
  ['irish', 'Europe/Dublin'],
  ['german', 'Europe/Berlin'],
  ['french', 'Europe/Paris'],
  ['spanish', 'Europe/Madrid'],
  ['central european', 'Europe/Paris'],
  ['newfoundland', 'America/St_Johns'],
  ['atlantic', 'America/Halifax'],
  ['alaska', 'America/Anchorage'],
  ['hawaii', 'Pacific/Honolulu'],
  ['arizona', 'America/Phoenix'],
  ['indian', 'Asia/Kolkata'],
  ['india', 'Asia/Kolkata'],
  ['japan', 'Asia/Tokyo'],
  ['nz', 'Pacific/Auckland'],
  ...(
    [
      ['Asia/Kathmandu', 'nepal nepali'],
      ['America/Jamaica', 'jamaica jamaican'],
      ['Europe/Tallinn', 'estonia estonian'],
      ['Europe/Helsinki', 'finland finnish'],
      ['Europe/Lisbon', 'portugal portuguese'],
      ['Europe/Dublin', 'ireland'],
      ['Europe/Berlin', 'germany'],
      ['Europe/Paris', 'france'],
      ['Europe/Rome', 'italy italian'],
      ['Europe/Amsterdam', 'dutch netherlands'],
      ['Europe/Brussels', 'belgian belgium'],
      ['Europe/Zurich', 'swiss switzerland'],
      ['Europe/Vienna', 'austria austrian'],
      ['Europe/Warsaw', 'poland polish'],
      ['Europe/Oslo', 'norway norwegian'],
      ['Europe/Stockholm', 'sweden swedish'],
      ['Europe/Copenhagen', 'denmark danish'],
      ['Europe/Athens', 'greece greek'],
      ['Europe/Istanbul', 'turkey turkish'],
      ['Atlantic/Reykjavik', 'iceland icelandic'],
      ['Africa/Nairobi', 'kenya kenyan'],
      ['Africa/Lagos', 'nigeria nigerian'],
      ['Asia/Karachi', 'pakistan'],
      ['Asia/Bangkok', 'thai thailand'],
      ['Asia/Manila', 'philippine philippines'],
      ['Asia/Tokyo', 'japanese'],
      ['Asia/Seoul', 'korea korean'],
      ['Asia/Shanghai', 'china chinese'],
      ['Asia/Singapore', 'sg'],
      ['Australia/Brisbane', 'queensland'],
    ] as const
  ).flatMap(([zone, names]) => names.split(' ').map((name) => [name, zone] as const)),
]);

/** The zone of a town's clocks; undefined for a name that is no town. */
export type ZoneOf = (town: string) => string | undefined;
/** A time in a zone that cannot be told: "my time". */
export const UNKNOWN_ZONE = 'unknown';
const LONGEST_TOWN = 3;

/** "local time", "call time" and the like name no zone. */
const NO_ZONE =
  /^(?:local|call|start|end|show|wrap|set|load|full|first|part|this|same|the|your|that|lunch|dinner|break|half|each|home|doors?|arrival|finish|standard)$/i;

/** "Toronto time", "London time", "my time" after a time; a name that is in no list tells that it is another zone. */
function zoneNamed(tokens: Tokens, index: number, zoneOf: ZoneOf): { zone: string; next: number } | undefined {
  for (let length = 1; length <= LONGEST_TOWN; length++) {
    const after = tokens[index + length];
    if (after?.lower !== 'time' || after.breaks > 0) continue;
    const words = tokens.slice(index, index + length);
    const name = words.map((token) => token.text).join(' ');
    const area = areaZones.get(name.toLowerCase());
    if (area !== undefined) return { zone: area, next: index + length + 1 };
    if (/^(?:my|our)$/i.test(name)) return { zone: UNKNOWN_ZONE, next: index + length + 1 };
    const zone = words.every((token) => /^\p{Lu}/u.test(token.text)) ? zoneOf(name) : undefined;
    if (zone !== undefined) return { zone, next: index + length + 1 };
    if (length === 1 && /^\p{Lu}\p{Ll}{3,}$/u.test(name) && !NO_ZONE.test(name) && !zoneWords.has(name.toLowerCase()))
      return { zone: UNKNOWN_ZONE, next: index + 2 };
  }
  return undefined;
}

/** "heure de Montréal", "hora de Madrid", "ora di Roma" */
function zoneElsewhere(tokens: Tokens, index: number, zoneOf: ZoneOf): { zone: string; next: number } | undefined {
  const at = tokens[index]?.text === ',' ? index + 1 : index;
  if (!/^(?:heure|hora|ora)$/.test(tokens[at]?.lower ?? '') || !/^(?:de|di|d')$/.test(tokens[at + 1]?.lower ?? '')) return undefined;
  const name = tokens[at + 2]?.text ?? '';
  return /^\p{Lu}/u.test(name) ? { zone: zoneOf(name) ?? UNKNOWN_ZONE, next: at + 3 } : undefined;
}

/** "UTC-8", "GMT+5:30": an hour's distance from universal time. */
function offsetAt(tokens: Tokens, index: number): { zone: string; next: number } | undefined {
  const sign = tokens[index + 1];
  const hours = tokens[index + 2];
  if (!/^(?:utc|gmt)$/.test(tokens[index]?.lower ?? '') || !/^[+\u2212-]$/.test(sign?.text ?? '') || hours?.num === undefined)
    return undefined;
  if (!sign?.tight || !hours.tight || hours.num > FURTHEST) return undefined;
  const [colon, minutes] = [tokens[index + 3], tokens[index + 4]];
  const half = colon?.text === ':' && colon.tight && minutes?.tight && /^(?:00|30|45)$/.test(minutes.text) ? minutes.text : undefined;
  return {
    zone: `${sign.text === '+' ? '+' : '-'}${String(hours.num).padStart(2, '0')}:${half ?? '00'}`,
    next: index + (half === undefined ? 3 : 5),
  };
}
const FURTHEST = 14;

/** "ET", "Eastern time", "(CET)" after a time. */
function zoneAt(tokens: Tokens, index: number, zoneOf: ZoneOf): { zone: string; next: number } | undefined {
  const named = zoneNamed(tokens, index, zoneOf) ?? zoneElsewhere(tokens, index, zoneOf) ?? offsetAt(tokens, index);
  if (named) return named;
  const open = tokens[index]?.text === '(' ? 1 : 0;
  const token = tokens[index + open];
  const zone = token && token.breaks === 0 ? zoneWords.get(token.lower) : undefined;
  if (!token || zone === undefined) return undefined;
  const spelled = /^(?:eastern|central|mountain|pacific)$/.test(token.lower);
  const time = tokens[index + open + 1]?.lower === 'time' || tokens[index + open + 1]?.lower === 'standard';
  const after = tokens[index + open + 1];
  const stops = after === undefined || after.breaks > 0 || /^[.,;)!?]$/.test(after.text);
  const ends = stops || /^(?:\p{Ll}+|\p{L}+day)$/u.test(after.text);
  if (
    spelled
      ? !time && !(/^\p{Lu}/u.test(token.text) ? ends : stops)
      : token.text !== token.text.toUpperCase() && !/^(?:gmt|utc|cet|cest|est|pst|aest)$/.test(token.lower)
  )
    return undefined;
  return { zone, next: index + open + (time ? 2 : 1) + (open && tokens[index + 2]?.text === ')' ? 1 : 0) };
}

/** More times than this are a timetable, not a message. */
const MOST_TIMES = 1000;

/** "6:15 for 6:30 am", "7 for half past": the hour to come at, a little before another. */
function cameFor(tokens: Tokens, from: ClockTime, at: number): { from: ClockTime; next: number } | undefined {
  const begins = tokens[at]?.breaks === 0 ? timeAt(tokens, at) : undefined;
  if (!begins || (from.bare && begins.bare && from.minutes % 60 === 0 && begins.minutes % 60 === 0)) return undefined;
  const ahead = (begins.minutes - from.minutes + 720) % 720;
  if (ahead < SHORTEST_AHEAD || ahead > LONGEST_AHEAD) return undefined;
  const told = from.open && !begins.open ? { ...from, minutes: begins.minutes - ahead, open: false } : from;
  return { from: { ...told, bare: false }, next: begins.next };
}
const [SHORTEST_AHEAD, LONGEST_AHEAD] = [10, 60];

/** "2024-2026" */
const isYears = (from: ClockTime, to: ClockTime): boolean =>
  from.minutes >= 20 * 60 && to.minutes >= 20 * 60 && from.minutes < 21 * 60 && to.minutes < 21 * 60;

/** "2. Camera only", "3) arrive": the number of a row. */
const numbersRow = (tokens: Tokens, index: number): boolean =>
  /^\d{1,2}$/.test(tokens[index]?.text ?? '') &&
  (tokens[index]?.breaks ?? 0) > 0 &&
  /^[.)]$/.test(tokens[index + 1]?.text ?? '') &&
  /^\p{L}/u.test(tokens[index + 2]?.text ?? '') &&
  (tokens[index + 2]?.breaks ?? 0) === 0;

/** Every time outside the tokens that are already taken by dates and amounts. */
export function timesOf(tokens: Tokens, taken: (index: number) => boolean, zoneOf: ZoneOf = () => undefined): TimeMention[] {
  const found: TimeMention[] = [];
  let index = 0;
  while (index < tokens.length && found.length < MOST_TIMES) {
    const from = taken(index) || numbersRow(tokens, index) ? undefined : timeAt(tokens, index);
    if (!from) {
      index++;
      continue;
    }
    const between = tokens[index - 1]?.lower === 'between';
    const join = tokens[from.next]?.lower ?? '';
    // "9.30am each day to 5pm"
    const daily = /^(?:each|every|both)$/.test(join) && /^(?:to|until|till|til|-)$/.test(tokens[from.next + 2]?.lower ?? '') ? 2 : 0;
    const article = join === 'hasta' && tokens[from.next + 1]?.lower === 'las' ? 1 : 0;
    const other =
      from.next +
      daily +
      article +
      (/^(?:about|around|approx|roughly|maybe|like|~)$/.test(tokens[from.next + daily + 1]?.lower ?? '') ? 2 : 1);
    const spanish = join === 'a' && /^(?:de|das|dalle|from)$/.test(tokens[index - 1]?.lower ?? '');
    let to = (daily > 0 || joins.has(join) || spanish || (between && join === 'and')) && !taken(other) ? timeAt(tokens, other) : undefined;
    if (to && tokens[other]?.breaks !== 0) to = undefined;
    const guests = to === undefined && join === 'for' && !taken(other) ? cameFor(tokens, from, other) : undefined;
    const next = guests?.next ?? to?.next ?? from.next;
    // "12:00 noon Helsinki time"
    const zone =
      zoneAt(tokens, next, zoneOf) ??
      (/^(?:noon|midday|sharp)$/.test(tokens[next]?.lower ?? '') ? zoneAt(tokens, next + 1, zoneOf) : undefined);
    found.push({
      first: index,
      next: zone?.next ?? next,
      start: tokens[index]?.start ?? 0,
      end: tokens[(zone?.next ?? next) - 1]?.end ?? 0,
      from: guests?.from ?? from,
      ...(to ? { to } : {}),
      bare: guests === undefined && from.bare && (to === undefined || to.bare) && !(from.military && to?.military && !isYears(from, to)),
      ...(zone ? { zone: zone.zone } : {}),
    });
    index = Math.max(zone?.next ?? next, index + 1);
  }
  return found;
}

/** Both ends of "9 to 5": morning to evening where only that makes sense. Undefined where it stays open. */
export function settledPair(from: ClockTime, to: ClockTime): { from: number; to: number } | undefined {
  let [begin, end] = [from.minutes, to.minutes];
  if (from.open && to.open) {
    // "9 to 5": a start in the morning and an end at an hour that lies before it on the dial.
    if (begin >= 6 * 60 && begin < 12 * 60 && end < begin && end >= 60) return { from: begin, to: end + 720 };
    if (begin >= 6 * 60 && begin < 12 * 60 && end === 720) return { from: begin, to: end };
    if (begin >= 6 * 60 && begin < 12 * 60 && end > 720) return { from: begin, to: end };
    if (begin >= 720 && end < 720) return { from: begin, to: end + 720 };
    if (begin >= 60 && begin < 6 * 60 && end > begin && end < 720) return { from: begin + 720, to: end + 720 };
    return undefined;
  }
  if (from.open) {
    // "9-5pm" begins in the morning; "6-10pm" in the evening.
    const later = (begin % 720) + 720;
    if (end >= 1440 || end <= 6 * 60)
      return begin >= 60 && begin < 12 * 60 && begin !== 720
        ? begin >= 6 * 60 && begin <= 11 * 60
          ? undefined
          : { from: later, to: end }
        : { from: begin, to: end };
    if (end < 720) return begin < end ? { from: begin, to: end } : undefined;
    const morning = begin % 720 === begin ? begin : 0;
    if (later >= end) return { from: begin === 720 ? 720 : morning, to: end };
    return morning < 6 * 60 || begin === 720
      ? { from: begin === 720 ? 720 : later, to: end }
      : end - later >= 120 && end - morning > 12 * 60
        ? { from: later, to: end }
        : undefined;
  }
  if (to.open) {
    if (end === 720) return { from: begin, to: begin < 720 ? 720 : 1440 };
    if (begin < 720) {
      const sameHalf = end > begin;
      return sameHalf ? (end < 720 && begin >= 6 * 60 ? undefined : { from: begin, to: end }) : { from: begin, to: end + 720 };
    }
    return end + 720 > begin ? { from: begin, to: end + 720 } : { from: begin, to: end };
  }
  if (end === 0) end = 1440;
  return { from: begin, to: end };
}

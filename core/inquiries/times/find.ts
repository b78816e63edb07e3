/**
 * Times of day in a text, single or from one to the other, and which of them are only numbers until a neighbour says otherwise.
 */
import type { Token } from '../parts/tokens.ts';
import { timeAt, type ClockTime } from './at.ts';
import { zoneAt, zoneBehind, type ZoneOf } from './zones.ts';

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

/** "half past", "quarter past" without an hour: of the hour that was told last. */
const PAST_IT = new Map([
  ['half', 30],
  ['quarter', 15],
  ['twenty', 20],
  ['ten', 10],
]);
/** Tokens between the two. */
const FARTHEST_HOUR = 24;
function pastLast(tokens: Tokens, index: number, last: TimeMention | undefined): ClockTime | undefined {
  const past = PAST_IT.get(tokens[index]?.lower ?? '');
  if (past === undefined || tokens[index + 1]?.lower !== 'past' || last === undefined || index - last.next > FARTHEST_HOUR)
    return undefined;
  // "if you phone at five it's quarter past for us"
  if (/^(?:it's|its|is|was|already)$/.test(tokens[index - 1]?.lower ?? '')) return undefined;
  const [after, told] = [tokens[index + 2], last.to ?? last.from];
  if (told.minutes % 60 >= past || (after && after.breaks === 0 && /^[\p{L}\d]/u.test(after.text) && !GOES_ON.test(after.lower)))
    return undefined;
  const minutes = told.minutes - (told.minutes % 60) + past;
  return { first: index, next: index + 2, minutes: minutes % 1440, open: told.open, bare: false };
}
/** After an hour the sentence goes on. */
const GOES_ON =
  /^(?:and|or|but|so|if|when|then|to|for|at|by|on|with|please|pls|latest|because|as|while|you|we|i|in|from|that|ish|it|your)$/;

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
    const from = taken(index) || numbersRow(tokens, index) ? undefined : (timeAt(tokens, index) ?? pastLast(tokens, index, found.at(-1)));
    if (!from) {
      index++;
      continue;
    }
    const between = /^(?:between|btwn?)$/.test(tokens[index - 1]?.lower ?? '');
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
    const named = zone?.zone ?? zoneBehind(tokens, next, zoneOf);
    found.push({
      first: index,
      next: zone?.next ?? next,
      start: tokens[index]?.start ?? 0,
      end: tokens[(zone?.next ?? next) - 1]?.end ?? 0,
      from: guests?.from ?? from,
      ...(to ? { to } : {}),
      bare: guests === undefined && from.bare && (to === undefined || to.bare) && !(from.military && to?.military && !isYears(from, to)),
      ...(named === undefined ? {} : { zone: named }),
    });
    index = Math.max(zone?.next ?? next, index + 1);
  }
  return found;
}

/** Hours from here on up to twelve end at noon. */
const EARLIEST_NOON = 8 * 60;

/** Both ends of "9 to 5": morning to evening where only that makes sense. Undefined where it stays open. */
export function settledPair(from: ClockTime, to: ClockTime): { from: number; to: number } | undefined {
  let [begin, end] = [from.minutes, to.minutes];
  if (from.open && to.open) {
    // "9 to 5": a start in the morning and an end at an hour that lies before it on the dial.
    if (begin >= 6 * 60 && begin < 12 * 60 && end <= begin && end >= 60) return { from: begin, to: end + 720 };
    // "7 til 12" of a birthday party is an evening.
    if (begin >= EARLIEST_NOON && begin < 12 * 60 && end === 720) return { from: begin, to: end };
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

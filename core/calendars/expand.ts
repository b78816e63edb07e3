/**
 * What a calendar takes of a window of time: events placed on their clocks, repeated, excepted and moved as RFC 5545 3.8.4.4 and 3.8.5 say.
 */
import { type Clock, clockNamed, clockOf, instantOn, wallOn } from './clocks.ts';
import type { CalendarEvent, Length, When } from './event.ts';
import { type LeftOut, Tally } from './left-out.ts';
import { MOST_OCCURRENCES, occurrencesOf, type Window } from './rule.ts';

/** A stretch that somebody's calendar takes. Half-open, epoch milliseconds. */
export type Busy = { uid: string; title: string; startAt: number; endAt: number; allDay: boolean; tentative: boolean };
export type Expansion = {
  window: Window;
  /** Instant from which rules that run through the day are followed. */
  today: number;
  /** Clock of dates and of times that float; IANA. */
  zone: string;
  defined: ReadonlyMap<string, Clock>;
  /** True once enough work was spent; then what repeats is left at its first occurrence. */
  enough: () => boolean;
};

/** So many stretches of one calendar are enough: what comes after them is left out. And the longest of them. */
const MOST_BUSY = 50_000;
export const LONGEST_BUSY = 100 * 86_400_000;
const DAY = 86_400_000;
/** Clocks are known in advance for the window, for what reaches into it, and a little. */
const BEFORE = LONGEST_BUSY + 30 * DAY;
const AFTER = 130 * DAY;
const MOST_CLOCKS = 500;
const FAST_RULE = /FREQ=(HOURLY|MINUTELY|SECONDLY)/i;

/** UIDs of what this program writes end so; they are never read back in. */
export const OWN_UID = '@kitbound';

/** Place every event. What does not count is counted by why. */
export function expand(events: readonly CalendarEvent[], expansion: Expansion): { busy: Busy[]; leftOut: LeftOut[] } {
  const tally = new Tally();
  const busy: Busy[] = [];
  const clocks = new Clocks(expansion, tally);
  for (const same of inOrder(events)) {
    const why = same[0]?.uid.toLowerCase().endsWith(OWN_UID) ? 'own' : busy.length >= MOST_BUSY ? 'too many' : null;
    if (why) for (const event of same) tally.add(why, event.title);
    else busy.push(...ofOneUid(same, expansion, clocks, tally));
  }
  return { busy: busy.sort((a, b) => a.startAt - b.startAt || a.endAt - b.endAt), leftOut: tally.all() };
}

/** Events by their UID. What runs through the day comes last: where not all is kept, it must not stand in the way of what is honest. */
function inOrder(events: readonly CalendarEvent[]): CalendarEvent[][] {
  const all = [...Map.groupBy(events, ({ uid }) => uid).values()];
  const isFast = (same: CalendarEvent[]): boolean => same.some(({ rule }) => rule !== null && FAST_RULE.test(rule));
  return [...all.filter((same) => !isFast(same)), ...all.filter(isFast)];
}

/** One occurrence: its identity is the wall time that the rule gave it. */
type Occurrence = { event: CalendarEvent; id: number; start: When; more: CalendarEvent['more'][number] | null };

function ofOneUid(events: readonly CalendarEvent[], expansion: Expansion, clocks: Clocks, tally: Tally): Busy[] {
  const clockOfWhen = (when: When): Clock => clocks.of(when);
  const at = (when: When): number => instantOn(clocks.of(when), when.wall);
  const masters = events.filter(({ instead }) => instead === null);
  const overrides = newestOf(
    events.filter(({ instead }) => instead !== null),
    at,
  );
  const master = masters.reduce<CalendarEvent | undefined>(
    (newest, each) => (newest && newest.sequence > each.sequence ? newest : each),
    undefined,
  );
  const occurrences = master ? occurrencesAmong(master, expansion, clockOfWhen, at, tally) : [];
  const found: Occurrence[] = [];
  const later = overrides.filter(({ instead }) => instead?.andLater);
  const single = new Map(overrides.filter(({ instead }) => !instead?.andLater).map((each) => [idOf(each, at), each]));
  // Some programs name an occurrence by its date alone, though it has a time.
  const dates = new Set(
    master?.start.isDate ? [] : [...single.values()].flatMap(({ instead }) => (instead?.of.isDate ? instead.of.wall : [])),
  );
  for (const occurrence of occurrences) {
    if (single.has(occurrence.id) || dates.has(occurrence.start.wall - (occurrence.start.wall % DAY))) continue;
    const from = later.filter((each) => idOf(each, at) <= occurrence.id).at(-1);
    found.push(from ? movedLike(from, occurrence, clockOfWhen) : occurrence);
  }
  // What was moved stands for itself, also where the occurrence that it is instead of lies outside of the window.
  for (const event of [...single.values(), ...(master ? [] : later)])
    found.push({ event, id: idOf(event, at), start: event.start, more: null });
  return found.flatMap((occurrence) => stretchOf(occurrence, expansion, clockOfWhen, tally) ?? []);
}

/** Of several that stand for one occurrence the newest by its sequence, the later one in the file where that is the same. */
function newestOf(overrides: readonly CalendarEvent[], at: (when: When) => number): CalendarEvent[] {
  const newest = new Map<string, CalendarEvent>();
  for (const each of overrides) {
    const key = `${idOf(each, at)} ${each.instead?.andLater}`;
    if ((newest.get(key)?.sequence ?? 0) <= each.sequence) newest.set(key, each);
  }
  return [...newest.values()].sort((a, b) => idOf(a, at) - idOf(b, at));
}

const idOf = ({ instead, start }: CalendarEvent, at: (when: When) => number): number => at(instead?.of ?? start);

function occurrencesAmong(
  event: CalendarEvent,
  { window, today, enough }: Expansion,
  clockOfWhen: (when: When) => Clock,
  at: (when: When) => number,
  tally: Tally,
): Occurrence[] {
  const clock = clockOfWhen(event.start);
  let walls = [event.start.wall];
  if (event.rule !== null) {
    try {
      if (enough()) tally.add('not repeated', event.title);
      else {
        // What began before the window may reach into it.
        const reach = { from: window.from - LONGEST_BUSY, to: window.to };
        const found = occurrencesOf(event.rule, event.start, clock, reach, today);
        if (found.cut) tally.add('too often', event.title);
        walls = found.walls;
      }
    } catch {
      tally.add('rule', event.title);
    }
  }
  const extra = event.more.slice(0, MOST_OCCURRENCES);
  const given: Occurrence[] = [
    ...walls.map((wall) => ({ event, id: instantOn(clock, wall), start: { ...event.start, wall }, more: null })),
    ...extra.map((more) => ({ event, id: at(more.at), start: more.at, more })),
  ];
  const except = new Set(event.except.filter(({ isDate }) => !isDate || event.start.isDate).map(at));
  // An exception written as a date, where the event has times, takes out that date.
  const dates = new Set(event.start.isDate ? [] : event.except.filter(({ isDate }) => isDate).map(({ wall }) => wall));
  const byId = new Map(given.map((occurrence) => [occurrence.id, occurrence]));
  return [...byId.values()].filter(({ id, start }) => !except.has(id) && !dates.has(start.wall - (start.wall % DAY)));
}

/** An occurrence as a change "this and all later ones" has it: moved by as much, as long, and named as that is. */
function movedLike(change: CalendarEvent, { id, start }: Occurrence, clockOfWhen: (when: When) => Clock): Occurrence {
  const by = change.start.wall - onClockOf(change.instead?.of ?? change.start, change.start, clockOfWhen);
  return { event: change, id, start: { ...change.start, wall: onClockOf(start, change.start, clockOfWhen) + by }, more: null };
}

/** A moment's wall time on the clock of another. */
function onClockOf(when: When, other: When, clockOfWhen: (when: When) => Clock): number {
  if (when.isDate || other.isDate || (when.tzid === other.tzid && when.isUtc === other.isUtc)) return when.wall;
  return wallOn(clockOfWhen(other), instantOn(clockOfWhen(when), when.wall));
}

function stretchOf(
  { event, start, more }: Occurrence,
  { window }: Expansion,
  clockOfWhen: (when: When) => Clock,
  tally: Tally,
): Busy | null {
  if (event.counts === 'free' || event.counts === 'cancelled') return left(tally, event.counts, event);
  const startAt = instantOn(clockOfWhen(start), start.wall);
  const endAt = Math.min(endOf(event, start, more, clockOfWhen), startAt + LONGEST_BUSY);
  if (!(endAt > startAt)) return left(tally, 'no time', event);
  if (endAt <= window.from || startAt >= window.to) return event.rule === null ? left(tally, 'outside', event) : null;
  return { uid: event.uid, title: event.title, startAt, endAt, allDay: start.isDate, tentative: event.counts === 'tentative' };
}

function left(tally: Tally, why: LeftOut['why'], { title }: CalendarEvent): null {
  tally.add(why, title);
  return null;
}

/**
 * The end of an occurrence. By DTEND every one is exactly as long as the first, by DURATION nominally (RFC 5545 3.8.5.3); without
 * either a date lasts that day and a time takes none (3.6.1).
 */
function endOf(event: CalendarEvent, start: When, more: Occurrence['more'], clockOfWhen: (when: When) => Clock): number {
  const clock = clockOfWhen(start);
  const from = instantOn(clock, start.wall);
  const after = ({ days, ms }: Length): number => instantOn(clock, start.wall + days * DAY) + ms;
  if (more?.end) return instantOn(clockOfWhen(more.end), more.end.wall);
  if (more?.length) return after(more.length);
  if (event.end && start.isDate && event.end.isDate) return instantOn(clock, start.wall + (event.end.wall - event.start.wall));
  if (event.end) return from + (instantOn(clockOfWhen(event.end), event.end.wall) - instantOn(clockOfWhen(event.start), event.start.wall));
  if (event.length) return after(event.length);
  return start.isDate ? after({ days: 1, ms: 0 }) : from;
}

/** Dates, and times that float, are on the calendar's own clock; so is a clock that nobody knows, which is said. */
class Clocks {
  readonly #expansion: Expansion;
  readonly #tally: Tally;
  readonly #known = new Map<string, Clock>();

  constructor(expansion: Expansion, tally: Tally) {
    this.#expansion = expansion;
    this.#tally = tally;
  }

  of({ isUtc, tzid }: When): Clock {
    if (isUtc) return this.#named('UTC');
    return this.#named(tzid ?? this.#expansion.zone);
  }

  #named(name: string): Clock {
    const before = this.#known.get(name);
    if (before) return before;
    const { window, defined, zone } = this.#expansion;
    const meant = name === zone ? zone : clockNamed(name, defined);
    if (meant === null) {
      this.#tally.note('zone', name.slice(0, 60));
      return this.#named(zone);
    }
    const clock = typeof meant === 'object' ? meant : clockOf(meant, { from: window.from - BEFORE, to: window.to + AFTER });
    if (this.#known.size < MOST_CLOCKS) this.#known.set(name, clock);
    return clock;
  }
}

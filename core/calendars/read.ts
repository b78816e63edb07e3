/**
 * A calendar read to the end: one file, or a folder of them, whose parts are gathered first, because an event may name a clock that its
 * file defines below it, and a change may stand in another file than what it changes.
 */
import { type Clock, readZone } from './clocks.ts';
import { CalendarCutter, type FileFacts, type Part } from './cut.ts';
import { type CalendarEvent, readEvent } from './event.ts';
import { type Busy, expand, LONGEST_BUSY, OWN_UID } from './expand.ts';
import { type LeftOut, Tally } from './left-out.ts';
import type { Window } from './rule.ts';

export type Reading = { busy: Busy[]; leftOut: LeftOut[] };
export type ReadingOptions = {
  /** Epoch milliseconds; what lies outside is not kept. */
  window: Window;
  /** Rules that run through the day are followed from here on. */
  today: number;
  /** Clock of dates and floating times; IANA. */
  zone: string;
  /** Makes text of octets in UTF-8, each given as the character of its number. */
  decode: (octets: string) => string;
  /** True once enough work was spent. */
  enough: () => boolean;
};

/** Most events that are held at once; with their rules about 100 MB. */
const MOST_EVENTS = 100_000;
/** Furthest that two clocks can be apart, and a little. */
const TWO_DAYS = 2 * 86_400_000;

export class CalendarReader {
  readonly #options: ReadingOptions;
  readonly #events: CalendarEvent[] = [];
  readonly #defined = new Map<string, Clock>();
  readonly #tally = new Tally();
  #cutter: CalendarCutter;

  constructor(options: ReadingOptions) {
    this.#options = options;
    this.#cutter = new CalendarCutter(options.decode);
  }

  /** The next octets of the file that is being read, each as the character of its number. */
  push(octets: string): void {
    for (const part of this.#cutter.push(octets)) this.#take(part);
  }

  /** The file is at its end; another may follow. */
  endFile(): FileFacts {
    const { parts, facts } = this.#cutter.end();
    for (const part of parts) this.#take(part);
    this.#cutter = new CalendarCutter(this.#options.decode);
    return facts;
  }

  /** Something of it cannot be read, and is counted by its name. */
  leaveOut(name: string): void {
    this.#tally.add('broken', name);
  }

  /** Everything was read: what it takes of the window. */
  result(): Reading {
    const { busy, leftOut } = expand(this.#events, { ...this.#options, defined: this.#defined });
    return { busy, leftOut: [...this.#tally.all(), ...leftOut].reduce<LeftOut[]>(addUp, []) };
  }

  #take({ kind, lines, trouble }: Part): void {
    if (trouble) return this.#tally.add(trouble === 'too large' ? 'too large' : 'broken', kind === 'VEVENT' ? titleIn(lines) : 'a clock');
    if (kind === 'VTIMEZONE') return this.#takeZone(lines);
    try {
      const event = readEvent(lines);
      if (this.#isFar(event)) this.#tally.add('outside', event.title);
      else if (this.#events.length >= MOST_EVENTS) this.#tally.add('too many', event.title);
      else this.#events.push(event);
    } catch {
      this.#tally.add('broken', titleIn(lines));
    }
  }

  #takeZone(lines: readonly string[]): void {
    try {
      const { tzid, clock } = readZone(lines, this.#options.window);
      this.#defined.set(tzid, clock);
    } catch {
      this.#tally.add('broken', 'a clock');
    }
  }

  /** Without repetition, and so far away that it cannot reach into the window. What changes another event, or is our own, is kept. */
  #isFar({ uid, start, rule, more, instead }: CalendarEvent): boolean {
    if (rule !== null || instead !== null || more.length > 0 || uid.toLowerCase().endsWith(OWN_UID)) return false;
    const { from, to } = this.#options.window;
    return start.wall < from - LONGEST_BUSY - TWO_DAYS || start.wall > to + TWO_DAYS;
  }
}

function addUp(sums: LeftOut[], { why, count, example }: LeftOut): LeftOut[] {
  const same = sums.find((sum) => sum.why === why);
  if (same) same.count += count;
  else sums.push({ why, count, example });
  return sums;
}

/** The title of an event that could not be read, as far as it has one. */
function titleIn(lines: readonly string[]): string {
  const summary = lines.find((line) => /^SUMMARY[:;]/i.test(line)) ?? '';
  return summary
    .slice(summary.indexOf(':') + 1)
    .replace(/[^\p{L}\p{N}\p{P}\p{Zs}]/gu, '')
    .slice(0, 80);
}

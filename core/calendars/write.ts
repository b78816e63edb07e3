/**
 * The program's own dates as one calendar file (RFC 5545). Written here and not by a library, because it is written anew after every deed
 * on the one thread that answers the screen: the libraries took 0.5 to 1 s for 5,000 events, and the same events must give the same
 * bytes. Times are written on the clock of their place with the zone defined beside them, not in UTC: a call is a wall time, and a
 * calendar that is told the zone keeps it where a parliament moves the clock. Only where the clock shows an hour twice it is UTC: RFC 5545
 * 3.3.5 means the first of the two, but calendars differ on it.
 */
import type { OutEvent } from '../contract/calendars.ts';
import { dateLater } from '../time/wall.ts';
import { stampOf } from './wall.ts';
import { zoneText, type ZoneText } from './zone-text.ts';

export type Written = OutEvent & {
  /** Raised with every change. */
  sequence: number;
  /** Epoch milliseconds of that change. */
  changedAt: number;
};

const CRLF = '\r\n';
/** Octets of a line without its end (RFC 5545 3.1). */
const LONGEST = 75;

/** The whole file. Events come in the order of their UID, so that the same events give the same text. */
export function calendarText(events: readonly Written[]): string {
  const stamps = new Map<number, string>();
  const changed = (at: number): string => {
    const known = stamps.get(at) ?? `${stampOf(at)}Z`;
    stamps.set(at, known);
    return known;
  };
  const zones = zonesOf(events);
  const sorted = [...events].sort((a, b) => (a.uid < b.uid ? -1 : 1));
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Kitbound//Kitbound//EN',
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    'X-WR-CALNAME:Kitbound',
    ...[...zones].sort(([a], [b]) => (a < b ? -1 : 1)).flatMap(([, { lines: defined }]) => defined),
    ...sorted.flatMap((event) => eventLines(event, changed(event.changedAt), zones)),
    'END:VCALENDAR',
  ];
  return lines.map(folded).join(CRLF) + CRLF;
}

/** The clocks that the events are on, but for UTC. */
function zonesOf(events: readonly Written[]): Map<string, ZoneText> {
  const spans = new Map<string, { from: number; to: number }>();
  for (const { when } of events) {
    if ('date' in when || when.zone === 'UTC') continue;
    const { from, to } = spans.get(when.zone) ?? { from: when.fromAt, to: when.toAt };
    spans.set(when.zone, { from: Math.min(from, when.fromAt), to: Math.max(to, when.toAt) });
  }
  return new Map([...spans].map(([zone, { from, to }]) => [zone, zoneText(zone, from, to)]));
}

type Zones = ReadonlyMap<string, ZoneText>;

function eventLines({ uid, sequence, status, title, place, note, when }: Written, changed: string, zones: Zones): string[] {
  return [
    'BEGIN:VEVENT',
    `UID:${escaped(uid)}`,
    `DTSTAMP:${changed}`,
    `LAST-MODIFIED:${changed}`,
    `SEQUENCE:${sequence}`,
    `STATUS:${status}`,
    ...timeLines(when, zones),
    `SUMMARY:${escaped(title)}`,
    ...(place === '' ? [] : [`LOCATION:${escaped(place)}`]),
    ...(note === '' ? [] : [`DESCRIPTION:${escaped(note)}`]),
    // What is only due, or does not happen, takes no time.
    `TRANSP:${'date' in when || status === 'CANCELLED' ? 'TRANSPARENT' : 'OPAQUE'}`,
    'END:VEVENT',
  ];
}

function timeLines(when: Written['when'], zones: Zones): string[] {
  if ('date' in when) return [`DTSTART;VALUE=DATE:${bare(when.date)}`, `DTEND;VALUE=DATE:${bare(dateLater(when.date, 1))}`];
  const { from, to, zone, fromAt, toAt } = when;
  const clock = zones.get(zone);
  if (!clock || clock.twice(fromAt) || clock.twice(toAt)) return [`DTSTART:${stampOf(fromAt)}Z`, `DTEND:${stampOf(toAt)}Z`];
  return [`DTSTART;TZID=${zone}:${bare(from)}00`, `DTEND;TZID=${zone}:${bare(to)}00`];
}

const bare = (written: string): string => written.replaceAll(/[-:]/g, '');

/** TEXT of RFC 5545 3.3.11. Of characters that cannot be seen only line ends and tabs may stand in it. */
export function escaped(text: string): string {
  return text
    .replaceAll(/[\\;,]/g, String.raw`\$&`)
    .replaceAll(/\r\n|\r|\n/g, String.raw`\n`)
    .replaceAll(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/g, ' ')
    .toWellFormed();
}

/** A line cut into pieces of at most 75 octets, never inside of a character; the blank that a piece begins with is one of them. */
export function folded(line: string): string {
  if (line.length <= LONGEST && isAscii(line)) return line;
  let text = '';
  let begin = 0;
  let octets = 0;
  for (let index = 0; index < line.length; index += 1) {
    const size = octetsAt(line, index);
    if (octets + size > LONGEST) {
      text += `${line.slice(begin, index)}${CRLF} `;
      begin = index;
      octets = 1;
    }
    octets += size;
  }
  return text + line.slice(begin);
}

const isAscii = (text: string): boolean => !/[^\u0000-\u007f]/.test(text);

/** Octets that the unit at an index adds in UTF-8; of a pair the first adds all four. */
function octetsAt(text: string, index: number): number {
  const unit = text.charCodeAt(index);
  if (unit < 0x80) return 1;
  if (unit < 0x800) return 2;
  if (unit >= 0xdc00 && unit <= 0xdfff) return 0;
  return unit >= 0xd800 && unit <= 0xdbff ? 4 : 3;
}

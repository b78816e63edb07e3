/**
 * A zone as RFC 5545 3.6.5 wants it defined beside the times that name it. Every change of the clock in the years that are written is
 * written out: exact for these times, and no rule is guessed that a parliament may change.
 */
import { plainOf, stampOf } from './wall.ts';

const HOUR = 3_600_000;
const YEAR = 366 * 24 * HOUR;

/** A clock between two instants: its definition, and which instants it shows at an hour that it shows twice. */
export type ZoneText = { lines: string[]; twice: (at: number) => boolean };

/** The clock of a zone for the instants in [from, to], epoch milliseconds. @param zone IANA name */
export function zoneText(zone: string, from: number, to: number): ZoneText {
  const begin = Temporal.Instant.fromEpochMilliseconds(from - YEAR).toZonedDateTimeISO(zone);
  const changes: { at: Temporal.ZonedDateTime; before: number }[] = [];
  for (
    let next = begin.getTimeZoneTransition('next');
    next && next.epochMilliseconds <= to + YEAR;
    next = next.getTimeZoneTransition('next')
  )
    changes.push({ at: next, before: offsetOf(next.subtract({ nanoseconds: 1 })) });
  const backward = changes.map(({ at, before }) => ({ at: at.epochMilliseconds, by: before - offsetOf(at) })).filter(({ by }) => by > 0);
  return {
    lines: [
      'BEGIN:VTIMEZONE',
      `TZID:${zone}`,
      // The first one says what holds before any change.
      ...observance(begin, offsetOf(begin)),
      ...changes.flatMap(({ at, before }) => observance(at, before)),
      'END:VTIMEZONE',
    ],
    twice: (instant) => backward.some(({ at, by }) => instant >= at - by && instant < at + by),
  };
}

/** Onset on the clock as it was until then. An hour more than before is summer time, as far as one can tell from outside. */
function observance(at: Temporal.ZonedDateTime, before: number): string[] {
  const after = offsetOf(at);
  const kind = after > before ? 'DAYLIGHT' : 'STANDARD';
  return [
    `BEGIN:${kind}`,
    `DTSTART:${stampOf(at.epochMilliseconds + before)}`,
    `TZOFFSETFROM:${offsetText(before)}`,
    `TZOFFSETTO:${offsetText(after)}`,
    `END:${kind}`,
  ];
}

const offsetOf = (at: Temporal.ZonedDateTime): number => at.offsetNanoseconds / 1_000_000;

/** "-0500"; with seconds where there are any, as 3.3.14 allows. */
function offsetText(ms: number): string {
  const time = plainOf(Math.abs(ms)).toPlainTime();
  const [hours = '', minutes = '', seconds = ''] = time.toString({ smallestUnit: 'second' }).split(':');
  return `${ms < 0 ? '-' : '+'}${hours}${minutes}${seconds === '00' ? '' : seconds}`;
}

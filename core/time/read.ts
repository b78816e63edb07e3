/**
 * Wall times, dates, zones and instants as they are written in the contract and the store.
 * A future call is a wall time with a zone; its instant is derived and may be rebuilt when zone data change.
 */

// Asking the engine costs tens of microseconds, and one list of jobs asks thousands of times.
const knownZones = new Set<string>();

/** True for a zone that the running engine knows, by its IANA name ("America/Chicago"). */
export function isZone(text: string): boolean {
  if (knownZones.has(text)) return true;
  if (!/^[A-Za-z][A-Za-z0-9_+\-/]{1,63}$/.test(text)) return false;
  try {
    Intl.DateTimeFormat('en', { timeZone: text });
    knownZones.add(text);
    return true;
  } catch {
    return false;
  }
}

/** True for a real date written YYYY-MM-DD, in the years 1900 to 2199. */
export function isDate(text: string): boolean {
  if (!/^(19|20|21)\d\d-\d\d-\d\d$/.test(text)) return false;
  try {
    Temporal.PlainDate.from(text, { overflow: 'reject' });
    return true;
  } catch {
    return false;
  }
}

/** True for a real wall time written YYYY-MM-DDTHH:MM. 24:00 is not one: it is 00:00 of the next date. */
export function isWallTime(text: string): boolean {
  return /^.{10}T([01]\d|2[0-3]):[0-5]\d$/.test(text) && isDate(text.slice(0, 10));
}

/** True for an instant in UTC, written with a Z, to the second or finer. */
export function isInstant(text: string): boolean {
  if (!/^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d{1,9})?)?Z$/.test(text)) return false;
  try {
    Temporal.Instant.from(text);
    return true;
  } catch {
    return false;
  }
}

/** Why a wall time cannot be placed in a zone: it does not exist there, or it occurs twice. */
export type WallTrouble = 'missing' | 'twice';

/** Thrown by `instantOf` for a wall time that the zone's clock skips or shows twice. */
export class WallTimeError extends Error {
  readonly wall: string;
  readonly zone: string;
  readonly trouble: WallTrouble;
  constructor(wall: string, zone: string, trouble: WallTrouble) {
    super(
      trouble === 'missing'
        ? `${wall.replace('T', ' ')} does not exist in ${zone}: the clock jumps over it. Give a time before or after the change.`
        : `${wall.replace('T', ' ')} occurs twice in ${zone}: the clock is set back. Give a time before or after the change.`,
    );
    this.wall = wall;
    this.zone = zone;
    this.trouble = trouble;
  }
}

/**
 * The instant of a wall time in a zone.
 * @param wall `YYYY-MM-DDTHH:MM`
 * @param zone IANA name
 * @throws WallTimeError when the wall time is skipped or repeated there (rules.md would ask the person)
 */
export function instantOf(wall: string, zone: string): Temporal.Instant {
  const plain = Temporal.PlainDateTime.from(wall);
  try {
    return plain.toZonedDateTime(zone, { disambiguation: 'reject' }).toInstant();
  } catch {
    const earlier = plain.toZonedDateTime(zone, { disambiguation: 'earlier' });
    const exists = earlier.toPlainDateTime().equals(plain);
    throw new WallTimeError(wall, zone, exists ? 'twice' : 'missing');
  }
}

/** The wall time `YYYY-MM-DDTHH:MM` that a clock in `zone` shows at an instant (epoch milliseconds), seconds dropped. */
export function wallAt(epochMs: number, zone: string): string {
  return Temporal.Instant.fromEpochMilliseconds(epochMs)
    .toZonedDateTimeISO(zone)
    .toPlainDateTime()
    .toString({ smallestUnit: 'minute', roundingMode: 'floor' });
}

/** An instant (epoch milliseconds) as the contract writes it: UTC with a Z, to the second. */
export function instantText(epochMs: number): string {
  return Temporal.Instant.fromEpochMilliseconds(epochMs).toString({ smallestUnit: 'second' });
}

/** The same to the millisecond, where an order hangs on it. */
export function exactInstantText(epochMs: number): string {
  return Temporal.Instant.fromEpochMilliseconds(epochMs).toString();
}

/** Epoch milliseconds of an instant written with a Z. */
export function epochOf(instant: string): number {
  return Temporal.Instant.from(instant).epochMilliseconds;
}

/**
 * Wall times as numbers: milliseconds as if the clock ran in UTC, so that steps between them are sums.
 */

/** @param written "YYYY-MM-DDTHH:MM:SS"; @throws RangeError where there is no such moment */
export function wallOf(written: string): number {
  return Temporal.PlainDateTime.from(written, { overflow: 'reject' }).toZonedDateTime('UTC').epochMilliseconds;
}

export function plainOf(wall: number): Temporal.PlainDateTime {
  return Temporal.Instant.fromEpochMilliseconds(wall).toZonedDateTimeISO('UTC').toPlainDateTime();
}

/** "20261129T140000", as RFC 5545 3.3.5 writes it. */
export function stampOf(wall: number): string {
  return plainOf(wall).toString({ smallestUnit: 'second' }).replaceAll(/[-:]/g, '');
}

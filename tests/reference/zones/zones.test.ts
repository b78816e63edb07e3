/**
 * Clocks that skip and repeat hours, and the instants of wall times.
 * @source IANA, Time Zone Database, files northamerica, europe, australasia and asia, 2026
 */
import { describe, expect, test } from 'vitest';
import { instantOf, WallTimeError, wallAt } from '../../../core/time/read.ts';

const utc = (wall: string, zone: string) => instantOf(wall, zone).toString({ smallestUnit: 'minute' });

test.each([
  ['2026-03-08T01:59', 'America/New_York', '2026-03-08T06:59Z'],
  ['2026-03-08T03:00', 'America/New_York', '2026-03-08T07:00Z'],
  ['2026-07-04T12:00', 'America/Phoenix', '2026-07-04T19:00Z'],
  ['2026-07-01T12:00', 'America/St_Johns', '2026-07-01T14:30Z'],
  ['2026-07-01T12:00', 'Asia/Kathmandu', '2026-07-01T06:15Z'],
])('%s in %s is %s', (wall, zone, instant) => {
  expect(utc(wall, zone)).toBe(instant);
  expect(wallAt(Temporal.Instant.from(instant).epochMilliseconds, zone)).toBe(wall);
});

describe('a wall time that cannot be placed is asked about', () => {
  test.each([
    ['2026-03-08T02:30', 'America/New_York', 'missing'],
    ['2026-03-29T01:30', 'Europe/London', 'missing'],
    ['2026-11-01T01:30', 'America/New_York', 'twice'],
    ['2026-11-01T01:30', 'America/Chicago', 'twice'],
    ['2026-10-25T01:30', 'Europe/London', 'twice'],
    ['2026-04-05T02:30', 'Australia/Sydney', 'twice'],
    // Lord Howe sets its clock by half an hour.
    ['2026-04-05T01:45', 'Australia/Lord_Howe', 'twice'],
  ] as const)('%s in %s: %s', (wall, zone, trouble) => {
    expect(() => instantOf(wall, zone)).toThrow(expect.objectContaining({ name: 'Error', trouble }) as WallTimeError);
  });
});

test.each([
  ['2026-03-07T20:00', '2026-03-08T06:00', 9],
  ['2026-10-31T20:00', '2026-11-01T06:00', 11],
])('%s to %s in Chicago is %i h', (from, to, hours) => {
  expect(instantOf(from, 'America/Chicago').until(instantOf(to, 'America/Chicago')).total('hours')).toBe(hours);
});

test('leaving Auckland at 23:55 for 8 h 45 min lands in Honolulu on the same date, before it left', () => {
  const landed = instantOf('2027-02-14T23:55', 'Pacific/Auckland').add({ hours: 8, minutes: 45 });
  expect(wallAt(landed.epochMilliseconds, 'Pacific/Honolulu')).toBe('2027-02-14T09:40');
});

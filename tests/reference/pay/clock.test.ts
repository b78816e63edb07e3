/**
 * Nights of a changed clock are paid by elapsed time.
 * @source IANA, Time Zone Database, file northamerica, Rule US from 2007 and Zone America/Chicago, 2026
 */
import { expect, test } from 'vitest';
import { workedMs } from '../../../core/days/pay.ts';
import { instantOf } from '../../../core/time/read.ts';

const hours = (call: string, wrap: string, zone: string) =>
  workedMs({ callAt: instantOf(call, zone).epochMilliseconds, wrapAt: instantOf(wrap, zone).epochMilliseconds, unpaidBreakMinutes: 0 }) /
  3_600_000;

test.each([
  ['2026-10-31T18:00', '2026-11-01T04:30', 'America/Chicago', 11.5],
  ['2026-03-07T18:00', '2026-03-08T04:30', 'America/Chicago', 9.5],
  ['2026-10-31T18:00', '2026-11-01T04:30', 'America/Phoenix', 10.5],
])('%s to %s in %s is %d h', (call, wrap, zone, length) => expect(hours(call, wrap, zone)).toBe(length));

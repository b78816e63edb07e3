import { describe, expect, test } from 'vitest';
import { dateIn, dateLater, nextDate, wallLater, wrapAfter } from '../../../core/time/wall.ts';

describe('filling in a day', () => {
  test('a wrap later than its call is on the same date, else on the next', () => {
    expect(wrapAfter('2026-12-04T09:00', '22:30')).toBe('2026-12-04T22:30');
    expect(wrapAfter('2026-12-31T20:00', '02:00')).toBe('2027-01-01T02:00');
    expect(wrapAfter('2026-12-04T09:00', '09:00')).toBe('2026-12-05T09:00');
  });

  test('a wall time some minutes on or back, over midnight too', () => {
    expect(wallLater('2026-12-05T14:00', 270)).toBe('2026-12-05T18:30');
    expect(wallLater('2026-12-05T23:45', 30)).toBe('2026-12-06T00:15');
    expect(wallLater('2026-12-05T00:15', -30)).toBe('2026-12-04T23:45');
  });

  test('dates step over month, year and leap day', () => {
    expect(nextDate('2028-02-28')).toBe('2028-02-29');
    expect(dateLater('2027-01-02', -3)).toBe('2026-12-30');
  });

  test('today depends on the zone', () => {
    const now = Temporal.Instant.from('2026-12-04T03:30:00Z').epochMilliseconds;
    expect(dateIn('America/Chicago', now)).toBe('2026-12-03');
    expect(dateIn('Europe/Berlin', now)).toBe('2026-12-04');
  });
});

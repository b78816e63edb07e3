import { fc } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import {
  datesOf,
  DAY_MS,
  dayOf,
  inSight,
  lookingAt,
  panned,
  viewOf,
  windowAround,
  zoomed,
  zoomOf,
  zooms,
  type Zoom,
} from '../../../core/road/view.ts';
import { dateLater } from '../../../core/time/wall.ts';

const ZONE = 'America/Chicago';
const at = (wall: string) => Temporal.PlainDateTime.from(wall).toZonedDateTime(ZONE).epochMilliseconds;
const view = fc
  .record({
    start: fc.integer({ min: at('1950-01-01T00:00'), max: at('2150-01-01T00:00') }),
    days: fc.double({ min: 1, max: 366, noNaN: true }),
  })
  .map(({ start, days }) => ({ start, end: start + days * DAY_MS }));

describe('shortcuts', () => {
  test('begin at midnight a little before the day, and are known by their length, also where a clock changes', () => {
    expect(viewOf('2026-12-10', 'fortnight', ZONE)).toEqual({ start: at('2026-12-08T00:00'), end: at('2026-12-22T00:00') });
    const changed = viewOf('2026-03-08', 'day', ZONE);
    expect((changed.end - changed.start) / 3_600_000).toBe(23);
    for (const zoom of Object.keys(zooms) as Zoom[]) {
      for (const day of ['2026-03-08', '2026-11-01', '2026-12-10']) {
        const shown = viewOf(day, zoom, ZONE);
        expect([zoomOf(shown), dayOf(shown, ZONE)]).toEqual([zoom, day]);
        expect(datesOf(shown, ZONE)).toHaveLength(zooms[zoom]);
      }
    }
  });

  test('halving a fortnight is a week; a third of it is none of them', () => {
    const fortnight = viewOf('2026-12-10', 'fortnight', ZONE);
    expect(zoomOf(zoomed(fortnight, 0.5, fortnight.start))).toBe('week');
    expect(zoomOf(zoomed(fortnight, 1 / 3, fortnight.start))).toBeNull();
  });
});

describe('laws', () => {
  test('a view of any length can look at any day', () => {
    fc.assert(
      fc.property(view, fc.integer({ min: 0, max: 3000 }), (shown, days) => {
        const day = dateLater('2024-01-01', days);
        const moved = lookingAt(day, shown, ZONE);
        expect(moved.end - moved.start).toBeCloseTo(shown.end - shown.start, 0);
        expect(dayOf(moved, ZONE)).toBe(day);
      }),
    );
  });

  test('what lies under the pointer stays there, between a day and a year', () => {
    fc.assert(
      fc.property(
        view,
        fc.double({ min: 0.05, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (before, times, share) => {
          const about = before.start + share * (before.end - before.start);
          const after = zoomed(before, times, about);
          const length = after.end - after.start;
          expect(length).toBeGreaterThanOrEqual(23 * 3_600_000 - 1);
          expect(length).toBeLessThanOrEqual(366 * DAY_MS + 1);
          expect((about - after.start) / length).toBeCloseTo(share, 6);
        },
      ),
    );
  });

  test('moving keeps the length and never leaves the years that dates are kept for', () => {
    fc.assert(
      fc.property(view, fc.double({ min: -1e14, max: 1e14, noNaN: true }), (before, by) => {
        const after = panned(before, by);
        expect(after.end - after.start).toBeCloseTo(before.end - before.start, 0);
        const { from, days } = windowAround(after);
        expect(from >= '1900-01-01' && dateLater(from, days) <= '2199-12-31').toBe(true);
      }),
    );
  });

  test('an instant is brought into sight, and nothing moves where it is', () => {
    fc.assert(
      fc.property(view, fc.integer({ min: at('1940-01-01T00:00'), max: at('2160-01-01T00:00') }), (shown, instant) => {
        const moved = inSight(shown, instant);
        expect(instant >= moved.start && instant < moved.end).toBe(true);
        if (instant >= shown.start && instant < shown.end) expect(moved).toEqual(shown);
      }),
    );
  });

  test('what is asked for holds what is shown, with room on both sides', () => {
    fc.assert(
      fc.property(view, (shown) => {
        const { from, days } = windowAround(shown);
        const start = Temporal.PlainDate.from(from).toZonedDateTime('UTC').epochMilliseconds;
        // A zone is at most 14 h away from UTC.
        expect(start).toBeLessThan(shown.start - 14 * 3_600_000);
        expect(start + days * DAY_MS).toBeGreaterThan(shown.end + 14 * 3_600_000);
        expect(days).toBeLessThanOrEqual(750);
      }),
    );
  });
});

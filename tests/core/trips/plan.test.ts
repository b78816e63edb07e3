import { describe, expect, test } from 'vitest';
import type { DayKind, Place } from '../../../core/contract/parts.ts';
import type { BookDay } from '../../../core/fit/book.ts';
import { instantOf } from '../../../core/time/read.ts';
import { driveBand } from '../../../core/trips/estimate.ts';
import { planTrip } from '../../../core/trips/plan.ts';
import { spellsOf, staysOf } from '../../../core/trips/stays.ts';
import { wayFinder } from '../../../core/trips/ways.ts';
import { duluth, fargo, milwaukee, superior, thunderBay } from './places.ts';

function day(place: Place, call: string, wrap: string, kind: DayKind = 'shoot'): BookDay {
  const callAt = instantOf(call, place.zone).epochMilliseconds;
  return { date: call.slice(0, 10), kind, call, wrap, callAt, wrapAt: instantOf(wrap, place.zone).epochMilliseconds };
}
const wall = (at: number, zone: string) =>
  Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO(zone).toPlainDateTime().toString({ smallestUnit: 'minute' });

describe('an estimated drive', () => {
  test('is a band: geodesic x 1.15 at 95 km/h, and x 1.35 at 75 km/h with breaks', () => {
    // 500 km: 575 km at 95 = 363.2 min; 675 km at 75 = 540 min, 420 min after the first two hours = 4 breaks.
    expect(driveBand(500)).toEqual({ shortMinutes: 364, longMinutes: 600 });
  });
  test.each([
    [0, 0],
    [100, 108],
    // 120 min exactly: the first two hours need no break.
    [1000 / 9, 120],
    [112, 121 + 15],
    [2000 / 9, 240 + 15],
    [223, 241 + 30],
  ])('%f km take at most %i min, breaks in it', (km, minutes) => expect(driveBand(km).longMinutes).toBe(minutes));
});

describe('the way between two places', () => {
  test('a typed way beats the estimate, in both directions', () => {
    const find = wayFinder([{ fromKey: duluth.key, toKey: fargo.key, mode: 'drive', minutes: 240 }]);
    expect(find(fargo, duluth)).toMatchObject({ source: 'typed', longMinutes: 240, shortMinutes: 240 });
    expect(find(duluth, milwaukee).source).toBe('estimated');
    expect(find(duluth, duluth)).toMatchObject({ source: 'same place', longMinutes: 0 });
  });
  test('a flight needs two hours before, three over a border, and one after', () => {
    const find = wayFinder([
      { fromKey: duluth.key, toKey: milwaukee.key, mode: 'flight', minutes: 90 },
      { fromKey: duluth.key, toKey: thunderBay.key, mode: 'flight', minutes: 90 },
    ]);
    expect(find(duluth, milwaukee).longMinutes).toBe(120 + 90 + 60);
    expect(find(duluth, thunderBay).longMinutes).toBe(180 + 90 + 60);
  });
  test('the quickest of several typed ways counts', () => {
    const ways = [
      { fromKey: duluth.key, toKey: milwaukee.key, mode: 'flight' as const, minutes: 90 },
      { fromKey: duluth.key, toKey: milwaukee.key, mode: 'drive' as const, minutes: 400 },
    ];
    expect(wayFinder(ways)(duluth, milwaukee)).toMatchObject({ mode: 'flight', longMinutes: 270 });
  });
});

describe('stays', () => {
  test('are runs of consecutive paid dates', () => {
    const days = ['2026-12-01', '2026-12-02', '2026-12-04'].map((date) => day(duluth, `${date}T09:00`, `${date}T17:00`));
    expect(staysOf(days).map((stay) => stay.days.length)).toEqual([2, 1]);
  });
  test('leave travel and edit dates out', () => {
    const days = [
      day(fargo, '2026-12-11T10:00', '2026-12-11T15:00', 'travel'),
      day(fargo, '2026-12-12T09:00', '2026-12-12T17:00'),
      day(fargo, '2026-12-13T09:00', '2026-12-13T17:00', 'edit'),
    ];
    expect(staysOf(days)).toHaveLength(1);
    expect(staysOf(days)[0]?.days).toHaveLength(1);
  });
  test('are none where there is nothing but editing, which is found by its dates all the same', () => {
    const edit = day(fargo, '2026-12-13T09:00', '2026-12-13T17:00', 'edit');
    const travel = day(fargo, '2026-12-11T10:00', '2026-12-11T15:00', 'travel');
    expect(staysOf([edit])).toEqual([]);
    expect(spellsOf([edit])).toEqual([{ startAt: edit.callAt, endAt: edit.wrapAt, days: [edit] }]);
    expect(staysOf([travel, edit])).toEqual([{ startAt: travel.callAt, endAt: travel.wrapAt, days: [travel] }]);
    expect(spellsOf([travel, edit])).toEqual(staysOf([travel, edit]));
  });
});

describe('the trip of a quote', () => {
  test('at home there is nothing to travel', () => {
    const plan = planTrip({ home: duluth, place: duluth, days: [day(duluth, '2026-12-01T09:00', '2026-12-01T17:00')], ways: [] });
    expect(plan).toMatchObject({ away: false, source: 'same place', nights: 0, travelDates: [], hoursAway: 8, oneWayKm: 0 });
  });
  test('a day next door is driven there and back', () => {
    const plan = planTrip({ home: duluth, place: superior, days: [day(superior, '2026-12-01T09:00', '2026-12-01T19:00')], ways: [] });
    expect(plan).toMatchObject({ away: true, nights: 0, travelDates: [], outMinutes: 8 });
  });
  test('five days over a border: out on the morning of the first call, home rested the day after', () => {
    const ways = [{ fromKey: duluth.key, toKey: thunderBay.key, mode: 'drive' as const, minutes: 225 }];
    const days = [
      day(thunderBay, '2026-12-05T14:00', '2026-12-05T19:00', 'half'),
      ...[6, 7, 8, 9, 10].map((n) =>
        day(thunderBay, `2026-12-${String(n).padStart(2, '0')}T09:00`, `2026-12-${String(n).padStart(2, '0')}T21:00`),
      ),
    ];
    const plan = planTrip({ home: duluth, place: thunderBay, days, ways });
    expect(wall(plan.doorOutAt, duluth.zone)).toBe('2026-12-05T09:15');
    expect(wall(plan.doorInAt, duluth.zone)).toBe('2026-12-11T11:45');
    expect(plan).toMatchObject({ source: 'typed', nights: 6, travelDates: ['2026-12-11'], hoursAway: 146.5 });
  });
  test('a long way before a long day is driven the day before, there by the evening', () => {
    const plan = planTrip({
      home: duluth,
      place: milwaukee,
      days: [day(milwaukee, '2026-12-01T08:00', '2026-12-01T20:00')],
      ways: [{ fromKey: duluth.key, toKey: milwaukee.key, mode: 'drive', minutes: 400 }],
    });
    expect(wall(plan.doorOutAt, duluth.zone)).toBe('2026-11-30T13:20');
    expect(wall(plan.doorInAt, duluth.zone)).toBe('2026-12-02T15:40');
    expect(plan.travelDates).toEqual(['2026-11-30', '2026-12-02']);
    expect(plan.nights).toBe(2);
  });
  test('travel dates that are paid already are not counted again', () => {
    const ways = [{ fromKey: duluth.key, toKey: milwaukee.key, mode: 'drive' as const, minutes: 400 }];
    const days = [
      day(milwaukee, '2026-11-30T10:00', '2026-11-30T17:00', 'travel'),
      day(milwaukee, '2026-12-01T08:00', '2026-12-01T20:00'),
      day(milwaukee, '2026-12-02T09:00', '2026-12-02T16:00', 'travel'),
    ];
    const plan = planTrip({ home: duluth, place: milwaukee, days, ways });
    expect(plan).toMatchObject({ travelDates: [], nights: 2 });
    expect(wall(plan.doorOutAt, duluth.zone)).toBe('2026-11-30T10:00');
    expect(wall(plan.doorInAt, duluth.zone)).toBe('2026-12-02T16:00');
  });

  test('tickets say when one leaves and is back: before the departure, after the arrival, and the way to the station', () => {
    const leg = { id: null, mode: 'flight' as const, berth: false, cost: '', before: 120, after: 60 };
    const at = (wall: string) => instantOf(wall, 'America/Chicago').epochMilliseconds;
    const tickets = [
      { ...leg, from: duluth, to: milwaukee, departAt: at('2026-11-30T16:00'), arriveAt: at('2026-11-30T17:30') },
      { ...leg, from: milwaukee, to: superior, departAt: at('2026-12-02T10:00'), arriveAt: at('2026-12-02T11:30') },
    ];
    const days = [day(milwaukee, '2026-12-01T08:00', '2026-12-01T20:00')];
    const plan = planTrip({ home: duluth, place: milwaukee, days, ways: [], tickets });
    expect(wall(plan.doorOutAt, duluth.zone)).toBe('2026-11-30T14:00');
    expect(wall(plan.doorInAt, duluth.zone)).toBe('2026-12-02T12:38');
    expect(plan).toMatchObject({ nights: 2, travelDates: ['2026-11-30', '2026-12-02'] });
  });
});

import { describe, expect, test } from 'vitest';
import { quotedTrip } from '../../../core/quotes/trip.ts';
import { day, drive, fargo, lineOf, quoteOf } from './facts.ts';

const days = [day('2026-09-08'), day('2026-09-09', '09:00', '22:30'), day('2026-09-10')];
const near = { ...drive, outMinutes: 40, backMinutes: 40, oneWayKm: 48.28032, travelDates: [] };
const facts = { plan: near, mode: 'drive' as const, days, homeZone: 'America/Chicago', placeZone: 'America/Chicago', restMinutes: 480 };

describe('a short way', () => {
  test('is driven home every night: no night away, and hours only from door to door', () => {
    const trip = quotedTrip(facts);
    expect(trip.nights).toBe(0);
    expect(trip.legs).toHaveLength(6);
    expect(trip.hoursAway).toBeCloseTo(10 + 13.5 + 10 + 4, 9);
  });
  test('is charged each time', () => {
    const line = lineOf(quoteOf({ trip: quotedTrip(facts), days, job: { place: fargo } }), 'travel/mileage');
    expect(line).toMatchObject({ quantity: '180', amount: { minor: 13_050 } });
    expect(line?.reason).toContain('home every night, 3 times out and back');
  });
  test('is not where the night would be too short, the way longer, or there is one date only', () => {
    expect(quotedTrip({ ...facts, restMinutes: 9 * 60 }).nights).toBe(drive.nights);
    expect(quotedTrip({ ...facts, plan: { ...near, backMinutes: 61 } }).legs).toHaveLength(2);
    expect(quotedTrip({ ...facts, days: days.slice(0, 1) }).legs).toEqual(drive.legs);
    expect(quotedTrip({ ...facts, mode: 'rail' }).legs).toHaveLength(2);
  });
  test('edit days at home are no way', () =>
    expect(quotedTrip({ ...facts, days: [...days, day('2026-09-11', '09:00', '12:00', 'edit')] }).legs).toHaveLength(6));
});

test('at home there is no way at all', () => expect(quotedTrip({ ...facts, plan: { ...near, away: false } }).legs).toEqual([]));

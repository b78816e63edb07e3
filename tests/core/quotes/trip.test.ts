import { describe, expect, test } from 'vitest';
import { quotedTrip } from '../../../core/quotes/trip.ts';
import type { BookWay } from '../../../core/fit/book.ts';
import { wallAt } from '../../../core/time/read.ts';
import { planTrip } from '../../../core/trips/plan.ts';
import { wayFinder } from '../../../core/trips/ways.ts';
import { at, day, drive, fargo, lineOf, quoteOf } from './facts.ts';

const days = [day('2026-09-08'), day('2026-09-09', '09:00', '22:30'), day('2026-09-10')];
const { mode: _mode, legs: _legs, ...plan } = drive;
const near = {
  ...plan,
  source: 'typed' as const,
  tickets: { out: null, back: null },
  outMinutes: 40,
  backMinutes: 40,
  oneWayKm: 48.28032,
  travelDates: [],
};
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

describe('by tickets', () => {
  const superior = { ...fargo, key: 'own:superior', name: 'Superior', lat: 46.72, lon: -92.1 };
  const home = { ...fargo, key: 'own:home', name: 'Duluth', lat: 46.78, lon: -92.11 };
  const flight = { id: null, mode: 'flight' as const, berth: false, cost: '', before: 120, after: 60 };
  const out = { ...flight, from: superior, to: fargo, departAt: at('2026-09-07T12:00'), arriveAt: at('2026-09-07T13:30') };
  const back = { ...flight, from: fargo, to: home, departAt: at('2026-09-11T09:00'), arriveAt: at('2026-09-11T10:30') };
  const card = { mileage: [{ from: '2026-01-01', rate: '0.725' }], allowanceNight: '60' };
  const tripBy = (tickets: (typeof out)[], ways: BookWay[] = []) => {
    const planned = planTrip({ home, place: fargo, days, ways, tickets });
    return quotedTrip({ ...facts, plan: planned, mode: wayFinder(ways)(home, fargo).mode });
  };
  const wall = (instant: number) => wallAt(instant, 'America/Chicago');

  test('door-out, door-in, nights and dates are theirs; only the way to them is driven', () => {
    const trip = tripBy([out, back]);
    expect([wall(trip.doorOutAt), wall(trip.doorInAt)]).toEqual(['2026-09-07T09:52', '2026-09-11T11:30']);
    expect(trip).toMatchObject({ nights: 4, travelDates: ['2026-09-07', '2026-09-11'] });
    const draft = quoteOf({ trip, days, card, job: { place: fargo } });
    expect(lineOf(draft, 'travel/mileage')).toMatchObject({ quantity: '5', estimated: true });
    expect(lineOf(draft, 'travel/mileage')?.reason).toMatch(/^5 mi from home to the flight, estimated from the map at /);
    expect(lineOf(draft, 'allowances/night')).toMatchObject({ quantity: '4' });
    expect(draft.cautions).toContain('The way is by flight: its fare is not in the quote. Add it as a line.');
  });
  test('one way by ticket: the other is estimated, and charged as driven', () => {
    const trip = tripBy([out]);
    expect(trip.source).toBe('estimated');
    const line = lineOf(quoteOf({ trip, days, card, job: { place: fargo } }), 'travel/mileage');
    expect(line?.reason).toMatch(/^5 mi from home to the flight, estimated from the map; 27\d mi the way back, estimated from the map at /);
    expect(wall(trip.doorInAt) > wall(days[2]?.wrapAt ?? 0)).toBe(true);
  });
  test('with the way to the station known all is ticketed, and nothing of it an estimate', () => {
    const typed: BookWay = { fromKey: home.key, toKey: superior.key, mode: 'drive', minutes: 20, roadKm: 9.656064 };
    const trip = tripBy([out, back], [typed]);
    expect(trip.source).toBe('ticketed');
    const draft = quoteOf({ trip, days, card, job: { place: fargo } });
    expect(lineOf(draft, 'travel/mileage')).toMatchObject({ quantity: '6', estimated: false });
    expect(lineOf(draft, 'days/travel')).toMatchObject({ quantity: '2', estimated: false });
  });
});

test('a leg that was typed says how long, the way that was typed before how far', () => {
  const home = { ...fargo, key: 'own:home', lat: 46.78, lon: -92.11 };
  const leg: BookWay = { fromKey: home.key, toKey: fargo.key, mode: 'drive', minutes: 230 };
  expect(wayFinder([leg, { ...leg, minutes: 245, roadKm: 400 }])(home, fargo)).toMatchObject({
    longMinutes: 230,
    roadKm: 400,
    roadKnown: true,
  });
  expect(wayFinder([leg])(home, fargo)).toMatchObject({ source: 'typed', longMinutes: 230, roadKnown: false });
});

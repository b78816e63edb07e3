import { expect, test } from 'vitest';
import type { LegFields } from '../../../core/contract/trips.ts';
import { placedLeg, ticketsAndWays } from '../../../core/trips/legs.ts';
import { wayFinder } from '../../../core/trips/ways.ts';
import { duluth, fargo } from './places.ts';

const FLIGHT: LegFields = {
  mode: 'flight',
  from: duluth,
  to: fargo,
  depart: '2026-12-16T21:00',
  arrive: '2026-12-16T22:00',
  source: 'typed',
  before: null,
  after: null,
  berth: false,
  cost: '',
  note: '',
};

function minutesOf(fields: LegFields): number {
  const leg = placedLeg(fields);
  if (typeof leg === 'string') throw new Error(leg);
  return wayFinder(ticketsAndWays([leg]).ways)(duluth, fargo).longMinutes;
}

test('a typed flight takes the time before and after it of its mode, or what the leg itself says', () => {
  expect(minutesOf(FLIGHT)).toBe(60 + 120 + 60);
  expect(minutesOf({ ...FLIGHT, before: 30, after: 15 })).toBe(60 + 30 + 15);
  expect(minutesOf({ ...FLIGHT, before: 0, after: 0 })).toBe(60);
});

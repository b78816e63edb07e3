import { expect, test } from 'vitest';
import type { BookHand } from '../../../core/fit/book.ts';
import { handsLane } from '../../../core/road/hands-lane.ts';
import { dayBetween, DAY, HOUR, YEAR_START } from '../fit/generated.ts';
import { duluth } from '../trips/places.ts';

const day = (date: number) => dayBetween(YEAR_START + date * DAY + 9 * HOUR, YEAR_START + date * DAY + 18 * HOUR);
const job = (title: string, dates: readonly number[], firmness: 'ink' | 'pencil' = 'ink') => ({
  id: title,
  title,
  firmness,
  pencilledAt: null,
  expiresAt: null,
  place: duluth,
  days: dates.map(day),
});
const hand = (name: string, jobs: BookHand['jobs']): BookHand => ({
  id: name,
  name,
  home: null,
  rates: [],
  insuredUntil: null,
  backup: false,
  ...(jobs ? { jobs } : {}),
});
const lane = (hands: readonly BookHand[], from = 0, to = 30) =>
  handsLane(hands, YEAR_START + from * DAY, YEAR_START + to * DAY).map(({ name, title, firmness, row, start }) => [
    name,
    title,
    firmness,
    row,
    start.slice(0, 10),
  ]);

test('a run of dates is one bar, a gap makes two, and whoever works at the same time stands below', () => {
  expect(lane([hand('Cy', [job('Gala', [3, 4, 8], 'pencil')]), hand('Bo', [job('Clinic', [4])]), hand('Di', undefined)])).toEqual([
    ['Cy', 'Gala', 'pencil', 0, '2026-01-04'],
    ['Bo', 'Clinic', 'ink', 1, '2026-01-05'],
    ['Cy', 'Gala', 'pencil', 0, '2026-01-09'],
  ]);
});

test('only what lies in the span, which is half-open', () => {
  const hands = [hand('Bo', [job('Clinic', [4])])];
  expect(lane(hands, 5, 9)).toEqual([]);
  expect(lane(hands, 0, 4)).toEqual([]);
  expect(lane(hands, 4, 5)).toHaveLength(1);
});

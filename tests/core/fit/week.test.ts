import { expect, test } from 'vitest';
import { weekFindings } from '../../../core/fit/week.ts';
import type { Work } from '../../../core/fit/work.ts';
import { duluth } from '../trips/places.ts';

const HOUR = 3_600_000;
const work = (from: number, to: number, own = false): Work => ({
  startAt: from * HOUR,
  endAt: to * HOUR,
  place: duluth,
  to: duluth,
  own,
  date: null,
  counts: true,
  stands: true,
  estimated: false,
});
const told = (after: Work[], before: Work[]) => weekFindings(after, before, duluth).map(({ numbers }) => numbers['inAWeek']);

const shoot = work(0, 40);
const candidate = work(145, 167, true);

test('a week that the candidate fills is told, 62 h of it', () => {
  expect(told([shoot, candidate], [shoot])).toEqual([62 * 60]);
});

test('it is not where the worst week that meets it gets better: a way of 24 h falls away, 64 h become 62', () => {
  expect(told([shoot, candidate], [work(-30, -6), shoot])).toEqual([]);
});

test('it is where the worst stays as bad, or was in another week', () => {
  expect(told([work(-30, -6), shoot, candidate], [work(-30, -6), shoot])).toEqual([62 * 60]);
  expect(told([shoot, candidate], [work(-400, -330), shoot])).toEqual([62 * 60]);
});

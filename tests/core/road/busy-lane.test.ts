import { expect, test } from 'vitest';
import type { ImportedTime } from '../../../core/fit/book.ts';
import { busyLane } from '../../../core/road/busy-lane.ts';

const at = (instant: string): number => Temporal.Instant.from(`2026-12-${instant}:00Z`).epochMilliseconds;
const time = (title: string, from: string, to: string, hardness: ImportedTime['hardness'] = 'settle'): ImportedTime => ({
  calendarId: 'c',
  calendar: 'Family',
  title,
  startAt: at(from),
  endAt: at(to),
  allDay: false,
  hardness,
});
const lane = (...times: ImportedTime[]) =>
  busyLane(times, at('05T00:00'), at('07T00:00')).map(({ start, end, hardness, parts }) => [
    start.slice(8, 16),
    end.slice(8, 16),
    hardness,
    parts.map(({ title }) => title).join(),
  ]);

test('what overlaps is one bar, as hard as the hardest in it; what touches is two', () => {
  expect(
    lane(
      time('Choir', '05T18:00', '05T20:00', 'know'),
      time('Dinner', '05T19:00', '05T21:00', 'never'),
      time('Late', '05T19:30', '05T20:30'),
      time('After', '05T21:00', '05T22:00'),
    ),
  ).toEqual([
    ['05T18:00', '05T21:00', 'never', 'Choir,Dinner,Late'],
    ['05T21:00', '05T22:00', 'settle', 'After'],
  ]);
});

test('only what lies between the two instants, whole', () => {
  expect(lane(time('Before', '04T10:00', '05T00:00'), time('Into', '04T22:00', '05T01:00'), time('After', '07T00:00', '07T01:00'))).toEqual(
    [['04T22:00', '05T01:00', 'settle', 'Into']],
  );
});

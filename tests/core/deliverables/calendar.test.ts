import { describe, expect, test } from 'vitest';
import { openHalfHours, type EditCalendar } from '../../../core/deliverables/calendar.ts';
import type { Slot } from '../../../core/deliverables/schedule.ts';
import { takersInWords, takersOf } from '../../../core/deliverables/takers.ts';
import { wallAt } from '../../../core/time/read.ts';

const zone = 'America/Chicago';
const calendar = (given: Partial<EditCalendar> = {}): EditCalendar => ({
  zone,
  from: '2026-12-07',
  days: 7,
  ceilingHours: 6,
  dayStart: '09:00',
  closed: new Set(),
  closedWeekdays: [6, 7],
  busy: [],
  ...given,
});
const walls = (slots: readonly Slot[]) => slots.map(({ start }) => wallAt(start, zone));

describe('open half hours', () => {
  test('what is edited in a busy stretch counts in its day, wherever in it that is', () => {
    const evening = { start: Date.parse('2026-12-09T01:00:00Z'), end: Date.parse('2026-12-09T03:00:00Z') };
    const on = (busy: (typeof evening & { editing?: boolean })[]) => openHalfHours(calendar({ from: '2026-12-08', days: 1, busy })).length;
    expect([on([]), on([evening]), on([{ ...evening, editing: true }])]).toEqual([12, 12, 8]);
  });
  test('a week of five days of six hours', () => {
    const slots = openHalfHours(calendar());
    expect(slots).toHaveLength(5 * 12);
    expect(walls(slots).at(0)).toBe('2026-12-07T09:00');
    expect(walls(slots).at(11)).toBe('2026-12-07T14:30');
    expect(walls(slots).at(-1)).toBe('2026-12-11T14:30');
  });
  test('dates that are out have none; a busy stretch pushes the hours of its day back', () => {
    const lunch = { start: Date.parse('2026-12-08T17:10:00Z'), end: Date.parse('2026-12-08T18:00:00Z') };
    const slots = openHalfHours(calendar({ days: 2, closed: new Set(['2026-12-07']), busy: [lunch] }));
    expect(slots).toHaveLength(12);
    expect(walls(slots)).not.toContain('2026-12-08T11:00');
    expect(walls(slots)).not.toContain('2026-12-08T11:30');
    expect(walls(slots).at(-1)).toBe('2026-12-08T15:30');
  });
  test.each([
    ['2026-03-08', '00:30', 45],
    ['2026-11-01', '00:30', 49],
    ['2026-12-08', '00:30', 47],
  ])('%s from %s: the clock of the place says how many half hours there are', (from, dayStart, count) => {
    expect(openHalfHours(calendar({ from, days: 1, ceilingHours: 30, dayStart, closedWeekdays: [] }))).toHaveLength(count);
  });
  test('no capacity: no half hour', () => {
    expect(openHalfHours(calendar({ ceilingHours: 0 }))).toEqual([]);
    expect(openHalfHours(calendar({ closedWeekdays: [1, 2, 3, 4, 5, 6, 7] }))).toEqual([]);
  });
});

const HALF = 30 * 60_000;

test('what takes the time: the hours of others by job, most first, then the days; much is summed up', () => {
  const block = (title: string, start: number, end: number) => ({
    editId: title,
    jobId: title,
    title,
    start: start * HALF,
    end: end * HALF,
  });
  const worked = [block('a', 0, 2), block('b', 2, 8), block('c', 8, 10), block('me', 10, 12), block('a', 11, 12), block('d', 12, 14)];
  const dates = ['2026-12-08', '2026-12-09'].map((date) => ({ date, jobId: 'e', title: 'e', how: 'shoot' as const }));
  const takers = takersOf('me', worked, [...dates, ...dates], HALF, 13 * HALF);
  expect(takers).toEqual([
    { jobId: 'b', title: 'b', hours: 3, days: 0 },
    { jobId: 'a', title: 'a', hours: 1, days: 0 },
    { jobId: 'c', title: 'c', hours: 1, days: 0 },
    { jobId: 'd', title: 'd', hours: 0.5, days: 0 },
    { jobId: 'e', title: 'e', hours: 0, days: 2 },
  ]);
  expect(takersInWords(takers)).toBe('3 h of editing for b, 1 h for a, 1 h for c, 0.5 h for others and 2 days away for e');
  expect(takersInWords([])).toBe('');
});

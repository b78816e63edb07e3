import { describe, expect, test } from 'vitest';
import { openHalfHours, type EditCalendar } from '../../../core/deliverables/calendar.ts';
import type { Slot } from '../../../core/deliverables/schedule.ts';
import { takersOf } from '../../../core/deliverables/takers.ts';
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

test('what takes the time, most hours first', () => {
  const blocks = [
    { stageId: 'a', start: 0, end: 2 * HALF },
    { stageId: 'b', start: 2 * HALF, end: 8 * HALF },
    { stageId: 'c', start: 8 * HALF, end: 10 * HALF },
    { stageId: 'me', start: 10 * HALF, end: 12 * HALF },
  ];
  expect(takersOf('me', blocks, HALF, 12 * HALF)).toEqual([
    { stageId: 'b', hours: 3 },
    { stageId: 'c', hours: 1 },
    { stageId: 'a', hours: 0.5 },
  ]);
});

import { describe, expect, test } from 'vitest';
import { agreedDays } from '../../../core/fit/agreed-days.ts';
import { withFewer, withInstead } from '../../../core/fit/kit-list.ts';
import { subHireCost } from '../../../core/fit/sub-hire.ts';
import { askHandText } from '../../../core/people/ask-hand.ts';
import { fargo } from '../trips/places.ts';

const day = (date: string, kind: 'shoot' | 'edit' | 'travel' = 'shoot') => ({ date, kind, call: `${date}T09:00`, wrap: `${date}T18:00` });
const days = [day('2026-06-08'), day('2026-06-09'), day('2026-06-11', 'edit')];

describe('what was tried on, kept', () => {
  test('a later call and an earlier wrap are those of the days on site', () => {
    expect(agreedDays(days, 'UTC', { firstCallLaterMinutes: 90, lastWrapEarlierMinutes: 60 })).toEqual([
      { ...days[0], call: '2026-06-08T10:30' },
      { ...days[1], wrap: '2026-06-09T17:00' },
      days[2],
    ]);
  });

  test('days are moved, called off or shifted; what is not about days gives nothing', () => {
    const moved = agreedDays(days, 'UTC', { daysMoved: [{ jobId: null, date: '2026-06-11', kind: 'edit', to: '2026-06-12' }] });
    expect(moved?.[2]).toEqual(day('2026-06-12', 'edit'));
    expect(agreedDays(days, 'UTC', { daysMoved: [{ jobId: null, date: '2026-06-09', kind: 'shoot', to: null }] })).toHaveLength(2);
    expect(agreedDays(days, 'UTC', { shiftDays: -1 })?.map(({ date }) => date)).toEqual(['2026-06-07', '2026-06-08', '2026-06-10']);
    expect(
      agreedDays(days, 'UTC', { restMinutes: 300, daysMoved: [{ jobId: 'x', date: '2026-06-09', kind: 'shoot', to: null }] }),
    ).toBeNull();
  });

  test.each([
    ['USD 35 a day', 2, '140'],
    ['35.50 per day', 1, '71'],
    ['90 the job', 2, '180'],
    ['EUR 1,250.50/day', 1, '2501'],
    ['ask the shop', 1, null],
    ['', 1, null],
  ])('a sub-hire at "%s" for %d costs %s over two days on site', (price, count, cost) => {
    expect(subHireCost(price, count, days)).toBe(cost);
  });

  test('kit met by another unit, and so many fewer of mine', () => {
    const needs = [
      { item: 'a', count: 2 },
      { item: 'b', count: 1 },
    ];
    expect(withInstead(needs, [{ item: 'a', other: 'b', count: 1 }])).toEqual([
      { item: 'a', count: 1 },
      { item: 'b', count: 2 },
    ]);
    expect(withFewer(needs, [{ item: 'b', count: 1 }])).toEqual([{ item: 'a', count: 2 }]);
  });

  test('a hand is asked for each day with its hours and its pay by the rate of the date', () => {
    const hand = {
      name: 'Bo Lind',
      rates: [{ role: 'audio' as const, dayRate: '1400', currency: 'USD', from: '2026-06-09' }],
    };
    const night = { date: '2026-06-09', kind: 'shoot' as const, call: '2026-06-09T18:00', wrap: '2026-06-10T02:00' };
    const text = askHandText({ hand, role: 'audio', place: fargo, days: [day('2026-06-08'), night], from: 'Ada Byrd' });
    expect(text).toContain('could you cover the audio in Fargo for me?');
    expect(text).toContain('- Mon 8 June 2026, 09:00 to 18:00, please name your price\n');
    expect(text).toContain('- Tue 9 June 2026, 18:00 to 02:00 on the next date, USD 1,400.00 for the day\n');
    expect(text).toContain('by the clock of Chicago');
  });
});

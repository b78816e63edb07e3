/** The drawing's own arithmetic, without a browser. */
import { expect, test } from 'playwright/test';
import { spread } from '../../renderer/parts/stringline/layout.ts';
import { ticks, weekends } from '../../renderer/parts/stringline/ticks.ts';
import { pieces } from '../../renderer/places/jobs/pieces.ts';
import { pressed } from '../../renderer/actions/action.ts';

const at = (wall: string): number => Temporal.PlainDateTime.from(wall).toZonedDateTime('America/Chicago').epochMilliseconds;

test('places stand in proportion to their distance, and apart where they crowd', () => {
  expect(spread([0, 320, 640], 200, 20)).toEqual([0, 100, 200]);
  expect(spread([0, 600, 620, 640], 200, 40)).toEqual([0, 120, 160, 200]);
  expect(spread([0, 1, 2, 3], 90, 30)).toEqual([0, 30, 60, 90]);
  expect(spread([0], 0, 20)).toEqual([0]);
});

test('midnights of home, also where a day has 23 hours', () => {
  const days = ticks(at('2026-03-07T00:00'), at('2026-03-10T00:00'), 'America/Chicago');
  expect(days.map((tick) => tick.bold)).toEqual(['7', '8', '9']);
  const lengths = days.slice(1).map((tick, index) => (tick.at - (days[index]?.at ?? 0)) / 3_600_000);
  expect(lengths).toEqual([24, 23]);
  expect(ticks(at('2026-01-01T00:00'), at('2027-01-01T00:00'), 'America/Chicago').map((tick) => tick.bold)).toHaveLength(12);
  expect(weekends(at('2026-12-01T00:00'), at('2026-12-15T00:00'), 'America/Chicago')).toHaveLength(4);
});

test('the message is cut at what was understood and loses not a letter', () => {
  const text = 'Sunday to Thursday in Thunder Bay';
  const cut = pieces(text, [
    { field: 'start', start: 0, end: 6, text: 'Sunday' },
    { field: 'end', start: 0, end: 18, text: 'Sunday to Thursday' },
    { field: 'place', start: 22, end: 33, text: 'Thunder Bay' },
  ]);
  expect(cut.map((piece) => piece.text).join('')).toBe(text);
  expect(cut.filter((piece) => piece.meaning !== null).map((piece) => piece.meaning)).toEqual(['last day, first day', 'place']);
});

test('shortcuts ask for exactly their keys', () => {
  const key = (name: string, part: object = {}) => ({ key: name, ctrlKey: false, metaKey: false, altKey: false, ...part });
  expect(pressed('/', key('/'))).toBe(true);
  expect(pressed('+', key('+'))).toBe(true);
  expect(pressed('/', key('/', { ctrlKey: true }))).toBe(false);
  expect(pressed('Ctrl+Enter', key('Enter', { metaKey: true }))).toBe(true);
  expect(pressed('Alt+1', key('1', { altKey: true }))).toBe(true);
  expect(pressed('Alt+1', key('1'))).toBe(false);
});

/**
 * Terms as independent crews and small firms publish them: common practice, no single source.
 * @source Common practice: published terms pages of crews in the United States and the United Kingdom, seen 2026
 */
import { describe, expect, test } from 'vitest';
import { forcedCall } from '../../../core/days/turnaround.ts';
import { cancelPercent } from '../../../core/quotes/cancellation.ts';
import { defaultCard } from '../../../core/rates/defaults.ts';
import { payOfHours } from './hours.ts';

const HOUR = 3_600_000;

describe('a day of 800 over 10 h, 13.5 h worked', () => {
  test('1.5 times up to hour 14: 1,220.00', () => {
    expect(
      payOfHours(13.5, {
        dayRate: '800',
        overtime: [
          { fromHours: '0', toHours: '4', times: '1.5' },
          { fromHours: '4', toHours: null, times: '2' },
        ],
      }),
    ).toBe(122_000);
  });
  test('2 times from hour 12: 1,280.00', () => {
    expect(
      payOfHours(13.5, {
        dayRate: '800',
        overtime: [
          { fromHours: '0', toHours: '2', times: '1.5' },
          { fromHours: '2', toHours: null, times: '2' },
        ],
      }),
    ).toBe(128_000);
  });
});

test.each([
  ['11', 3],
  ['10', 2],
])('wrap 23:00, call 07:00 under a %s h rule is short by %i h', (turnaroundHours, short) => {
  const forced = forcedCall(0, 8 * HOUR, { ...defaultCard('shoot', 'GBP', '2026-01-01'), dayRate: '800', turnaroundHours });
  expect(forced?.missingMinutes).toBe(short * 60);
  expect(forced?.amount.minor).toBe(short * 8_000);
});

test('a half day is five hours; over five is a day', () => {
  const card = defaultCard('shoot', 'USD', '2026-01-01');
  expect([card.halfUpToHours, card.dayHours]).toEqual(['5', '10']);
});

describe('cancellation scales', () => {
  const steps = (list: [number, string][]) => list.map(([underHours, percent]) => ({ underHours, percent }));
  const twoDays = steps([
    [48, '50'],
    [24, '100'],
  ]);
  const week = steps([
    [7 * 24, '50'],
    [48, '100'],
  ]);
  const days = steps([
    [7 * 24, '50'],
    [4 * 24, '75'],
    [2 * 24, '100'],
  ]);
  test.each([
    [twoDays, 47, '50'],
    [twoDays, 23, '100'],
    [twoDays, 49, '0'],
    [week, 100, '50'],
    [week, 47, '100'],
    [days, 5 * 24, '50'],
    [days, 3 * 24, '75'],
    [days, 30, '100'],
  ])('%j at %i h: %s %%', (scale, hours, percent) => expect(cancelPercent(hours * HOUR, scale)).toBe(percent));
});

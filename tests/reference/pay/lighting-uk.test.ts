/**
 * Overtime in steps of 30 minutes.
 * @source BECTU, Lighting Technicians branch, commercials rates, overtime, 2024
 */
import { expect, test } from 'vitest';
import { payOfHours } from './hours.ts';

const terms = { dayRate: '400', overtime: [{ fromHours: '0', toHours: null, times: '1.5' }] };
test.each([
  [10, 40_000],
  [10.1, 43_000],
  [10.5, 43_000],
  [10.75, 46_000],
  [11, 46_000],
])('%d h cost %i pence', (hours, minor) => expect(payOfHours(hours, terms)).toBe(minor));

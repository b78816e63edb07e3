/**
 * Published worked figures: 10 h base, hours 11 and 12 at 1.5, 13 and 14 at 2, 15 and 16 at 3.
 * @source Canadian commercials association (ACCP), crew terms, overtime table, rates from 1 July 2022
 */
import { describe, expect, test } from 'vitest';
import { exact, decimalText } from '../../../core/money/exact.ts';
import { payOfHours } from './hours.ts';

const tiers = [
  { fromHours: '0', toHours: '2', times: '1.5' },
  { fromHours: '2', toHours: '4', times: '2' },
  { fromHours: '4', toHours: '6', times: '3' },
];

describe.each([
  ['64.29', [64_290, 73_934, 83_577, 96_435, 109_293, 128_580, 147_867]],
  ['47.41', [47_410, 54_522, 61_633, 71_115, 80_597, 94_820, 109_043]],
] as const)('at %s an hour', (hourly, printed) => {
  const dayRate = decimalText(exact(hourly).mul(10n));
  test.each(printed.map((minor, order) => [10 + order, minor] as const))('%i h cost %i cents', (hours, minor) => {
    expect(payOfHours(hours, { dayRate, overtime: tiers })).toBe(minor);
  });
});

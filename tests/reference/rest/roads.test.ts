/**
 * The band of an estimated drive encloses what has been measured of how much longer roads are than the straight line.
 * @source Wang, Bette, Schreckenberg, Guhr, arXiv 2406.06490, 2024: about 1.3 on motorway networks; O'Sullivan and Morrall 1996: 1.21 to 1.23
 */
import { expect, test } from 'vitest';
import { LONG_ROAD, SHORT_ROAD } from '../../../core/trips/estimate.ts';

test.each([1.2, 1.21, 1.23, 1.3])('a ratio of %d lies in it', (ratio) => {
  expect(ratio).toBeGreaterThanOrEqual(SHORT_ROAD);
  expect(ratio).toBeLessThanOrEqual(LONG_ROAD);
});

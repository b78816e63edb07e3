/**
 * The breaks in an estimated drive are at least those that drivers are told to take: 15 min in every two hours.
 * @source United Kingdom Department for Transport, The Highway Code, rule 91, fitness to drive
 */
import { expect, test } from 'vitest';
import { driveBand } from '../../../core/trips/estimate.ts';

test.each([150, 300, 500, 900, 1500])('%i km', (km) => {
  const driving = Math.round(km * 1.35 * 0.8 * 1e6) / 1e6;
  const breaks = driveBand(km).longMinutes - Math.ceil(driving);
  // A break is due when another two hours begin, not at the end of the last.
  expect(breaks).toBe(15 * (Math.ceil(driving / 120) - 1));
});

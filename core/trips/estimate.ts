/**
 * How long a drive may take when nobody has typed it: a band from the geodesic distance.
 * The factors are common practice: roads are 1.15 to 1.35 times as long as the straight line, driven at 95 to 75 km/h.
 */

export const SHORT_ROAD = 1.15;
export const LONG_ROAD = 1.35;
const SHORT_KMH = 95;
const LONG_KMH = 75;
const BREAK_MINUTES = 15;
const BREAK_EVERY = 120;

export type DriveBand = { shortMinutes: number; longMinutes: number };

/**
 * The band of an estimated drive, in whole minutes, rounded up.
 * The short end is bare driving; the long end holds 15 min of break for every started 2 h after the first two.
 * @param km geodesic distance, not road
 */
export function driveBand(km: number): DriveBand {
  const long = (km * LONG_ROAD * 60) / LONG_KMH;
  const breaks = long > BREAK_EVERY ? Math.ceil(round(long - BREAK_EVERY) / BREAK_EVERY) * BREAK_MINUTES : 0;
  return { shortMinutes: Math.ceil(round((km * SHORT_ROAD * 60) / SHORT_KMH)), longMinutes: Math.ceil(round(long)) + breaks };
}

/** Takes off the dust of binary fractions, so that exactly 120 minutes do not become 121. */
function round(minutes: number): number {
  return Math.round(minutes * 1e6) / 1e6;
}

/**
 * A flight that nobody looked up is never a way; it may be tried on: "if a flight lands by 06:30".
 */
import type { Lift } from '../contract/fit.ts';
import type { Place } from '../contract/parts.ts';
import { distanceKm } from '../places/distance.ts';
import { timeAround } from '../trips/ways.ts';
import { clockAt } from '../words/moments.ts';
import type { LaneEntry } from './lane.ts';
import { legAsIf } from './lifts.ts';

const MINUTE = 60_000;
/** Nobody flies a shorter way than this, km. */
const FLIGHT_FROM_KM = 250;
/** Common practice, for a flight of unknown times: minutes from gate to gate beside the cruise, and km/h of that. */
const TAXI_AND_CLIMB = 40;
const CRUISE = 750;

/**
 * One flight that would land just in time, where there is time for it.
 * @param restLeft minutes of rest that the way now planned leaves; a flight that leaves no more is no help
 */
export function flightLifts(before: LaneEntry, after: LaneEntry, restLeft: number, home: Place): Lift[] {
  const km = distanceKm(before.to, after.from);
  if (km < FLIGHT_FROM_KM) return [];
  const around = timeAround('flight', before.to, after.from);
  const landsBy = after.startAt - around.after * MINUTE;
  const leavesAt = landsBy - Math.ceil(TAXI_AND_CLIMB + (km / CRUISE) * 60) * MINUTE;
  const rested = (leavesAt - before.endAt) / MINUTE - around.before;
  if (rested < 0 || rested <= restLeft) return [];
  return legAsIf('flight', before.to, after.from, leavesAt, landsBy).map((leg) => ({
    kind: 'flight',
    label: `If a flight lands in ${after.from.name} by ${clockAt(landsBy, after.from, home)}`,
    tryOn: { legs: [leg] },
  }));
}

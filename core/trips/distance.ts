/**
 * Distances in miles and kilometres, exactly.
 */
import { exact, type Exact } from '../money/exact.ts';

export type Unit = 'mi' | 'km';

/** Kilometres in an international mile: exactly 1.609344. */
const KM_IN_MILE = '1.609344';

/** A distance in another unit; nothing is rounded. */
export function inUnit(distance: Exact, from: Unit, to: Unit): Exact {
  if (from === to) return distance;
  return from === 'km' ? distance.div(exact(KM_IN_MILE)) : distance.mul(exact(KM_IN_MILE));
}

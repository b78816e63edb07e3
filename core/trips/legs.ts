/**
 * Legs as they come in, placed on the clocks of their two ends.
 */
import type { LegFields } from '../contract/trips.ts';
import type { BookLeg, BookWay } from '../fit/book.ts';
import { instantOf, WallTimeError } from '../time/read.ts';
import { timeAround } from './ways.ts';

const MINUTE = 60_000;

/** `distance` as it was driven, where that was typed. */
export type PlacedLeg = BookLeg & { source: LegFields['source']; distance?: string };

/**
 * A leg with its instants.
 * @returns a sentence where it cannot be: a wall time that the clock skips or shows twice, an arrival that is not after its departure
 */
export function placedLeg(fields: LegFields, id: string | null = null): PlacedLeg | string {
  const { mode, from, to } = fields;
  try {
    const departAt = instantOf(fields.depart, from.zone).epochMilliseconds;
    const arriveAt = instantOf(fields.arrive, to.zone).epochMilliseconds;
    if (arriveAt <= departAt) return `The ${mode} from ${from.name} to ${to.name} arrives before it leaves; mind the two clocks.`;
    return legAt(fields, id, { departAt, arriveAt });
  } catch (error) {
    if (error instanceof WallTimeError) return `The ${mode} from ${from.name} to ${to.name}: ${error.message}`;
    throw error;
  }
}

/** A leg whose instants are known, as those of a stored ticket are. Epoch ms. */
export function legAt(
  { mode, from, to, source, berth, cost, before, after, distance }: LegFields,
  id: string | null,
  at: { departAt: number; arriveAt: number },
): PlacedLeg {
  const around = timeAround(mode, from, to);
  const driven = distance ? { distance } : {};
  return { id, mode, from, to, ...at, before: before ?? around.before, after: after ?? around.after, berth, cost, source, ...driven };
}

/** Tickets stand in a job; typed legs say how long their way takes, whenever it is made. */
export function ticketsAndWays(legs: readonly PlacedLeg[]): { tickets: BookLeg[]; ways: BookWay[] } {
  const tickets = legs.filter((leg) => leg.source === 'ticketed');
  const typed = legs.filter((leg) => leg.source === 'typed');
  return {
    tickets: tickets.map(({ source: _source, distance: _distance, ...leg }) => leg),
    ways: typed.map(({ from, to, mode, departAt, arriveAt, before, after }) => ({
      fromKey: from.key,
      toKey: to.key,
      mode,
      minutes: Math.ceil((arriveAt - departAt) / MINUTE),
      before,
      after,
    })),
  };
}

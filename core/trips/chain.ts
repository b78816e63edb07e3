/**
 * A trip is a chain of legs and stays. Legs that jump or run backwards in time are told by their names.
 */
import type { Place } from '../contract/parts.ts';
import type { Mode } from '../contract/trips.ts';
import { momentAt } from '../words/moments.ts';

export type ChainLeg = { mode: Mode; from: Place; to: Place; departAt: number; arriveAt: number };
type Spell = { startAt: number; endAt: number };
/** Two legs that do not hang together, in the order of their departures, and why. */
type ChainBreak<L> = { first: L; second: L; sentence: string };

/**
 * Whatever does not hang together, in order of departure. Between two legs with a stay between them one may move on one's own;
 * without one, the second must leave from where the first arrives.
 */
export function chainBreaks<L extends ChainLeg>(legs: readonly L[], stays: readonly Spell[]): ChainBreak<L>[] {
  const sorted = [...legs].sort((a, b) => a.departAt - b.departAt || a.arriveAt - b.arriveAt);
  return sorted.flatMap((first, index) => {
    const second = sorted[index + 1];
    const sentence = second && breakBetween(first, second, stays);
    return sentence ? [{ first, second, sentence }] : [];
  });
}

/** The sentences alone. */
export const chainTroubles = (legs: readonly ChainLeg[], stays: readonly Spell[]): string[] =>
  chainBreaks(legs, stays).map(({ sentence }) => sentence);

function breakBetween(leg: ChainLeg, next: ChainLeg, stays: readonly Spell[]): string | null {
  if (next.departAt < leg.arriveAt)
    return `The ${called(next)} leaves on ${momentAt(next.departAt, next.from, next.from)}, before the ${called(leg)} arrives on ${momentAt(leg.arriveAt, leg.to, leg.to)}.`;
  const between = stays.some((stay) => stay.startAt < next.departAt && stay.endAt > leg.arriveAt);
  if (next.from.key === leg.to.key || between) return null;
  return `The ${called(leg)} ends in ${leg.to.name}, but the ${called(next)} begins in ${next.from.name}. Add the leg between them.`;
}

/** "flight Duluth to Denver". */
function called({ mode, from, to }: ChainLeg): string {
  return `${mode} ${from.name} to ${to.name}`;
}

/**
 * A pasted confirmation of an airline, a railway or a ferry, read into legs. What stands in the words is taken, with where it stands; what
 * does not, or can be read in two ways, is asked: nothing is guessed.
 */
import type { Money, Place } from '../../contract/parts.ts';
import type { ReadLeg, TicketSpan } from '../../contract/trips.ts';
import type { Gazetteer } from '../../places/gazetteer.ts';
import { legOf } from './leg.ts';
import { marked } from './marks.ts';
import { totalIn } from './numbers.ts';
import { placeFinder } from './places.ts';
import { runsOf } from './runs.ts';
import { unitsOf } from './units.ts';

type ReadTicket = {
  /** In the order of the text; the same leg twice is one. */
  legs: ReadLeg[];
  /** What was paid in all, where it stands with its currency. */
  total: Money | null;
  spans: TicketSpan[];
  /** The text goes on behind what was read. */
  cut: boolean;
};

/**
 * Read a confirmation.
 * @param today YYYY-MM-DD: dates without a year are the next of their kind from here on
 * @param known places of the job: a name that is theirs means them
 */
export function readConfirmation(
  pasted: string,
  { gazetteer, known, today }: { gazetteer: Gazetteer; known: readonly Place[]; today: string },
): ReadTicket {
  const { units, from, cut } = unitsOf(pasted);
  const all = marked(units, placeFinder(gazetteer, known), today);
  const halves = all.some(({ times }) => times.some(({ open, full }) => !open && !full));
  const to24 = !halves && all.some(({ times }) => times.some(({ full }) => full));
  const read = runsOf(all).map((run) => legOf(all, run, { to24, halves }));
  const legs: ReadLeg[] = [];
  const spans: TicketSpan[] = [];
  const inPasted = ({ start, end, meaning }: TicketSpan): TicketSpan => ({ start: from(start), end: from(end - 1) + 1, meaning });
  for (const leg of read) {
    const { spans: own, ...rest } = leg;
    spans.push(...own.map(inPasted));
    if (!legs.some((other) => isSame(other, leg))) legs.push({ ...rest, spans: own.map(inPasted) });
  }
  let total: Money | null = null;
  for (const unit of units) {
    const found = totalIn(unit.text);
    if (!found) continue;
    total = found.money;
    spans.push(inPasted({ start: unit.start + found.start, end: unit.start + found.end, meaning: 'what was paid' }));
  }
  return { legs, total, spans: spans.toSorted((a, b) => a.start - b.start), cut };
}

/** An itinerary is often printed twice. */
function isSame(one: ReadLeg, other: ReadLeg): boolean {
  const ends = ({ from, to, depart, arrive }: ReadLeg): string => [from?.key, to?.key, depart, arrive].join(' ');
  return one.asks.length === 0 && ends(one) === ends(other);
}

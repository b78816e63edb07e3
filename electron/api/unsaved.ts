/**
 * Jobs that are not stored, as they come in with a question: a candidate, and jobs as if they were on the books.
 */
import type { Candidate } from '../../core/contract/fit.ts';
import type { LegFields } from '../../core/contract/trips.ts';
import type { TryOn } from '../../core/contract/try-on.ts';
import type { Book, BookJob, BookWay } from '../../core/fit/book.ts';
import { needsById } from '../../core/fit/kit-list.ts';
import { chainTroubles } from '../../core/trips/chain.ts';
import { placedLeg, ticketsAndWays, type PlacedLeg } from '../../core/trips/legs.ts';
import { staysOf } from '../../core/trips/stays.ts';
import { badFacts, placedDays } from './job-facts.ts';

type Asked = Pick<Candidate, 'title' | 'place' | 'days' | 'legs' | 'kit'> & Partial<Pick<Candidate, 'role'>>;
type Placed = { job: BookJob; ways: BookWay[] };

/**
 * The candidate, with the ways that its legs typed.
 * @throws BAD_INPUT for days or legs that cannot be, such as a call at a wall time that the clock skips
 */
export function unsavedCandidate(candidate: Candidate, items: Book['kit']): Placed {
  return placed(candidate, { id: null, firmness: 'candidate', pencilledAt: null, expiresAt: null }, items, 'candidate');
}

/** Jobs as if they were on the books; pencils among them are in the order given, before every other. */
export function booksAsIf(tryOn: TryOn | undefined, items: Book['kit']): Placed[] {
  return (tryOn?.withJobs ?? []).map(({ firmness, ...asked }, index) => {
    const pencil = firmness === 'pencil';
    const standing = { id: null, firmness, pencilledAt: pencil ? index : null, expiresAt: pencil ? Infinity : null };
    return placed(asked, standing, items, `tryOn.withJobs.${index}`);
  });
}

function placed(
  { title, place, days, legs, kit, role }: Asked,
  standing: Pick<BookJob, 'id' | 'firmness' | 'pencilledAt' | 'expiresAt'>,
  items: Book['kit'],
  field: string,
): Placed {
  const dated = [...placedDays(days, place, place.zone).days];
  const chain = placedLegs(legs, `${field}.legs`);
  const broken = chainTroubles(chain, staysOf(dated));
  if (broken.length > 0) throw badFacts(broken.map((sentence) => ({ field: `${field}.legs`, sentence })));
  const { tickets, ways } = ticketsAndWays(chain);
  return {
    job: { ...standing, title, place, days: dated, legs: tickets, kit: needsById(kit, items ?? []), ...(role ? { role } : {}) },
    ways,
  };
}

/** @throws BAD_INPUT naming each leg that cannot be */
export function placedLegs(legs: readonly LegFields[], field: string): PlacedLeg[] {
  return legs.map((fields, index) => {
    const leg = placedLeg(fields);
    if (typeof leg === 'string') throw badFacts([{ field: `${field}.${index}`, sentence: leg }]);
    return leg;
  });
}

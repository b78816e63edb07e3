/**
 * Tickets of the candidate that do not hang together: they must be settled before the answer is worth anything.
 */
import type { Finding } from '../contract/fit.ts';
import { chainTroubles } from '../trips/chain.ts';
import { staysOf } from '../trips/stays.ts';
import type { BookJob } from './book.ts';
import { concerning } from './findings.ts';

export function chainFindings(candidate: BookJob): Finding[] {
  return chainTroubles(candidate.legs ?? [], staysOf(candidate.days)).map((sentence) => ({
    kind: 'legs',
    hardness: 'settle',
    concerns: concerning(candidate),
    numbers: {},
    sentence,
    lifts: [{ kind: 'legs', label: 'Put the legs right' }],
  }));
}

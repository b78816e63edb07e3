/**
 * Tickets that are tried on as changed or given up: what that costs is said, as long as they are.
 */
import type { Finding } from '../contract/fit.ts';
import type { Place } from '../contract/parts.ts';
import { momentAt } from '../words/moments.ts';
import type { BookJob, BookLeg } from './book.ts';
import { concerning } from './findings.ts';

export function givenUpFindings(tickets: readonly { job: BookJob; leg: BookLeg }[], home: Place): Finding[] {
  return tickets.map(({ job, leg: { mode, from, to, departAt, cost } }) => ({
    kind: 'ticket given up',
    hardness: 'know',
    concerns: concerning(job),
    numbers: cost === '' ? {} : { cost },
    sentence: `As if the ${mode} from ${from.name} to ${to.name} for ${job.title} on ${momentAt(departAt, from, home)} were changed or given up. ${cost === '' ? 'What that costs is not known.' : `That costs ${cost}.`}`,
    lifts: [],
  }));
}

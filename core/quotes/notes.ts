/**
 * Cautions that a client reads: short, deferring to those who decide, printed only where the matter arises.
 * What concerns me alone (rest, driving, floor) never stands on a client's paper.
 */
import type { Job } from '../contract/jobs.ts';
import type { QuoteDraft } from '../contract/quotes.ts';
import type { SetupFields } from '../contract/setup.ts';

/** Roles that run from the mains of the venue for long. */
const ON_MAINS = new Set(['vision mixing', 'livestream']);
/** Roles that record or send out what is seen and heard. */
const RECORDS = new Set(['shoot', 'second camera', 'livestream', 'photo', 'audio', 'vision mixing']);

type Quoted = { setup: Pick<SetupFields, 'home'>; job: Pick<Job, 'role' | 'place'>; draft: Pick<QuoteDraft, 'lines'> };

/** The cautions of a quote's paper, each a sentence or two. */
export function notesForClient({ setup, job, draft }: Quoted): string[] {
  const notes: string[] = [];
  if (draft.lines.some((line) => line.estimated)) notes.push('Estimated lines are billed as what they come to at wrap.');
  if (RECORDS.has(job.role))
    notes.push(
      'Faces, voices, children and music in the room may need consent or a licence; please tell your guests that they are recorded.',
    );
  if (ON_MAINS.has(job.role)) notes.push('Power for long loads, shared circuits and cable runs: the electrician of the venue decides.');
  if (job.place && job.place.country !== setup.home.country)
    notes.push('The job crosses a border: permits to work and customs for the kit are decided by the authorities.');
  notes.push('The texts of these terms are starting points, not legal or tax advice.');
  return notes;
}

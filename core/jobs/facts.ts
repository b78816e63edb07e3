/**
 * The facts of a job that a person may change, and how a change is laid over them.
 */
import type { z } from 'zod';
import type { Job, JobFacts } from '../contract/jobs.ts';

export type Facts = z.infer<typeof JobFacts>;
/** Facts by their names; one that is left out or undefined stays as it is. */
export type FactChanges = { [Name in keyof Facts]?: Facts[Name] | undefined };

/** What stands where nothing was said. */
const UNSAID: Omit<Facts, 'title'> = {
  organisation: '',
  contact: { name: '', email: '', phone: '' },
  role: 'shoot',
  place: null,
  days: [],
  replyBy: null,
  budget: null,
  notes: '',
  deliverables: [],
  edits: [],
};

/** Facts as words, for sentences. */
export const factWords: Record<keyof Facts, string> = {
  title: 'title',
  organisation: 'organisation',
  contact: 'contact',
  role: 'role',
  place: 'place',
  days: 'days',
  replyBy: 'reply-by',
  budget: 'budget',
  notes: 'notes',
  deliverables: 'deliverables',
  edits: 'due dates and edit hours',
};

/** The facts of a new job. */
export function newFacts(given: FactChanges & { title: string }): Facts {
  return withChanges({ ...UNSAID, title: given.title }, given);
}

/** The facts alone of a job. */
export function factsOf(job: Job): Facts {
  const { title, organisation, contact, role, place, days, replyBy, budget, notes, deliverables, edits = [] } = job;
  return { title, organisation, contact, role, place, days, replyBy, budget, notes, deliverables, edits };
}

/** Facts with some of them changed. */
export function withChanges(before: Facts, changes: FactChanges): Facts {
  return { ...before, ...Object.fromEntries(Object.entries(changes).filter(([, value]) => value !== undefined)) };
}

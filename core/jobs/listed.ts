/**
 * The list of jobs: which are shown and in which order.
 */
import type { JobRow, JobState } from '../contract/jobs.ts';
import type { Money, Place } from '../contract/parts.ts';
import { instantText, wallAt } from '../time/read.ts';
import { holdsWords } from '../words/holds.ts';
import { type Stage, stateOf } from './state.ts';

/** What the list needs of a job; instants in epoch milliseconds, `zone` that of its wall times. */
export type ListedFacts = {
  id: string;
  title: string;
  organisation: string;
  stage: Stage;
  place: Place | null;
  firstCallAt: number | null;
  lastWrapAt: number | null;
  zone: string | null;
  heldUntil: number | null;
  total: Money | null;
};

/**
 * Jobs still to come or under way, next first call first; then those without dates; then what is over, last one first.
 * @param filter.text words that all must begin a word of title, organisation or place; accents and case do not matter
 */
export function listed(
  jobs: readonly ListedFacts[],
  filter: { text: string; states: readonly JobState[] | undefined; now: number },
): JobRow[] {
  const holds = holdsWords(filter.text);
  const group = (job: ListedFacts) => (job.lastWrapAt === null ? 1 : job.lastWrapAt > filter.now ? 0 : 2);
  return jobs
    .map((job) => ({ job, state: stateOf(job.stage, job.heldUntil, filter.now) }))
    .filter(
      ({ job, state }) =>
        (!filter.states || filter.states.includes(state)) &&
        (filter.text.trim() === '' || holds(job.title, job.organisation, job.place?.name ?? '')),
    )
    .sort(({ job: a }, { job: b }) => group(a) - group(b) || (group(a) === 2 ? -1 : 1) * ((a.firstCallAt ?? 0) - (b.firstCallAt ?? 0)))
    .map(({ job, state }) => ({
      id: job.id,
      title: job.title,
      organisation: job.organisation,
      state,
      place: job.place?.name ?? null,
      firstCall: moment(job.firstCallAt, job.zone),
      lastWrap: moment(job.lastWrapAt, job.zone),
      total: job.total,
    }));
}

function moment(at: number | null, zone: string | null): JobRow['firstCall'] {
  return at === null || zone === null ? null : { wall: wallAt(at, zone), zone, at: instantText(at) };
}

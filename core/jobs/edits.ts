/**
 * What is known of the editing of each deliverable: when it is promised, and the hours that it takes.
 */
import type { Edit, JobFacts } from '../contract/jobs.ts';

type Promised = Pick<JobFacts, 'deliverables' | 'edits'>;

/** One edit for each deliverable, in their order; what nobody said is null. What is no deliverable any more is left out. */
export function editsOf({ deliverables, edits = [] }: Promised): Edit[] {
  const left = [...edits];
  return deliverables.map((what) => {
    const at = left.findIndex((edit) => edit.what === what);
    return (at < 0 ? undefined : left.splice(at, 1)[0]) ?? { what, due: null, hours: null };
  });
}

/** Only what is known is kept. */
export function knownEdits(promised: Promised): Edit[] {
  return editsOf(promised).filter(({ due, hours }) => due !== null || hours !== null);
}

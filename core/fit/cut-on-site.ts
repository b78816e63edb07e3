/**
 * What is promised for the same day is cut on site: its hours follow the last wrap, before the rest, and count as duty.
 */
import type { EditGround } from '../deliverables/ground.ts';
import { dateOfEnd } from '../deliverables/chain.ts';
import { wallAt } from '../time/read.ts';
import type { BookJob } from './book.ts';

const HALF_HOUR = 30 * 60_000;

/** A job with those hours as an edit day behind its last day on site; the same job where it has none, or a hand does them. */
export function withCutOnSite(job: BookJob, ground: EditGround | undefined): BookJob {
  const last = job.days.filter(({ kind }) => kind !== 'edit' && kind !== 'travel').toSorted((a, b) => b.wrapAt - a.wrapAt)[0];
  const halfHours = last && ground ? halfHoursOn(job, ground, dateOfEnd(last.wrapAt, ground.zone)) : 0;
  if (!last || halfHours === 0) return job;
  const wrapAt = last.wrapAt + halfHours * HALF_HOUR;
  const wrap = wallAt(wrapAt, last.zone ?? job.place.zone);
  return { ...job, days: [...job.days, { ...last, kind: 'edit', call: last.wrap, callAt: last.wrapAt, wrap, wrapAt }] };
}

/** Of what is stored for it, else of what it promises itself: due on the date of the wrap. */
function halfHoursOn({ id, edits = [] }: BookJob, ground: EditGround, wrapDate: string): number {
  const stored = ground.edits.filter(({ jobId }) => jobId === id);
  const ofStored = stored
    .filter(({ sameDay, editor }) => sameDay && editor === null)
    .flatMap(({ stages }) => stages)
    .reduce((sum, { halfHours }) => sum + halfHours, 0);
  const own = edits.filter(({ due }) => due === wrapDate).reduce((sum, { halfHours }) => sum + halfHours, 0);
  return stored.length > 0 ? ofStored : own;
}

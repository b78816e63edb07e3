/**
 * What happens by itself to the edits of a job of the sample: files come in on the day after the wrap, and each edit is handed over on the eve
 * of its date unless the sample says otherwise. Whoever wrote the job down need not tell it.
 */
import { call } from '@orpc/server';
import type { StageKind } from '../../core/contract/deliverables.ts';
import { dateLater } from '../../core/time/wall.ts';
import { deliverables } from '../api/deliverables.ts';
import { jobs } from '../api/jobs.ts';
import type { Cast, Told } from './cast.ts';
import { momentAt } from './dates.ts';
import { typeTime } from './edit-time.ts';
import type { Step } from './house.ts';

/** An edit without a date of its own is handed over so many days after the last day on site. */
const HANDED_AFTER = 14;
/** They say yes so many days later. */
const APPROVED_AFTER = 4;

/** None for a job that never came to ink: nothing of it is a deliverable then. */
export function editSteps(cast: Cast, told: Told): Step[] {
  const { job, first } = told;
  const last = Math.max(0, ...job.days.filter((day) => !day.includes(' edit ')).map((day) => Number(day.split(' ')[0])));
  const at = (days: number, hour: string, names: readonly string[], kind: StageKind): Step => ({
    at: momentAt(dateLater(first, days), hour, cast.today.zone),
    act: () => done(cast, told, names, kind),
  });
  const edits: { what: string; due?: number; handed?: number | null }[] = (job.deliverables ?? []).map((one) =>
    typeof one === 'string' ? { what: one } : one,
  );
  const handed = edits.flatMap((edit) => {
    const day = handedOn(edit, last);
    return day === null ? [] : [{ what: edit.what, day }];
  });
  return [
    at(
      last + 1,
      '10:00',
      edits.map(({ what }) => what),
      'ingest',
    ),
    ...handed.flatMap(({ what, day }) => [at(day, '23:30', [what], 'delivered'), at(day + APPROVED_AFTER, '11:00', [what], 'approved')]),
  ];
}

/** Days after the first date; null where it is still open. */
function handedOn({ due, handed }: { due?: number; handed?: number | null }, last: number): number | null {
  if (handed === null) return null;
  return handed ?? Math.max(last, due === undefined ? last + HANDED_AFTER : due - 1);
}

/** A stage is done, where the deliverable has it and it is not done yet. */
async function done(cast: Cast, told: Told, names: readonly string[], kind: StageKind): Promise<void> {
  if (told.id === '') return;
  // What was called off meanwhile is delivered no more.
  if ((await call(jobs.get, { id: told.id }, cast)).job.state !== 'inked') return;
  const { deliverables: all } = await call(deliverables.of, { jobId: told.id }, cast);
  for (const one of all.filter(({ name }) => names.includes(name))) {
    const stage = one.stages.find((each) => each.kind === kind && each.doneAt === null);
    if (!stage) continue;
    if (kind === 'delivered') await typeTime(cast, one);
    await call(deliverables.stageDone, { id: stage.id, version: stage.version }, cast);
  }
}

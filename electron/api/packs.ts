/**
 * Packing for a job and coming back.
 */
import type { Clock } from '../../core/contract/desk.ts';
import type { Job } from '../../core/contract/jobs.ts';
import type { PackRow } from '../../core/contract/kit.ts';
import { kitClock } from '../../core/desk/kit-clock.ts';
import { packInWords, packRows, packTrouble, stillOut } from '../../core/kit/pack.ts';
import { instantText } from '../../core/time/read.ts';
import { jobById } from '../../db/jobs.ts';
import { allItems, itemById, kitOfJob } from '../../db/kit.ts';
import { writeHistory } from '../../db/keeping.ts';
import { jobsStillOut, keepPacked, packsOf } from '../../db/packs.ts';
import type { ReadableDb } from '../../db/store.ts';
import { deed } from './deed.ts';
import { whole } from './job-deed.ts';
import { badFacts } from './job-facts.ts';
import { os } from './os.ts';
import { tripOf } from './trip-of.ts';

export const packList = os.kit.packList.handler(({ input, context }) =>
  context.store.read((db) => listOf(db, whole(db, input.jobId, context.now()))),
);

export const pack = os.kit.pack.handler(({ input, context }) =>
  deed(context, 'kit.pack', input, (db) => {
    const now = context.now();
    const job = whole(db, input.jobId, now);
    const before = packsOf(db, job.id);
    for (const [at, tick] of input.ticks.entries()) {
      const item = itemById(db, tick.item);
      const wrong = item ? packTrouble(tick, item.name) : 'This thing is not on your kit list.';
      if (wrong) throw badFacts([{ field: `ticks[${at}]`, sentence: wrong }]);
      keepPacked(db, job.id, tick, now);
    }
    writeHistory(db, { at: now, subject: 'job', subjectId: job.id, deed: 'kit.pack', sentence: saidOf(packsOf(db, job.id)), before });
    return listOf(db, job);
  }),
);

function listOf(db: ReadableDb, job: Job): { rows: PackRow[]; homeAt: string | null } {
  const trip = tripOf(db, job);
  return { rows: packRows(kitOfJob(db, job.id), allItems(db), packsOf(db, job.id)), homeAt: trip ? instantText(trip.doorInAt) : null };
}

function saidOf(packed: ReturnType<typeof packsOf>): string {
  const out = packInWords(packed, stillOut);
  const missing = packInWords(packed, (row) => row.missing);
  return [out ? `Out: ${out}.` : 'Nothing is out.', missing ? `Did not come back: ${missing}.` : '']
    .filter((part) => part !== '')
    .join(' ');
}

/** Clocks of jobs that one is home from with something not ticked back. `now` in epoch ms. */
export function kitClocks(db: ReadableDb, now: number, homeZone: string): Clock[] {
  return jobsStillOut(db).flatMap((id) => {
    const job = jobById(db, id, now);
    const trip = job && tripOf(db, job);
    if (!job || !trip) return [];
    return kitClock({ job, homeAt: trip.doorInAt, rows: packsOf(db, id) }, now, homeZone) ?? [];
  });
}

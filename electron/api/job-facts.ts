/**
 * Facts of a job as they come in, made ready to be stored, or refused with what is wrong.
 */
import type { JobDay } from '../../core/contract/jobs.ts';
import type { Moment, Place } from '../../core/contract/parts.ts';
import { readDays } from '../../core/jobs/days.ts';
import { epochOf, wallAt } from '../../core/time/read.ts';
import type { PlacedDays } from '../../db/jobs.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb } from '../../db/store.ts';
import type { Context } from './context.ts';
import { trouble } from './trouble.ts';

/** The zone at home, or of this computer before the first set-up. */
export function homeZone(db: ReadableDb, context: Context): string {
  return setupRow(db)?.fields.home.zone ?? context.systemZone;
}

/**
 * Paid dates placed on the clock of the job's place, or of home while there is none.
 * @throws BAD_INPUT naming each day that cannot be
 */
export function placedDays(days: readonly JobDay[], place: Place | null, home: string): PlacedDays {
  const zone = place?.zone ?? home;
  const read = readDays(days, zone);
  if (read.troubles.length > 0) throw badFacts(read.troubles);
  return { days: read.days, zone };
}

/**
 * A moment whose wall time, zone and instant say the same.
 * @throws BAD_INPUT when they do not
 */
export function agreeing(field: string, moment: Moment): Moment {
  const shown = wallAt(epochOf(moment.at), moment.zone);
  if (shown !== moment.wall)
    throw badFacts([
      { field, sentence: `${moment.at} is ${shown.replace('T', ' ')} in ${moment.zone}, not ${moment.wall.replace('T', ' ')}.` },
    ]);
  return moment;
}

/** A refusal of facts whose sentences stand by themselves. */
export function badFacts(fields: { field: string; sentence: string }[]) {
  return trouble('BAD_INPUT', {
    what: fields[0]?.sentence ?? 'The facts cannot be.',
    kept: 'Nothing was changed.',
    todo: 'Correct it and try again.',
    fields,
  });
}

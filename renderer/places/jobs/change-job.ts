import type { z } from 'zod';
import type { Trouble } from '../../../core/contract/base.ts';
import type { Job, JobFacts } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import { ask, queries } from '../../ask.ts';
import { deed } from '../../deeds.ts';
import { client } from '../../door.ts';

export type FactChanges = Partial<z.infer<typeof JobFacts>>;
export type ChangeJob = (
  changes: FactChanges,
  options?: { settled?: string[]; onTrouble?: (trouble: Trouble) => void },
) => Promise<boolean>;

/** What every fact on the sheet is given. */
export type FactProps = { job: Job; save: ChangeJob; locked: boolean; home: Place };

/** The job as it stands on screen now, which a quick change before may have moved on. */
export const newestJob = (job: Job): Job => queries.getQueryData(ask.jobs.get.queryKey({ input: { id: job.id } }))?.job ?? job;

/** Saves changed facts against the newest version on screen, so that two quick changes do not stand in each other's way. */
export function changeJob(job: Job): ChangeJob {
  return async (changes, { settled, onTrouble } = {}) => {
    const saved = await deed(
      () =>
        client.jobs.change({
          id: job.id,
          version: newestJob(job).version,
          changes,
          key: crypto.randomUUID(),
          ...(settled ? { settled } : {}),
        }),
      onTrouble,
    );
    return saved !== undefined;
  };
}

import { useQuery } from '@tanstack/react-query';
import type { Job } from '../../../core/contract/jobs.ts';
import { epochOf, wallAt } from '../../../core/time/read.ts';
import { wallInWords } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { Fold } from '../../parts/fold.tsx';
import style from './jobs.module.css';

/** What was done to the job, newest first. */
export function History({ job, zone }: { job: Job; zone: string }) {
  const asked = useQuery(ask.jobs.history.queryOptions({ input: { id: job.id } }));
  if (!asked.data || asked.data.entries.length === 0) return null;
  return (
    <Fold title="What was done">
      <ol className={style.history}>
        {asked.data.entries.map((entry) => (
          <li key={entry.id}>
            <span className={style.second}>{wallInWords(wallAt(epochOf(entry.at), zone))}</span> {entry.sentence}
          </li>
        ))}
      </ol>
    </Fold>
  );
}

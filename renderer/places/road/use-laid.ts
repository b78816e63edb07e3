import { useQuery } from '@tanstack/react-query';
import { useMemo, useState } from 'react';
import type { Job } from '../../../core/contract/jobs.ts';
import { daysMoved } from '../../../core/fit/moved.ts';
import { datesInWords } from '../../../core/words/dates.ts';
import { ask, queries } from '../../ask.ts';
import { say } from '../../deeds.ts';
import { useSettled } from '../../parts/use-settled.ts';
import { changeJob, newestJob } from '../jobs/change-job.ts';

const FURTHEST = 400;

/** What is laid on the road: an open inquiry, as it is or with its days moved. Nothing is saved before it is kept. */
export type Laid = {
  job: Job;
  shift: number;
  /** The shift once it has stood still, which the store is asked about. */
  asked: number;
  /** First call with the shift, epoch ms. */
  firstCallAt: number;
  moveTo: (shift: number) => void;
  keep: () => Promise<void>;
};

export function useLaid(id: string | null): Laid | null {
  const [moved, setMoved] = useState<{ id: string | null; shift: number }>({ id, shift: 0 });
  const shift = moved.id === id ? moved.shift : 0;
  const asked = useSettled(shift, 90);
  const job = useQuery(ask.jobs.get.queryOptions({ input: { id: id ?? '' }, enabled: id !== null })).data?.job;
  return useMemo(() => {
    if (id === null || job?.id !== id || !job.place || job.days.length === 0) return null;
    const moveTo = (to: number): void => setMoved({ id, shift: Math.max(-FURTHEST, Math.min(FURTHEST, to)) });
    const { zone } = job.place;
    const calls = daysMoved(job.days, shift).map(({ call }) => Temporal.PlainDateTime.from(call).toZonedDateTime(zone).epochMilliseconds);
    return {
      job,
      shift,
      asked,
      firstCallAt: Math.min(...calls),
      moveTo,
      async keep() {
        const { days, title } = newestJob(job);
        const kept = daysMoved(days, shift);
        if (!(await changeJob(job)({ days: kept }, { settled: ['firstCall', 'lastWrap'] }))) return;
        // Answers about days that were only tried on are of no use any more.
        queries.removeQueries({ queryKey: ask.fit.check.key(), type: 'inactive' });
        moveTo(0);
        say(`${title} is now on ${datesInWords(kept.map(({ date }) => date))}.`, {
          label: 'Back to the days before',
          perform: () => changeJob(job)({ days }),
        });
      },
    };
  }, [id, job, shift, asked]);
}

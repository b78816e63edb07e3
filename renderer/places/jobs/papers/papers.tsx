import { useQuery } from '@tanstack/react-query';
import type { ListRate } from '../../../../core/contract/documents.ts';
import type { Job } from '../../../../core/contract/jobs.ts';
import type { Place } from '../../../../core/contract/parts.ts';
import { useState } from 'react';
import { ask } from '../../../ask.ts';
import { Certificate } from './certificate.tsx';
import { Customs } from './customs.tsx';
import style from './papers.module.css';

/**
 * What goes with the job beside the quote: the insurance certificate where one is asked for, and the customs list where kit crosses a
 * border. Nothing is shown where neither is.
 */
export function JobPapers({ job, home, currency }: { job: Job; home: Place; currency: string }) {
  const [rates, setRates] = useState<ListRate[]>([]);
  const customs = useQuery(
    ask.documents.customs.queryOptions({ input: { jobId: job.id, rates }, placeholderData: (before) => before }),
  ).data;
  if (!customs) return null;
  const crosses = customs.crosses && customs.list.rows.length > 0;
  const made = job.papers.some(({ kind }) => kind === 'customs list');
  const { asked } = job.knows.insurance;
  if (!crosses && !made && !asked) return null;
  return (
    <section className={style.section} aria-labelledby="job-papers" id="papers">
      <h2 id="job-papers">Papers to take</h2>
      <div className={style.parts}>
        {asked ? <Certificate job={job} home={home} /> : null}
        {crosses || made ? <Customs job={job} home={home} currency={currency} customs={customs} onRates={setRates} /> : null}
      </div>
    </section>
  );
}

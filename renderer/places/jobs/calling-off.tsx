import { useQuery } from '@tanstack/react-query';
import type { Job } from '../../../core/contract/jobs.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { ask } from '../../ask.ts';
import style from './quote.module.css';

/** What calling the job off would owe at this moment, by the terms that were frozen into its quote. */
export function CallingOff({ job }: { job: Job }) {
  const open = !['let go', 'declined', 'cancelled'].includes(job.state) && job.days.length > 0;
  const { data } = useQuery(ask.quotes.cancellation.queryOptions({ input: { jobId: job.id }, enabled: open, refetchInterval: 60_000 }));
  if (!open || !data) return null;
  const { total, reason } = data.cancellation;
  const owes = total.minor === 0 ? 'nothing' : formatMoney(total, { code: true });
  return (
    <p className={style.second}>
      <strong>{`${job.ink ? 'Called off now, it owes' : 'Once agreed, calling it off now would owe'} ${owes}.`}</strong> {reason}
    </p>
  );
}

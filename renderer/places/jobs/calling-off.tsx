import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { CallingOff as Calling } from '../../../core/contract/callings.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { epochOf, wallAt } from '../../../core/time/read.ts';
import { dateInWords, wallInWords } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { deed, say } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { CallingForm } from './calling-form.tsx';
import style from './quote.module.css';

type Props = { job: Job; home: Place };

/** What was called off, and what calling the job off would owe at this moment, by the terms that were frozen into its quote. */
export function CallingOff({ job, home }: Props) {
  const { data } = useQuery(ask.callings.list.queryOptions({ input: { jobId: job.id } }));
  const [newest, ...older] = data?.callings ?? [];
  return (
    <>
      {newest ? <Stands job={job} calling={newest} home={home} last /> : null}
      {older.map((calling) => (
        <Stands key={calling.id} job={job} calling={calling} home={home} />
      ))}
      <Now job={job} home={home} />
    </>
  );
}

/** One calling off as it was done; the last can be taken back. */
function Stands({ job, calling, home, last = false }: Props & { calling: Calling; last?: boolean }) {
  const { postponedTo, from, told, owes } = calling;
  const what = postponedTo
    ? `Postponed from ${dateInWords(from)} to ${dateInWords(postponedTo)}`
    : `Cancelled, first call was on ${dateInWords(from)}`;
  const takeBack = (): Promise<unknown> =>
    deed(async () => {
      await client.callings.takeBack({ id: job.id, version: job.version, key: crypto.randomUUID() });
      say('Taken back: the dates are yours again.');
    });
  return (
    <div>
      <p>
        <strong>{`${what}. It owes ${formatMoney(owes.total, { code: true })}.`}</strong>{' '}
        {`Notice was given ${wallInWords(wallAt(epochOf(told), home.zone))}. ${owes.reason}`}
      </p>
      <p className={style.second}>{owes.caution}</p>
      {last ? (
        <Button kind="quiet" onPress={() => void takeBack()}>
          {postponedTo ? 'Take the postponement back' : 'Take the cancellation back'}
        </Button>
      ) : null}
    </div>
  );
}

/** What it would owe now, and for ink the form that does it. */
function Now({ job, home }: Props) {
  const [open, setOpen] = useState(false);
  const running = !['let go', 'declined', 'cancelled'].includes(job.state) && job.days.length > 0;
  const { data } = useQuery(ask.quotes.cancellation.queryOptions({ input: { jobId: job.id }, enabled: running, refetchInterval: 60_000 }));
  if (!running || !data) return null;
  const { total, reason, base } = data.cancellation;
  if (open) return <CallingForm job={job} home={home} currency={base.currency} onClose={() => setOpen(false)} />;
  const owes = total.minor === 0 ? 'nothing' : formatMoney(total, { code: true });
  return (
    <div>
      <p className={style.second}>
        <strong>{`${job.ink ? 'Called off now, it owes' : 'Once agreed, calling it off now would owe'} ${owes}.`}</strong> {reason}
      </p>
      {job.ink ? (
        <Button kind="quiet" onPress={() => setOpen(true)}>
          Cancel or postpone
        </Button>
      ) : null}
    </div>
  );
}

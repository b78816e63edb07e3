import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { DraftKind, InvoiceRow } from '../../../../core/contract/invoices.ts';
import type { Job } from '../../../../core/contract/jobs.ts';
import type { Setup } from '../../../../core/contract/setup.ts';
import { dateIn } from '../../../../core/time/wall.ts';
import { ask } from '../../../ask.ts';
import { Asked } from '../../../parts/asked.tsx';
import { Segments } from '../../../parts/segments.tsx';
import { BillDraft } from './bill-draft.tsx';
import style from './billing.module.css';
import { Issued } from './issued.tsx';

const words: Record<DraftKind, string> = {
  deposit: 'deposit',
  instalment: 'instalment',
  final: 'bill at wrap',
  cancellation: 'cancellation',
};

/** What can be billed of the job, and the one that is next. */
function kindsOf(job: Job, issued: readonly InvoiceRow[], calledOff: boolean, today: string): { kinds: DraftKind[]; next: DraftKind } {
  if (job.state === 'cancelled') return { kinds: ['cancellation'], next: 'cancellation' };
  const kinds: DraftKind[] = ['deposit', 'instalment', 'final', ...(calledOff ? (['cancellation'] as const) : [])];
  const begun = (job.days[0]?.date ?? today) <= today;
  const billed = issued.some(({ kind, state }) => kind === 'deposit' && state !== 'credited');
  return { kinds, next: begun || billed ? 'final' : 'deposit' };
}

/** Billing of a job in ink: the next bill as it stands at the left, what was issued and paid at the right. */
export function Billing({ job, mine }: { job: Job; mine: Setup }) {
  const issued = useQuery(ask.invoices.list.queryOptions({ input: { jobId: job.id } }));
  const callings = useQuery(ask.callings.list.queryOptions({ input: { jobId: job.id } }));
  const [wanted, setWanted] = useState<DraftKind | null>(null);
  // Further rounds that came after the bill at wrap make one more.
  const wrapped = issued.data?.invoices.some(({ kind, state }) => kind === 'final' && state !== 'credited') ?? false;
  const after = useQuery({ ...ask.invoices.draft.queryOptions({ input: { jobId: job.id, kind: 'final' } }), enabled: wrapped });
  if (job.state !== 'inked' && job.state !== 'cancelled') return null;
  const today = dateIn(mine.home.zone, Temporal.Now.instant().epochMilliseconds);
  const rows = issued.data?.invoices ?? [];
  const { kinds, next } = kindsOf(job, rows, (callings.data?.callings.length ?? 0) > 0, today);
  const kind = wanted !== null && kinds.includes(wanted) ? wanted : next;
  // Instalments follow one another; of the others one stands.
  const later = kind === 'final' && wrapped && after.data?.draft.later === true;
  const standing = kind === 'instalment' || later ? undefined : rows.find((row) => row.kind === kind && row.state !== 'credited');
  // A cancelled job that was agreed on nowhere has no bill.
  if (job.state === 'cancelled' && callings.data?.callings.length === 0 && rows.length === 0) return null;
  return (
    <section className={style.billing} aria-labelledby="billing">
      <div className={style.part}>
        <h2 id="billing">Bill</h2>
        {kinds.length > 1 ? (
          <Segments
            bare
            label="Which bill"
            value={kind}
            options={kinds.map((value) => ({ value, label: words[value] }))}
            onChange={setWanted}
          />
        ) : null}
        {standing ? (
          <p>{`${standing.number} is this bill. To change it, credit it and issue it anew.`}</p>
        ) : (
          <DraftOf job={job} kind={kind} mine={mine} today={today} />
        )}
      </div>
      <Asked asked={issued}>{({ invoices }) => <Issued job={job} invoices={invoices} mine={mine} today={today} />}</Asked>
    </section>
  );
}

function DraftOf({ job, kind, mine, today }: { job: Job; kind: DraftKind; mine: Setup; today: string }) {
  const asked = useQuery(ask.invoices.draft.queryOptions({ input: { jobId: job.id, kind } }));
  return <Asked asked={asked}>{({ draft }) => <BillDraft key={kind} job={job} draft={draft} mine={mine} today={today} />}</Asked>;
}

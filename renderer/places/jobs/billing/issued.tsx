import { useQuery } from '@tanstack/react-query';
import type { InvoiceKind, InvoiceRow } from '../../../../core/contract/invoices.ts';
import type { Job } from '../../../../core/contract/jobs.ts';
import type { Payment } from '../../../../core/contract/payments.ts';
import type { Setup } from '../../../../core/contract/setup.ts';
import { formatMoney } from '../../../../core/money/format.ts';
import { countInWords } from '../../../../core/words/amounts.ts';
import { dateInWords } from '../../../../core/words/dates.ts';
import { ask } from '../../../ask.ts';
import style from './billing.module.css';
import { IssuedOne } from './issued-one.tsx';
import { Payments } from './payments.tsx';

const words: Record<InvoiceKind, string> = {
  deposit: 'deposit',
  instalment: 'instalment',
  final: 'bill at wrap',
  cancellation: 'cancellation',
  'credit note': 'credit note',
};

type Props = { job: Job; invoices: readonly InvoiceRow[]; mine: Setup; today: string };

/** What was issued for the job, newest first, and what was paid. */
export function Issued({ job, invoices, mine, today }: Props) {
  const { data } = useQuery(ask.payments.list.queryOptions({ input: { jobId: job.id } }));
  const credit = useQuery(ask.payments.credit.queryOptions({ input: { clientId: job.client?.id ?? '' }, enabled: job.client !== null }));
  const payments: readonly Payment[] = data?.payments ?? [];
  const has = credit.data?.credit ?? [];
  return (
    <div className={style.part}>
      <h2>Issued and paid</h2>
      {invoices.length === 0 ? <p className={style.second}>Nothing was issued for this job yet.</p> : null}
      <div>
        {invoices.map((invoice) => (
          <details key={invoice.id} className={style.issued}>
            <summary>
              <span>
                <span className={style.number}>{invoice.number}</span>{' '}
                <span className={style.second}>{`${words[invoice.kind]}, ${dateInWords(invoice.issueDate)}`}</span>
              </span>
              <span className={`${style.mark} ${invoice.state === 'late' ? style.late : style.second}`}>{stateOf(invoice)}</span>
              <span className={style.amount}>{formatMoney(invoice.toPay, { code: true })}</span>
            </summary>
            <IssuedOne row={invoice} mine={mine} today={today} credit={has.find(({ currency }) => currency === invoice.currency)} />
          </details>
        ))}
      </div>
      {has.length > 0 ? (
        <p>{`${job.client?.name ?? 'The client'} has ${has.map((amount) => formatMoney(amount, { code: true })).join(' and ')} as credit.`}</p>
      ) : null}
      <Payments payments={payments} />
    </div>
  );
}

/** "Late by 4 days, 900.00 open": the word for where it stands, with its figures. */
function stateOf({ kind, state, open, daysLate, dueDate }: InvoiceRow): string {
  if (kind === 'credit note') return '';
  if (state === 'late') return `late by ${countInWords(daysLate, 'day')}, ${formatMoney(open)} open`;
  if (state === 'open') return `due ${dateInWords(dueDate)}`;
  return open.minor > 0 ? `${state}, ${formatMoney(open)} open` : state;
}

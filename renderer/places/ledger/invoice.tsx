import { useQuery } from '@tanstack/react-query';
import type { Invoice } from '../../../core/contract/invoices.ts';
import type { Setup } from '../../../core/contract/setup.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { dateIn } from '../../../core/time/wall.ts';
import { paperDate } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { Asked } from '../../parts/asked.tsx';
import { Empty } from '../../parts/empty.tsx';
import sheet from '../../parts/sheet.module.css';
import { IssuedOne } from '../jobs/billing/issued-one.tsx';
import style from './ledger.module.css';

type Begin = 'pay' | 'remind' | undefined;

/** One issued paper by itself, with what can be done about it; `begin` is the form that is open at first. */
export function InvoicePlace({ id, begin }: { id: string; begin?: string }) {
  const asked = useQuery(ask.invoices.get.queryOptions({ input: { id } }));
  const setup = useQuery(ask.setup.get.queryOptions({ input: {} }));
  const first: Begin = begin === 'pay' || begin === 'remind' ? begin : undefined;
  return (
    <Asked asked={setup}>
      {({ setup: mine }) =>
        mine ? (
          <Asked asked={asked}>{({ invoice }) => <Shown invoice={invoice} mine={mine} begin={first} />}</Asked>
        ) : (
          <Empty title="Nothing was issued yet">Fill in Setup first: a bill needs a sender.</Empty>
        )
      }
    </Asked>
  );
}

function Shown({ invoice, mine, begin }: { invoice: Invoice; mine: Setup; begin: Begin }) {
  const { number, kind, billedTo, jobId, jobTitle, issueDate, dueDate, toPay, clientId, currency } = invoice;
  const credit = useQuery(ask.payments.credit.queryOptions({ input: { clientId: clientId ?? '' }, enabled: clientId !== null }));
  const today = dateIn(mine.home.zone, Temporal.Now.instant().epochMilliseconds);
  return (
    <div className={style.narrow}>
      <div className={sheet.head}>
        <div className={sheet.titles}>
          <h1 className={sheet.title}>{`${number}, ${billedTo}`}</h1>
          <span className={style.second}>
            {[
              kind === 'final' ? 'bill' : kind,
              `issued ${paperDate(issueDate)}`,
              ...(kind === 'credit note' ? [] : [`due ${paperDate(dueDate)}`]),
            ].join(', ')}
          </span>
        </div>
        <span className={style.strong}>{formatMoney(toPay, { code: true })}</span>
      </div>
      <p className={sheet.lead}>
        <a href="#/ledger">All invoices</a>
        {jobId ? (
          <>
            {' · '}
            <a href={`#/jobs/${jobId}`}>{jobTitle}</a>
          </>
        ) : null}
        {clientId ? (
          <>
            {' · '}
            <a href={`#/people/client/${clientId}`}>{billedTo}</a>
          </>
        ) : null}
      </p>
      <IssuedOne
        key={`${invoice.id} ${begin ?? ''}`}
        row={invoice}
        mine={mine}
        today={today}
        credit={credit.data?.credit.find((amount) => amount.currency === currency)}
        {...(begin ? { begin } : {})}
      />
    </div>
  );
}

import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState, type ReactNode } from 'react';
import type { InvoiceRow } from '../../../core/contract/invoices.ts';
import type { LedgerSeen, LedgerShow } from '../../../core/contract/ledger.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import { paperDate } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { Asked } from '../../parts/asked.tsx';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Segments } from '../../parts/segments.tsx';
import { useSettled } from '../../parts/use-settled.ts';
import table from '../../parts/table.module.css';
import { sceneNow } from '../../scene.ts';
import { amountText } from './amounts.tsx';
import style from './ledger.module.css';

const shows = (['open', 'late', 'paid', 'all'] as const).map((value) => ({ value, label: value }));
const none: Record<LedgerShow, string> = {
  open: 'Nobody owes you anything. A bill stands here from the moment it is issued, on the sheet of its job.',
  late: 'Nothing is late.',
  paid: 'Nothing was paid yet.',
  all: 'Nothing was issued yet. The bill of a job stands on its sheet: issue it there.',
};

/** The papers themselves, each with the one thing to do about it. */
export function Papers({ seen, given, children }: { seen: LedgerSeen; given: { asOf?: string }; children: ReactNode }) {
  const [show, setShow] = useState<LedgerShow>('open');
  const [text, setText] = useState('');
  const words = useSettled(text).trim();
  const asked = useQuery(
    ask.ledger.papers.queryOptions({ input: { ...given, show, ...(words ? { text: words } : {}) }, placeholderData: keepPreviousData }),
  );
  return (
    <section className={style.part} aria-labelledby="papers">
      <h2 id="papers">Invoices</h2>
      <div className={style.row}>
        <Segments bare label="Which invoices" value={show} options={shows} onChange={setShow} />
        <div className={style.search}>
          <Field
            bare
            label="Search invoices by number, client or job"
            placeholder="Number, client or job"
            type="search"
            value={text}
            onChange={setText}
          />
        </div>
        {children}
      </div>
      <Asked asked={asked}>
        {({ rows, more }) =>
          rows.length === 0 ? (
            <p className={style.second}>{words ? 'No invoice here holds these words.' : none[show]}</p>
          ) : (
            <>
              <PaperTable rows={rows} home={seen.home} />
              {more > 0 ? <p className={style.second}>{`${countInWords(more, 'more')} not shown. Search to find one.`}</p> : null}
            </>
          )
        }
      </Asked>
    </section>
  );
}

function PaperTable({ rows, home }: { rows: readonly InvoiceRow[]; home: string }) {
  const oldestLate = rows.find((row) => row.daysLate > 0 && row.state !== 'disputed');
  return (
    <div className={table.scroll}>
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col">Number</th>
            <th scope="col">Client and job</th>
            <th scope="col">State</th>
            <th scope="col" className={table.figures}>
              Open
            </th>
            <th scope="col">
              <span className="reader">What to do</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.id}>
              <th scope="row" className={style.nowrap}>
                <a href={`#/ledger/invoice/${row.id}`}>{row.number}</a>
                <span className={style.of}>{row.kind === 'final' ? 'bill' : row.kind}</span>
              </th>
              <td>
                {row.billedTo}
                <span className={style.of}>{row.jobTitle}</span>
              </td>
              <td className={style.nowrap}>
                <span className={row.daysLate > 0 ? style.late : undefined}>{stateWords(row)}</span>
                {row.kind === 'credit note' ? null : <span className={style.of}>{`due ${paperDate(row.dueDate)}`}</span>}
              </td>
              <td className={table.figures}>
                {amountText(row.kind === 'credit note' ? row.toPay : row.open, home)}
                {row.open.minor !== row.toPay.minor && row.kind !== 'credit note' ? (
                  <span className={style.of}>{`of ${formatMoney(row.toPay)}`}</span>
                ) : null}
              </td>
              <td className={style.act}>
                <Act row={row} next={row === oldestLate} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** "late by 4 days", "part paid", "disputed, late by 4 days". */
function stateWords({ kind, state, daysLate }: InvoiceRow): string {
  if (kind === 'credit note') return 'credit note';
  const late = daysLate > 0 ? `late by ${countInWords(daysLate, 'day')}` : '';
  return state === 'late' ? late : late === '' ? state : `${state}, ${late}`;
}

/** The one thing to do: what is late is reminded of, what is open is waited for or paid, the rest can be looked at. */
function Act({ row, next }: { row: InvoiceRow; next: boolean }) {
  const { id, number, open, daysLate, state, kind } = row;
  if (kind === 'credit note' || open.minor === 0) return null;
  const remind = daysLate > 0 && state !== 'disputed';
  const label = remind ? 'Remind them' : 'Record a payment';
  return (
    <Button
      kind={next ? 'black' : 'plain'}
      onPress={() => sceneNow().go(`/ledger/invoice/${id}/${remind ? 'remind' : 'pay'}`)}
      aria-label={`${label}: ${number}`}
    >
      {label}
    </Button>
  );
}

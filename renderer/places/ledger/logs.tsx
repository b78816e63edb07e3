import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { LedgerTable } from '../../../core/contract/ledger.ts';
import { formatMoney, formatNumber } from '../../../core/money/format.ts';
import { sumsByCurrency } from '../../../core/money/sums.ts';
import { isDate } from '../../../core/time/read.ts';
import { dateIn } from '../../../core/time/wall.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import { paperDate } from '../../../core/words/dates.ts';
import type { Money } from '../../../core/contract/parts.ts';
import { ask } from '../../ask.ts';
import { deed, say } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Asked } from '../../parts/asked.tsx';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Fold } from '../../parts/fold.tsx';
import { saveTable } from '../../parts/paper-file.ts';
import { LogTable } from './log-table.tsx';
import style from './ledger.module.css';

type Span = { from: string; to: string };

/** Logs for the accountant, each as a table and as a file, between two dates. */
export function Logs() {
  const asked = useQuery(ask.setup.get.queryOptions({ input: {} }));
  return <Asked asked={asked}>{({ setup }) => <Between zone={setup?.home.zone ?? 'UTC'} />}</Asked>;
}

function Between({ zone }: { zone: string }) {
  const today = dateIn(zone, Temporal.Now.instant().epochMilliseconds);
  const [typed, setTyped] = useState<Span>({ from: `${today.slice(0, 4)}-01-01`, to: today });
  const backwards = isDate(typed.from) && isDate(typed.to) && typed.from > typed.to;
  return (
    <section className={`${style.part} ${style.narrow}`} aria-labelledby="logs">
      <h2 id="logs">Logs and tables</h2>
      <div className={style.row}>
        <div className={style.date}>
          <Field label="From" type="date" value={typed.from} onChange={(from) => setTyped({ ...typed, from })} />
        </div>
        <div className={style.date}>
          <Field
            label="To"
            type="date"
            value={typed.to}
            onChange={(to) => setTyped({ ...typed, to })}
            error={backwards ? 'is before its first date' : undefined}
          />
        </div>
      </div>
      <p className={style.second}>Both dates are counted. The files open in a spreadsheet; nothing in them runs.</p>
      {isDate(typed.from) && isDate(typed.to) && !backwards ? <All span={typed} /> : null}
    </section>
  );
}

function All({ span }: { span: Span }) {
  const mileage = useQuery(ask.expenses.mileage.queryOptions({ input: span }));
  const perDiem = useQuery(ask.expenses.perDiem.queryOptions({ input: span }));
  const spent = useQuery(ask.expenses.list.queryOptions({ input: span }));
  return (
    <>
      <Asked asked={mileage}>
        {({ rows, totals, cautions }) => (
          <Log what="mileage" title="Mileage" span={span} count={countInWords(rows.length, 'drive')} totals={totals} cautions={cautions}>
            {rows.map(({ date, title, from, to, distance, unit, source, amount, reason }, index) => ({
              key: `${index} ${date}`,
              date: paperDate(date),
              what: `${from} to ${to}, ${formatNumber(distance)} ${unit}${source === 'estimate' ? ', estimated' : ''}`,
              of: title,
              reason,
              amount,
            }))}
          </Log>
        )}
      </Asked>
      <Asked asked={perDiem}>
        {({ rows, totals, cautions }) => (
          <Log
            what="per diem"
            title="Per diem"
            span={span}
            count={countInWords(rows.length, 'date away', 'dates away')}
            totals={totals}
            cautions={cautions}
          >
            {rows.map(({ date, title, place, amount, reason }) => ({
              key: `${date} ${title}`,
              date: paperDate(date),
              what: place,
              of: title,
              reason,
              amount,
            }))}
          </Log>
        )}
      </Asked>
      <Asked asked={spent}>
        {({ expenses }) => (
          <Log
            what="expenses"
            title="Expenses"
            span={span}
            count={countInWords(expenses.length, 'expense')}
            totals={sumsByCurrency(expenses.map(({ amount }) => amount))}
            cautions={[]}
          >
            {expenses.map(({ id, on, what, category, title, billed, amount, receipt }) => ({
              key: id,
              date: paperDate(on),
              what: `${what}, ${category}`,
              of: title ?? 'for no job',
              reason: [billed ? 'charged on' : 'not charged on', receipt ? 'with its receipt' : 'without a receipt'].join(', '),
              amount,
            }))}
          </Log>
        )}
      </Asked>
      <div className={style.part}>
        <h3>Books</h3>
        <div className={style.row}>
          <SaveButton what="invoices" span={span} />
          <SaveButton what="payments" span={span} />
          <SaveButton what="income" span={span} />
        </div>
      </div>
    </>
  );
}

type LogProps = {
  what: LedgerTable;
  title: string;
  span: Span;
  count: string;
  totals: readonly Money[];
  cautions: readonly string[];
  children: Parameters<typeof LogTable>[0]['rows'];
};

function Log({ what, title, span, count, totals, cautions, children }: LogProps) {
  const sums = totals.map((amount) => formatMoney(amount, { code: true })).join(' and ');
  return (
    <div className={style.part}>
      <div className={style.row}>
        <h3>{title}</h3>
        <span>{[count, sums].filter((part) => part !== '').join(', ')}</span>
        <SaveButton what={what} span={span} />
      </div>
      {children.length > 0 ? (
        <Fold title={`Every ${title.toLowerCase()} row`}>{() => <LogTable title={title} rows={children} />}</Fold>
      ) : null}
      {children.length > 0
        ? cautions.map((caution) => (
            <p key={caution} className={style.second}>
              {caution}
            </p>
          ))
        : null}
    </div>
  );
}

/** Writes the file through the browser; the figures come from the store at that moment. */
function SaveButton({ what, span }: { what: LedgerTable; span: Span }) {
  const save = async (): Promise<void> => {
    const { name, text, rows } = await client.ledger.csv({ what, ...span });
    saveTable(name, text);
    say(`${name}: ${countInWords(rows, 'row')}.`);
  };
  return <Button onPress={() => void deed(save)}>{`Save ${what} as CSV`}</Button>;
}

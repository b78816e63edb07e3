import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { LedgerYear } from '../../../core/contract/ledger.ts';
import { barsOf } from '../../../core/ledger/bars.ts';
import type { Sum } from '../../../core/ledger/sums.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { monthInWords } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { Asked } from '../../parts/asked.tsx';
import { Segments } from '../../parts/segments.tsx';
import table from '../../parts/table.module.css';
import { Bar, Key, SumText, sumInWords } from './amounts.tsx';
import style from './ledger.module.css';

/** A calendar year by month, client and job, and what to set aside of it. */
export function Year() {
  const [wanted, setWanted] = useState<number | null>(null);
  const asked = useQuery(
    ask.ledger.year.queryOptions({ input: wanted === null ? {} : { year: wanted }, placeholderData: keepPreviousData }),
  );
  return (
    <Asked asked={asked}>
      {(seen) => (
        <>
          {seen.years.length > 1 ? (
            <Segments
              bare
              label="Year"
              value={String(seen.year)}
              options={seen.years.map((year) => ({ value: String(year), label: String(year) }))}
              onChange={(year) => setWanted(Number(year))}
            />
          ) : null}
          <div className={style.two}>
            <div className={style.column}>
              <Months seen={seen} />
              <By
                title="By client"
                first="Client"
                home={seen.home}
                rows={seen.clients.map(({ clientId, name, ...row }) => ({
                  ...row,
                  name,
                  link: clientId ? `#/people/client/${clientId}` : null,
                }))}
              />
              <By
                title="By job"
                first="Job"
                home={seen.home}
                rows={seen.jobs.map(({ jobId, title, ...row }) => ({
                  ...row,
                  name: title || 'credit, for no job yet',
                  link: jobId ? `#/jobs/${jobId}` : null,
                }))}
              />
            </div>
            <div className={style.column}>
              <Aside seen={seen} />
            </div>
          </div>
        </>
      )}
    </Asked>
  );
}

/** Billed and received by month: two bars a month, with their figures in the same row. */
function Months({ seen: { months, billed, received, year, home } }: { seen: LedgerYear }) {
  const bars = barsOf(months.flatMap((month) => [month.received, month.billed]));
  return (
    <section className={style.part} aria-labelledby="months">
      <h2 id="months">{`${year} by month`}</h2>
      <p>{`Billed ${sumInWords(billed, home)}; received ${sumInWords(received, home)}, tax included.`}</p>
      <p className={style.key} aria-hidden>
        <span>
          <Key look="solid" /> received
        </span>
        <span>
          <Key look="outlined" /> billed
        </span>
      </p>
      <div className={table.scroll}>
        <table className={table.table}>
          <thead>
            <tr>
              <th scope="col">Month</th>
              <td aria-hidden />
              <FigureHeads />
            </tr>
          </thead>
          <tbody>
            {months.map((row, index) => (
              <tr key={row.month}>
                <th scope="row">{monthInWords(row.month)}</th>
                <td className={style.bar} aria-hidden>
                  <Bar percent={bars[2 * index] ?? 0} />
                  <Bar percent={bars[2 * index + 1] ?? 0} look="outlined" />
                </td>
                <Figures {...row} home={home} />
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

function FigureHeads() {
  return ['Billed', 'Received'].map((head) => (
    <th key={head} scope="col" className={table.figures}>
      {head}
    </th>
  ));
}

/** Two figures; none is a dash, so that what is there is seen. */
function Figures({ billed, received, home }: { billed: Sum; received: Sum; home: string }) {
  return [billed, received].map((sum, index) => (
    <td key={index === 0 ? 'billed' : 'received'} className={table.figures}>
      {sum.by.length === 0 ? '–' : <SumText sum={sum} currency={home} />}
    </td>
  ));
}

type Row = { name: string; link: string | null; billed: Sum; received: Sum };

function By({ title, first, rows, home }: { title: string; first: string; rows: readonly Row[]; home: string }) {
  if (rows.length === 0) return null;
  return (
    <section className={style.part}>
      <h2>{title}</h2>
      <div className={table.scroll}>
        <table className={table.table} aria-label={title}>
          <thead>
            <tr>
              <th scope="col">{first}</th>
              <FigureHeads />
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.link ?? row.name}>
                <th scope="row">{row.link ? <a href={row.link}>{row.name}</a> : row.name}</th>
                <Figures {...row} home={home} />
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

/** What to set aside, with every figure that it comes from. */
function Aside({ seen: { setAside, year } }: { seen: LedgerYear }) {
  const { income, collected, costs, profit, amount, reason, selfEmployment, cautions } = setAside;
  return (
    <section className={style.part} aria-labelledby="set-aside">
      <h2 id="set-aside">{`To set aside of ${year}`}</h2>
      <dl className={style.sums}>
        <dt>Received, without tax</dt>
        <dd>{formatMoney(income, { code: true })}</dd>
        <dt>Tax collected, not yours</dt>
        <dd>{formatMoney(collected)}</dd>
        <dt>Spent, and paid to hands</dt>
        <dd>{formatMoney(costs)}</dd>
        <dt>Left</dt>
        <dd>{formatMoney(profit)}</dd>
        <dt className={style.strong}>To set aside</dt>
        <dd className={style.strong}>{formatMoney(amount, { code: true })}</dd>
      </dl>
      <p className={style.second}>{reason}</p>
      {selfEmployment ? <p className={style.second}>{selfEmployment.reason}</p> : null}
      {cautions.map((caution) => (
        <p key={caution} className={style.second}>
          {caution}
        </p>
      ))}
    </section>
  );
}

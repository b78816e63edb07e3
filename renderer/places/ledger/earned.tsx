import { useQuery } from '@tanstack/react-query';
import type { EarnedRow } from '../../../core/contract/ledger.ts';
import { barsOf } from '../../../core/ledger/bars.ts';
import { formatMoney, formatNumber } from '../../../core/money/format.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import { paperDate } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { Asked } from '../../parts/asked.tsx';
import table from '../../parts/table.module.css';
import { Bar, Key } from './amounts.tsx';
import style from './ledger.module.css';

/** What each billed job kept per hour away, and what pulled it down. */
export function Earned() {
  const asked = useQuery(ask.ledger.earned.queryOptions({ input: {} }));
  return (
    <Asked asked={asked}>
      {({ rows, together }) => (
        <section className={style.part} aria-labelledby="earned">
          <h2 id="earned">Kept per hour away</h2>
          {rows.length === 0 ? (
            <p className={style.second}>No job was billed at wrap yet. Each one that is stands here with what it left per hour.</p>
          ) : (
            <>
              <p>
                {together
                  ? `The last ${countInWords(together.jobs, 'job')} together kept ${formatMoney(together.perHour, { code: true })} per hour away.`
                  : null}
              </p>
              <EarnedTable rows={rows} />
              <p className={style.second}>
                Hours are from door-out to door-in, and editing outside them. Kept is net billed less what was passed through, expenses,
                hands, sub-hire and wear.
              </p>
            </>
          )}
        </section>
      )}
    </Asked>
  );
}

function EarnedTable({ rows }: { rows: readonly EarnedRow[] }) {
  const bars = barsOf(rows.flatMap(({ perHour, quoted }) => [perHour, quoted ?? { ...perHour, minor: 0 }]).map(alone));
  return (
    <div className={table.scroll}>
      <p className={style.key} aria-hidden>
        <span>
          <Key look="solid" /> as it went
        </span>
        <span>
          <Key look="outlined" /> as quoted
        </span>
      </p>
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col">Job</th>
            <td aria-hidden />
            <th scope="col" className={table.figures}>
              Per hour
            </th>
            <th scope="col" className={table.figures}>
              Quoted
            </th>
            <th scope="col" className={table.figures}>
              Hours
            </th>
            <th scope="col" className={table.figures}>
              Kept
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={row.jobId}>
              <th scope="row">
                <a href={`#/jobs/${row.jobId}`}>{row.title}</a>
                <span className={style.of}>{`billed ${paperDate(row.on)}`}</span>
                <ul className={style.pulls}>
                  {[...row.pulledDown, ...row.cautions].map((sentence) => (
                    <li key={sentence}>{sentence}</li>
                  ))}
                </ul>
                <details className={style.how}>
                  <summary aria-label={`How this came about: ${row.title}`}>How this came about</summary>
                  {row.reason}
                </details>
              </th>
              <td className={style.bar} aria-hidden>
                <Bar percent={bars[2 * index] ?? 0} />
                <Bar percent={bars[2 * index + 1] ?? 0} look="outlined" />
              </td>
              <td className={`${table.figures} ${style.strong}`}>{formatMoney(row.perHour, { code: true })}</td>
              <td className={table.figures}>{row.quoted ? formatMoney(row.quoted) : '–'}</td>
              <td className={table.figures}>{formatNumber(row.hours)}</td>
              <td className={table.figures}>{formatMoney(row.kept)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

const alone = (amount: EarnedRow['perHour']) => ({ by: [amount], home: null });

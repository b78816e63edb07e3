import type { LedgerSeen } from '../../../core/contract/ledger.ts';
import { barsOf } from '../../../core/ledger/bars.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import table from '../../parts/table.module.css';
import { Bar, SumText } from './amounts.tsx';
import style from './ledger.module.css';

const words = {
  'not due': 'not due yet',
  '1-30': '1 to 30 days',
  '31-60': '31 to 60 days',
  '61-90': '61 to 90 days',
  'over 90': 'over 90 days',
} as const;

/** What is open by how long it is past due: bars, with their figures in the same rows. */
export function Ageing({ seen: { ageing, home } }: { seen: LedgerSeen }) {
  return (
    <section className={style.part} aria-labelledby="ageing">
      <h2 id="ageing">By age, days past due</h2>
      {ageing.length === 0 ? <p className={style.second}>Nothing is open.</p> : null}
      {ageing.map(({ currency, rows, total }) => {
        const bars = barsOf(rows.map(({ amount }) => ({ by: [amount], home: null })));
        return (
          <div key={currency} className={table.scroll}>
            <table className={table.table} aria-label={`What is open by age, ${currency}`}>
              <thead>
                <tr>
                  <th scope="col">Past due</th>
                  <td aria-hidden />
                  <th scope="col" className={table.figures}>
                    Invoices
                  </th>
                  <th scope="col" className={table.figures}>
                    {`Open${currency === home ? '' : `, ${currency}`}`}
                  </th>
                </tr>
              </thead>
              <tbody>
                {rows.map(({ bucket, amount, count }, index) => (
                  <tr key={bucket}>
                    <th scope="row" className={style.nowrap}>
                      {words[bucket]}
                    </th>
                    <td className={style.bar} aria-hidden>
                      <Bar percent={bars[index] ?? 0} look={bucket === 'not due' ? 'outlined' : 'solid'} />
                    </td>
                    <td className={table.figures}>{count}</td>
                    <td className={table.figures}>{formatMoney(amount)}</td>
                  </tr>
                ))}
                <tr>
                  <th scope="row">all</th>
                  <td aria-hidden />
                  <td className={table.figures}>{rows.reduce((all, { count }) => all + count, 0)}</td>
                  <td className={`${table.figures} ${style.strong}`}>{formatMoney(total)}</td>
                </tr>
              </tbody>
            </table>
          </div>
        );
      })}
    </section>
  );
}

/** Who owes, the most first. */
export function ClientsOwing({ seen: { clients, home } }: { seen: LedgerSeen }) {
  if (clients.length === 0) return null;
  return (
    <section className={style.part} aria-labelledby="clients-owing">
      <h2 id="clients-owing">By client</h2>
      <div className={table.scroll}>
        <table className={table.table}>
          <thead>
            <tr>
              <th scope="col">Client</th>
              <th scope="col" className={table.figures}>
                Late
              </th>
              <th scope="col" className={table.figures}>
                Open
              </th>
            </tr>
          </thead>
          <tbody>
            {clients.map((row) => (
              <tr key={row.clientId ?? row.name}>
                <th scope="row">
                  {row.clientId ? <a href={`#/people/client/${row.clientId}`}>{row.name}</a> : row.name}
                  <span className={style.of}>
                    {countInWords(row.count, 'invoice')}
                    {row.daysLate > 0 ? `, the oldest ${countInWords(row.daysLate, 'day')} late` : ''}
                  </span>
                </th>
                <td className={table.figures}>
                  {row.late.by.length > 0 ? (
                    <span className={style.late}>
                      <SumText sum={row.late} currency={home} />
                    </span>
                  ) : (
                    '–'
                  )}
                </td>
                <td className={table.figures}>
                  <SumText sum={row.open} currency={home} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

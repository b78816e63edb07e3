import type { Money } from '../../../core/contract/parts.ts';
import { formatMoney } from '../../../core/money/format.ts';
import table from '../../parts/table.module.css';
import style from './ledger.module.css';

type LogRow = { key: string; date: string; what: string; of: string; reason: string; amount: Money | null };

/** A log as it is read: the date, what and for which job, and the amount; one without a known rate has a dash. */
export function LogTable({ title, rows }: { title: string; rows: readonly LogRow[] }) {
  return (
    <div className={table.scroll}>
      <table className={table.table} aria-label={title}>
        <thead>
          <tr>
            <th scope="col">Date</th>
            <th scope="col">What</th>
            <th scope="col" className={table.figures}>
              Amount
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, date, what, of, reason, amount }) => (
            <tr key={key}>
              <td className={style.nowrap}>{date}</td>
              <td>
                {what}
                <span className={style.of}>{[of, reason].filter((part) => part !== '').join('. ')}</span>
              </td>
              <td className={table.figures}>{amount ? formatMoney(amount, { code: true }) : '–'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

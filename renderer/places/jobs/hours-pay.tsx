import type { JobHours } from '../../../core/contract/hours.ts';
import { formatMoney, formatNumber } from '../../../core/money/format.ts';
import { Fold } from '../../parts/fold.tsx';
import table from '../../parts/table.module.css';
import style from './hours.module.css';

/** What my finished hours come to by the card that was agreed on, line by line with how each comes about. */
export function HoursPay({ hours: { lines, total } }: { hours: JobHours }) {
  if (!total) return null;
  return (
    <Fold title={<span className={style.second}>{`So far ${formatMoney(total, { code: true })}, before rush, discount and tax`}</span>}>
      <div className={table.scroll}>
        <table className={table.table}>
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col" className={table.figures}>
                Quantity
              </th>
              <th scope="col" className={table.figures}>
                {`Amount, ${total.currency}`}
              </th>
            </tr>
          </thead>
          <tbody>
            {lines.map(({ what, quantity, unit, amount, reason }) => (
              <tr key={what}>
                <th scope="row">
                  {what} <span className={table.second}>{reason}</span>
                </th>
                <td className={table.figures}>{`${formatNumber(quantity)} ${unit}`}</td>
                <td className={table.figures}>{formatMoney(amount)}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr className={style.sum}>
              <th scope="row" colSpan={2}>
                Together
              </th>
              <td className={table.figures}>{formatMoney(total)}</td>
            </tr>
          </tfoot>
        </table>
      </div>
    </Fold>
  );
}

import { formatMoney } from '../../../core/money/format.ts';
import style from '../../parts/sheet.module.css';
import table from '../../parts/table.module.css';
import type { Preview } from './use-preview.ts';

/** Each of the last quotes as it was priced and as the changed card would price it. */
export function CardPreview({ preview }: { preview: Preview }) {
  if (preview.rows.length + preview.apart.length === 0) return <p className={style.second}>{preview.sentence}</p>;
  return (
    <div className={table.scroll}>
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col">Quote</th>
            <th scope="col" className={table.figures}>
              With the card as it is
            </th>
            <th scope="col" className={table.figures}>
              As typed here
            </th>
            <th scope="col" className={table.figures}>
              Differs by
            </th>
          </tr>
        </thead>
        <tbody>
          {preview.rows.map((row) => (
            <tr key={`${row.jobId} ${row.number}`}>
              <th scope="row">
                {row.title} <span className={table.second}>{`version ${row.number}`}</span>
              </th>
              <td className={table.figures}>{formatMoney(row.before)}</td>
              <td className={table.figures}>{formatMoney(row.after)}</td>
              <td className={table.figures}>{`${row.difference.minor > 0 ? '+' : ''}${formatMoney(row.difference)}`}</td>
            </tr>
          ))}
          {preview.apart.map((quote) => (
            <tr key={`${quote.jobId} ${quote.number}`}>
              <th scope="row">
                {quote.title} <span className={table.second}>{`version ${quote.number}`}</span>
              </th>
              <td colSpan={3}>{quote.why}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

import { formatMoney, formatNumber } from '../../../core/money/format.ts';
import type { Shown } from '../../drafts.ts';
import style from './quote.module.css';

/** Net, taxes, total and deposit of what is shown. */
export function QuoteTotals({ shown, currency }: { shown: Shown; currency: string }) {
  const { totals, deposit } = shown;
  return (
    <>
      {totals.taxes.length > 0 ? (
        <dl className={style.figures}>
          <dt>Net</dt>
          <dd>{formatMoney(totals.net)}</dd>
          {totals.taxes.map((tax) => (
            <TaxRow
              key={`${tax.name} ${tax.percent} ${tax.state}`}
              label={`${tax.name} ${formatNumber(tax.percent)} % of ${formatMoney(tax.net)}`}
              note={tax.note}
              amount={formatMoney(tax.tax)}
            />
          ))}
        </dl>
      ) : null}
      <p className={style.total}>
        <span>{`Total ${currency}`}</span> <span>{formatMoney(totals.gross)}</span>
      </p>
      {deposit ? (
        <dl className={style.figures}>
          <dt>{`Deposit, ${deposit.due}`}</dt>
          <dd>{formatMoney(deposit.amount)}</dd>
        </dl>
      ) : null}
    </>
  );
}

function TaxRow({ label, note, amount }: { label: string; note: string; amount: string }) {
  return (
    <>
      <dt>
        {label} {note ? <span className={style.second}>{note}</span> : null}
      </dt>
      <dd>{amount}</dd>
    </>
  );
}

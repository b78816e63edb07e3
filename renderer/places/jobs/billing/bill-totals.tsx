import { Fragment } from 'react';
import type { InvoiceContent } from '../../../../core/contract/invoices.ts';
import { formatMoney, formatNumber } from '../../../../core/money/format.ts';
import { paperDate } from '../../../../core/words/dates.ts';
import quote from '../quote.module.css';

/** Net, taxes and total, what earlier bills take off, and what is to pay. */
export function BillTotals({
  draft,
}: {
  draft: Pick<InvoiceContent, 'totals' | 'credited' | 'toPay' | 'currency'> & { lines: readonly unknown[] };
}) {
  const { totals, credited, toPay, currency } = draft;
  if (draft.lines.length === 0) return null;
  return (
    <>
      {totals.taxes.length > 0 || credited.length > 0 ? (
        <dl className={quote.figures}>
          {totals.taxes.length > 0 ? (
            <>
              <dt>Net</dt>
              <dd>{formatMoney(totals.net)}</dd>
            </>
          ) : null}
          {totals.taxes.map((tax) => (
            <Fragment key={`${tax.name} ${tax.percent} ${tax.state}`}>
              <dt>
                {`${tax.name} ${formatNumber(tax.percent)} % of ${formatMoney(tax.net)}`}{' '}
                {tax.note ? <span className={quote.second}>{tax.note}</span> : null}
              </dt>
              <dd>{formatMoney(tax.tax)}</dd>
            </Fragment>
          ))}
          {credited.length > 0 ? (
            <>
              <dt>Total</dt>
              <dd>{formatMoney(totals.gross)}</dd>
            </>
          ) : null}
          {credited.map((off) => (
            <Fragment key={off.invoiceId}>
              <dt>{`Less ${off.number} of ${paperDate(off.date)}`}</dt>
              <dd>{formatMoney(off.gross)}</dd>
            </Fragment>
          ))}
        </dl>
      ) : null}
      <p className={quote.total}>
        <span>{`To pay ${currency}`}</span> <span>{formatMoney(toPay)}</span>
      </p>
    </>
  );
}

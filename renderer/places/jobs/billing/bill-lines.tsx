import type { InvoiceDraft } from '../../../../core/contract/invoices.ts';
import { formatMoney, formatNumber, formatPrice } from '../../../../core/money/format.ts';
import { isOwnLine } from '../../../../core/quotes/line.ts';
import type { ChangeBill } from '../../../bills.ts';
import { Button } from '../../../parts/button.tsx';
import quote from '../quote.module.css';
import { BillLineForm } from './bill-line-form.tsx';

type Line = InvoiceDraft['lines'][number];
type Props = { draft: InvoiceDraft; change: ChangeBill; locked: boolean };

/** The lines of the bill; each opens to its reason and can be changed there. Those taken off can be put back. */
export function BillLines({ draft, change, locked }: Props) {
  return (
    <div>
      {draft.lines.map((line) => (
        <details key={line.id} className={quote.line}>
          <summary>
            <span className={quote.what}>
              {line.what}
              <span className={quote.second}>{marksOf(line, draft.currency)}</span>
            </span>
            <span className={quote.amount}>{formatMoney(line.amount)}</span>
          </summary>
          <div className={quote.inside}>
            <p className={quote.reason}>{line.reason}</p>
            {locked ? null : <BillLineForm key={JSON.stringify([line.what, line.quantity, line.unitPrice])} line={line} change={change} />}
          </div>
        </details>
      ))}
      {draft.dropped.map((line) => (
        <p key={line.id} className={quote.dropped}>
          <span>
            <s>{line.what}</s> <span className={quote.second}>taken off</span>
          </span>
          <Button kind="quiet" onPress={() => void change([{ op: 'restore', id: line.id }])} aria-label={`Put back ${line.what}`}>
            Put back
          </Button>
        </p>
      ))}
    </div>
  );
}

/** Quantity and price, and what is special about a line. */
function marksOf(line: Line, currency: string): string {
  const counted =
    formatNumber(line.quantity) === '1' ? '' : `${formatNumber(line.quantity)} ${line.unit} × ${formatPrice(line.unitPrice, currency)}`;
  const state = line.taxes[0]?.state;
  return [
    counted,
    line.estimated ? 'estimated' : '',
    line.unapproved ? 'not all approved' : '',
    line.changed ? (isOwnLine(line.id) ? 'added by hand' : 'changed by hand') : '',
    state === undefined || state === 'rated' ? '' : state,
  ]
    .filter((words) => words !== '')
    .map((words) => ` ${words}`)
    .join('');
}

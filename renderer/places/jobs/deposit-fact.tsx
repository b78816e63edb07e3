import { useQuery } from '@tanstack/react-query';
import type { InvoiceRow } from '../../../core/contract/invoices.ts';
import type { QuoteDraft } from '../../../core/contract/quotes.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { dateInWords } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';

/** The deposit that was agreed on, and how far it is. */
export function DepositFact({ jobId, deposit }: { jobId: string; deposit: QuoteDraft['deposit'] }) {
  const { data } = useQuery(ask.invoices.list.queryOptions({ input: { jobId } }));
  if (!data) return null;
  const bills = data.invoices.filter(({ kind, state }) => kind === 'deposit' && state !== 'credited');
  if (bills.length > 0)
    return (
      <>
        {bills.map((bill) => (
          <p key={bill.id}>{`Deposit ${formatMoney(bill.gross, { code: true })}: ${standing(bill)}`}</p>
        ))}
      </>
    );
  return (
    <p>
      {deposit
        ? `Deposit ${formatMoney(deposit.amount, { code: true })}, ${deposit.note}, due ${deposit.due}: not asked for yet; its invoice stands ready below.`
        : 'No deposit was agreed.'}
    </p>
  );
}

function standing({ number, issueDate, dueDate, state, open, daysLate }: InvoiceRow): string {
  const issued = `invoice ${number} of ${dateInWords(issueDate)}`;
  if (open.minor === 0) return `${issued}, ${state}.`;
  const late = daysLate > 0 ? `${daysLate} ${daysLate === 1 ? 'day' : 'days'} late` : `due ${dateInWords(dueDate)}`;
  return `${issued}, ${formatMoney(open)} open, ${late}.`;
}

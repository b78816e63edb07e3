import { useQuery } from '@tanstack/react-query';
import type { Invoice, InvoiceRow } from '../../../../core/contract/invoices.ts';
import type { Money } from '../../../../core/contract/parts.ts';
import type { Setup } from '../../../../core/contract/setup.ts';
import { formatMoney } from '../../../../core/money/format.ts';
import { dateInWords } from '../../../../core/words/dates.ts';
import { epochOf, wallAt } from '../../../../core/time/read.ts';
import { ask } from '../../../ask.ts';
import { deed } from '../../../deeds.ts';
import { Asked } from '../../../parts/asked.tsx';
import { Button } from '../../../parts/button.tsx';
import { savePaper } from '../../../parts/paper-file.ts';
import { useOneOpen } from '../../../parts/use-one-open.ts';
import quote from '../quote.module.css';
import { BillTotals } from './bill-totals.tsx';
import style from './billing.module.css';
import { CreditForm } from './credit-form.tsx';
import { NoteForm, type NoteKind } from './note-form.tsx';
import { PaymentForm } from './payment-form.tsx';
import { Reminder } from './reminder.tsx';
import { RefundForm, UseCreditForm } from './credit-money.tsx';

type Props = {
  row: Pick<InvoiceRow, 'id'>;
  mine: Setup;
  today: string;
  credit: Money | undefined;
  /** The form that is open at first. */
  begin?: 'pay' | 'remind';
};
type Open = NoteKind | 'pay' | 'credit' | 'remind' | 'refund' | 'use credit';

/** One issued paper: what it says, what came after it, and what can be done about it. */
export function IssuedOne({ row, ...props }: Props) {
  const asked = useQuery(ask.invoices.get.queryOptions({ input: { id: row.id } }));
  return <Asked asked={asked}>{({ invoice }) => <Shown invoice={invoice} {...props} />}</Asked>;
}

function Shown({ invoice, mine, today, credit, begin }: Omit<Props, 'row'> & { invoice: Invoice }) {
  const [open, setOpen, close] = useOneOpen<Open>(begin ?? null);
  const { kind, content, reminders, disputed } = invoice;
  return (
    <div className={style.inside}>
      <ul className={style.lines}>
        {content.lines.map((line) => (
          <li key={line.id}>
            <span className={quote.what}>{line.what}</span>
            <span className={quote.amount}>{formatMoney(line.amount)}</span>
          </li>
        ))}
      </ul>
      <BillTotals draft={content} />
      {standing(invoice).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {disputed === null ? null : <p>{`Disputed: ${disputed}.`}</p>}
      {reminders.length > 0 ? (
        <p className={style.second}>
          {`Reminded ${reminders.map(({ tone, at }) => `${dateInWords(wallAt(epochOf(at), mine.home.zone).slice(0, 10))} (${tone})`).join(', ')}.`}
        </p>
      ) : null}
      <div className={quote.buttons}>
        <Button onPress={() => void deed(() => savePaper(invoice.paper.id))} aria-label={`Save the PDF of ${invoice.number}`}>
          Save the PDF
        </Button>
        {kind === 'credit note' ? null : <Doings invoice={invoice} credit={credit} onOpen={setOpen} />}
      </div>
      {open === 'pay' ? <PaymentForm invoice={invoice} home={mine.currency} today={today} onClose={close} /> : null}
      {open === 'credit' ? <CreditForm invoice={invoice} onClose={close} /> : null}
      {open === 'remind' ? <Reminder invoice={invoice} onClose={close} /> : null}
      {open === 'refund' ? <RefundForm invoice={invoice} home={mine.currency} today={today} onClose={close} /> : null}
      {open === 'use credit' && credit ? <UseCreditForm invoice={invoice} credit={credit} onClose={close} /> : null}
      {open === 'dispute' || open === 'settle' || open === 'write off' ? <NoteForm invoice={invoice} kind={open} onClose={close} /> : null}
    </div>
  );
}

/** What was paid, credited, given up, and what is over, where there is any of it. */
function standing({ paid, credited, writtenOff, over, open, kind }: Invoice): string[] {
  if (kind === 'credit note') return [];
  const said: [string, Money][] = [
    ['paid', paid],
    ['credited', credited],
    ['written off', writtenOff],
    ['open', open],
    ["over, to the client's credit", over],
  ];
  const parts = said.filter(([, amount]) => amount.minor !== 0).map(([word, amount]) => `${formatMoney(amount)} ${word}`);
  return parts.length > 0 ? [`${parts.join(', ')}.`] : [];
}

function Doings({ invoice, credit, onOpen }: { invoice: Invoice; credit: Money | undefined; onOpen: (open: Open) => void }) {
  const { open, writtenOff, over, disputed, left, number, clientId } = invoice;
  const offered: [Open, string, boolean][] = [
    ['pay', 'Record a payment', open.minor > 0 || writtenOff.minor > 0],
    ['use credit', 'Use their credit', open.minor > 0 && clientId !== null && (credit?.minor ?? 0) > 0],
    ['remind', 'Remind them', open.minor > 0 && disputed === null],
    ['credit', 'Credit it', left.some((line) => line.left.minor !== 0)],
    ['refund', 'Pay back what is over', over.minor > 0],
    ['dispute', 'They dispute it', open.minor > 0 && disputed === null],
    ['settle', 'It is settled', disputed !== null],
    ['write off', 'Write it off', open.minor > 0],
  ];
  return offered
    .filter(([, , when]) => when)
    .map(([which, label]) => (
      <Button key={label} kind={which === 'pay' ? 'plain' : 'quiet'} onPress={() => onOpen(which)} aria-label={`${label}: ${number}`}>
        {label}
      </Button>
    ));
}

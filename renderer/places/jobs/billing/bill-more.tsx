import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { InvoiceChange, InvoiceDraft } from '../../../../core/contract/invoices.ts';
import { parseAmount } from '../../../../core/money/parse.ts';
import type { ChangeBill } from '../../../bills.ts';
import { Button } from '../../../parts/button.tsx';
import { Field } from '../../../parts/field.tsx';
import { Fold } from '../../../parts/fold.tsx';
import { Reader } from '../../../parts/reader.ts';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../../trouble.ts';
import { AddLineForm } from '../add-line-form.tsx';
import quote from '../quote.module.css';

type Props = { draft: InvoiceDraft; change: ChangeBill; home: string };

/** What else a bill says: when it is due, when the work was, the exchange rate, a sentence of one's own, and lines beside. */
export function BillMore({ draft, change, home }: Props) {
  const [adding, setAdding] = useState(false);
  const [typed, setTyped] = useState({
    due: draft.dueDate,
    from: draft.supply?.from ?? '',
    to: draft.supply?.to ?? '',
    rate: draft.rate?.rate ?? '',
    note: draft.note,
  });
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const foreign = draft.currency !== home;
  const share = draft.kind === 'deposit' || draft.kind === 'instalment';
  const keep = async (): Promise<void> => {
    const reader = new Reader();
    const rate = typed.rate.trim() === '' ? undefined : reader.take('rate', parseAmount(typed.rate, 9));
    if ((typed.from === '') !== (typed.to === '')) reader.refuse(typed.from === '' ? 'from' : 'to', 'is empty; give both dates');
    setTrouble(reader.trouble);
    if (reader.trouble) return;
    const { due, from, to, note } = typed;
    const date = to || draft.supply?.to || draft.dueDate;
    const changes: InvoiceChange[] = [
      ...(due === draft.dueDate || due === '' ? [] : [{ op: 'due' as const, date: due }]),
      ...(from === '' || (from === draft.supply?.from && to === draft.supply.to) ? [] : [{ op: 'supply' as const, from, to }]),
      ...(rate === undefined || rate === draft.rate?.rate ? [] : [{ op: 'rate' as const, rate, date }]),
      ...(note === draft.note ? [] : [{ op: 'note' as const, text: note }]),
    ];
    if (changes.length > 0) await change(changes, setTrouble);
  };
  const field = (name: keyof typeof typed, label: string, more: object = {}) => (
    <Field
      label={label}
      value={typed[name]}
      onChange={(value) => setTyped({ ...typed, [name]: value })}
      error={fieldTrouble(trouble, name)}
      {...more}
    />
  );
  return (
    <>
      {share ? null : adding ? (
        <AddLineForm
          costs={false}
          change={(changes, onTrouble) =>
            change(
              changes.filter((each) => each.op === 'add'),
              onTrouble,
            )
          }
          onClose={() => setAdding(false)}
        />
      ) : (
        <div>
          <Button kind="quiet" onPress={() => setAdding(true)}>
            Add a line to the bill
          </Button>
        </div>
      )}
      <Fold title={<span className={quote.second}>Due date, dates of work, a sentence of your own</span>} open={foreign && !draft.rate}>
        <form
          className={quote.edit}
          onSubmit={(event) => {
            event.preventDefault();
            void keep();
          }}
        >
          {field('due', 'Due', { type: 'date' })}
          {foreign ? field('rate', `${home} for one ${draft.currency}`, { figures: true, hint: 'On the last date of work.' }) : null}
          {field('from', 'Work from', { type: 'date' })}
          {field('to', 'Work until', { type: 'date' })}
          <div className={quote.wide}>{field('note', 'A sentence of your own, printed', { rows: 2 })}</div>
          {trouble && !trouble.fields ? <TroubleNote trouble={trouble} /> : null}
          <div className={quote.buttons}>
            <Button type="submit">Keep</Button>
          </div>
        </form>
      </Fold>
    </>
  );
}

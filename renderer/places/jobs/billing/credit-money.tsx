import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { Invoice } from '../../../../core/contract/invoices.ts';
import { exponentOf } from '../../../../core/money/currencies.ts';
import { fixedText } from '../../../../core/money/exact.ts';
import { formatMoney } from '../../../../core/money/format.ts';
import { amountOf, compare, majorOf, type Money } from '../../../../core/money/money.ts';
import { parseAmount } from '../../../../core/money/parse.ts';
import { deed, say } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { Reader } from '../../../parts/reader.ts';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../../trouble.ts';
import quote from '../quote.module.css';

/** Pay back what is over on an invoice. */
export function RefundForm({ invoice, home, today, onClose }: { invoice: Invoice; home: string; today: string; onClose: () => void }) {
  const { currency, over } = invoice;
  const [typed, setTyped] = useState({ amount: fixedText(majorOf(over), exponentOf(currency)), on: today, how: 'transfer', rate: '' });
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const foreign = currency !== home;
  const keep = async (): Promise<void> => {
    const reader = new Reader();
    const amount = reader.take('amount', parseAmount(typed.amount, exponentOf(currency)));
    const rate = foreign ? reader.take('rate', parseAmount(typed.rate, 9)) : undefined;
    setTrouble(reader.trouble);
    if (reader.trouble || amount === undefined) return;
    const { on, how } = typed;
    const done = await deed(
      () =>
        client.payments.refund({
          clientId: invoice.clientId,
          invoiceId: invoice.id,
          amount: amountOf(amount, currency),
          ...(rate === undefined ? {} : { rate: { rate, date: on } }),
          on,
          how,
          note: '',
          key: crypto.randomUUID(),
        }),
      setTrouble,
    );
    if (!done) return;
    say('Noted as paid back.');
    onClose();
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
    <EditorForm label="Pay back what is over" className={quote.inside} onKeep={() => void keep()} onLeave={onClose}>
      <div className={quote.edit}>
        {field('amount', 'What goes back', { figures: true, unit: currency })}
        {field('on', 'On', { type: 'date' })}
        {foreign ? field('rate', `${home} for one ${currency}`, { figures: true }) : null}
        {field('how', 'How')}
      </div>
      {trouble && !trouble.fields ? <TroubleNote trouble={trouble} /> : null}
      <div className={quote.buttons}>
        <Button type="submit">It was paid back</Button>
        <Button kind="quiet" onPress={onClose}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}

/** Use what the client has as credit for an invoice: as much as both allow. */
export function UseCreditForm({ invoice, credit, onClose }: { invoice: Invoice; credit: Money; onClose: () => void }) {
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const amount = compare(credit, invoice.open) < 0 ? credit : invoice.open;
  const keep = async (): Promise<void> => {
    const { clientId, id: invoiceId } = invoice;
    if (clientId === null) return;
    const done = await deed(() => client.payments.applyCredit({ clientId, invoiceId, amount, key: crypto.randomUUID() }), setTrouble);
    if (!done) return;
    say(`${formatMoney(amount, { code: true })} of credit is used for ${invoice.number}.`);
    onClose();
  };
  return (
    <EditorForm label="Use their credit" className={quote.inside} onKeep={() => void keep()} onLeave={onClose}>
      <p>{`${formatMoney(credit, { code: true })} is their credit; ${formatMoney(amount)} of it would go on ${invoice.number}.`}</p>
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={quote.buttons}>
        <Button type="submit">Use it</Button>
        <Button kind="quiet" onPress={onClose}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}

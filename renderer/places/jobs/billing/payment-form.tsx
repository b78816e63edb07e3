import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { Invoice } from '../../../../core/contract/invoices.ts';
import { exponentOf } from '../../../../core/money/currencies.ts';
import { fixedText } from '../../../../core/money/exact.ts';
import { formatMoney } from '../../../../core/money/format.ts';
import { add, amountOf, majorOf, type Money } from '../../../../core/money/money.ts';
import { parseAmount } from '../../../../core/money/parse.ts';
import { dateInWords } from '../../../../core/words/dates.ts';
import { ask } from '../../../ask.ts';
import { deed, say } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { Reader } from '../../../parts/reader.ts';
import { Segments } from '../../../parts/segments.tsx';
import { Tick } from '../../../parts/tick.tsx';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { useSettled } from '../../../parts/use-settled.ts';
import { paymentIn } from '../../../../core/invoices/settle.ts';
import { fieldTrouble } from '../../../trouble.ts';
import quote from '../quote.module.css';
import { proposed, type TypedPayment } from './typed-payment.ts';
import style from './billing.module.css';

type Props = { invoice: Invoice; home: string; today: string; onClose: () => void };

/** Money that came: for this invoice, or for what the client owes oldest first. What is over is asked about. */
export function PaymentForm({ invoice, home, today, onClose }: Props) {
  const { currency } = invoice;
  const payable = add(invoice.open, invoice.writtenOff);
  const [typed, setTyped] = useState<TypedPayment>({
    on: today,
    amount: fixedText(majorOf(payable), exponentOf(currency)),
    currency,
    rate: '',
    settles: fixedText(majorOf(payable), exponentOf(currency)),
    how: 'transfer',
    note: '',
    spread: 'this',
    toCredit: false,
  });
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const settled = useSettled(typed);
  const read = readPayment(settled, home);
  const { data } = useQuery(
    ask.payments.propose.queryOptions({
      input: { clientId: invoice.clientId, amount: read.amount ?? { minor: 0, currency }, on: settled.on || today, ...read.rated },
      enabled: settled.spread === 'oldest' && read.amount !== undefined,
      placeholderData: keepPreviousData,
    }),
  );
  const proposal = proposed(invoice, payable, settled, read.amount, read.comes(currency), data);
  const set = (part: Partial<TypedPayment>): void => {
    setTrouble(null);
    setTyped({ ...typed, ...part });
  };
  const keep = async (): Promise<void> => {
    const now = readPayment(typed, home);
    if (now.trouble || !now.amount) return setTrouble(now.trouble);
    const { parts } = proposed(invoice, payable, typed, now.amount, now.comes(currency), data);
    const { on, how, note, toCredit } = typed;
    const done = await deed(
      () =>
        client.payments.record({
          ...(invoice.clientId ? { clientId: invoice.clientId } : {}),
          on,
          how,
          note,
          amount: now.amount as Money,
          ...now.rated,
          parts: parts.map(({ invoiceId, amount }) => ({ invoiceId, amount })),
          toCredit,
          key: crypto.randomUUID(),
        }),
      setTrouble,
    );
    if (!done) return;
    say(`${formatMoney(done.payment.amount, { code: true })} is recorded.`);
    onClose();
  };
  const field = (name: 'on' | 'amount' | 'rate' | 'settles' | 'how' | 'note', label: string, more: object = {}) => (
    <Field label={label} value={typed[name]} onChange={(value) => set({ [name]: value })} error={fieldTrouble(trouble, name)} {...more} />
  );
  const currencies = [...new Set([currency, home])];
  const foreign = typed.currency !== home;
  return (
    <EditorForm label={`Record a payment for ${invoice.number}`} className={quote.inside} onKeep={() => void keep()} onLeave={onClose}>
      <h3>Record a payment</h3>
      {currencies.length > 1 ? (
        <Segments
          bare
          label="Currency that came"
          value={typed.currency}
          options={currencies.map((value) => ({ value, label: value }))}
          onChange={(value) => set({ currency: value })}
        />
      ) : null}
      <div className={quote.edit}>
        {field('amount', 'What came', { figures: true, unit: typed.currency, inputMode: 'decimal' })}
        {field('on', 'On', { type: 'date' })}
        {foreign ? field('rate', `${home} for one ${typed.currency}`, { figures: true, hint: 'On the date of payment.' }) : null}
        {typed.currency !== currency && currency !== home ? field('settles', 'Settles', { figures: true, unit: currency }) : null}
        {field('how', 'How')}
        {field('note', 'Note')}
      </div>
      {typed.currency === currency ? (
        <Segments
          bare
          label="What it is for"
          value={typed.spread}
          options={[
            { value: 'this', label: `for ${invoice.number}` },
            { value: 'oldest', label: 'for what is due longest first' },
          ]}
          onChange={(spread) => set({ spread })}
        />
      ) : null}
      <dl className={style.parts} aria-live="polite">
        {proposal.parts.map((part) => (
          <Part key={part.invoiceId} {...part} />
        ))}
      </dl>
      {proposal.over.minor > 0 ? (
        <Tick checked={typed.toCredit} onChange={(toCredit) => set({ toCredit })}>
          {`Keep ${formatMoney(proposal.over, { code: true })} as credit of the client`}
        </Tick>
      ) : null}
      {trouble && !trouble.fields ? <TroubleNote trouble={trouble} /> : null}
      <div className={quote.buttons}>
        <Button type="submit">Record it</Button>
        <Button kind="quiet" onPress={onClose}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}

function Part({ number, amount, dueDate }: { number: string; amount: Money; dueDate: string }) {
  return (
    <>
      <dt>
        {number} <span className={style.second}>{`due ${dateInWords(dueDate)}`}</span>
      </dt>
      <dd>{formatMoney(amount)}</dd>
    </>
  );
}

/** What was typed, as the store takes it. `comes` is what the money comes to in a currency of invoices, where its rate says that. */
function readPayment(typed: TypedPayment, home: string) {
  const reader = new Reader();
  const read = reader.take('amount', parseAmount(typed.amount, exponentOf(typed.currency)));
  const rate = typed.currency === home ? undefined : reader.take('rate', parseAmount(typed.rate, 9));
  if (typed.on === '') reader.refuse('on', 'is empty; say when it came');
  const amount = read === undefined ? undefined : amountOf(read, typed.currency);
  const dated = rate === undefined ? null : { rate, date: typed.on };
  const comes = (currency: string): Money | null => (amount ? paymentIn(currency, { amount, rate: dated, home }) : null);
  return { amount, comes, rated: dated ? { rate: dated } : {}, trouble: reader.trouble };
}

import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { Invoice } from '../../../../core/contract/invoices.ts';
import { exponentOf } from '../../../../core/money/currencies.ts';
import { fixedText } from '../../../../core/money/exact.ts';
import { formatMoney } from '../../../../core/money/format.ts';
import { amountOf, majorOf } from '../../../../core/money/money.ts';
import { parseAmount } from '../../../../core/money/parse.ts';
import { deed, say } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { Reader } from '../../../parts/reader.ts';
import { Segments } from '../../../parts/segments.tsx';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../../trouble.ts';
import quote from '../quote.module.css';

/** A credit note: all that is left of the invoice, or amounts of its lines. */
export function CreditForm({ invoice, onClose }: { invoice: Invoice; onClose: () => void }) {
  const [how, setHow] = useState<'all' | 'part'>('all');
  const [reason, setReason] = useState('');
  const [typed, setTyped] = useState<Record<string, string>>({});
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const places = exponentOf(invoice.currency);
  const left = invoice.left.filter((line) => line.left.minor !== 0);
  const keep = async (): Promise<void> => {
    const reader = new Reader();
    const lines = left.flatMap(({ id }) => {
      const text = typed[id]?.trim() ?? '';
      const read = how === 'all' || text === '' ? undefined : reader.take(id, parseAmount(text, places));
      return read === undefined ? [] : [{ id, amount: amountOf(read, invoice.currency) }];
    });
    setTrouble(reader.trouble);
    if (reader.trouble) return;
    const input = { id: invoice.id, lines: how === 'all' ? ('all' as const) : lines, reason, key: crypto.randomUUID() };
    const done = await deed(() => client.invoices.credit(input), setTrouble);
    if (!done) return;
    say(`Credit note ${done.invoice.number} is issued. Save its PDF and send it.`);
    onClose();
  };
  return (
    <EditorForm label="Credit it" className={quote.inside} onKeep={() => void keep()} onLeave={onClose}>
      <Segments
        bare
        label="How much is credited"
        value={how}
        options={[
          { value: 'all', label: 'all that is left' },
          { value: 'part', label: 'a part' },
        ]}
        onChange={setHow}
      />
      <div className={quote.edit}>
        {how === 'all'
          ? null
          : left.map((line) => (
              <Field
                key={line.id}
                label={line.what}
                figures
                placeholder={fixedText(majorOf(line.left), places)}
                hint={`${formatMoney(line.left)} is left${invoice.content.included ? ', tax included' : ', before tax'}.`}
                value={typed[line.id] ?? ''}
                onChange={(value) => setTyped({ ...typed, [line.id]: value })}
                error={fieldTrouble(trouble, line.id)}
              />
            ))}
        <div className={quote.wide}>
          <Field label="Why, printed on it" value={reason} onChange={setReason} />
        </div>
      </div>
      {trouble && !trouble.fields ? <TroubleNote trouble={trouble} /> : null}
      <div className={quote.buttons}>
        <Button
          type="submit"
          isDisabled={reason.trim() === '' || (how === 'part' && Object.values(typed).every((text) => text.trim() === ''))}
        >
          Issue the credit note
        </Button>
        <Button kind="quiet" onPress={onClose}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}

import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { InvoiceDraft } from '../../../../core/contract/invoices.ts';
import { formatNumber } from '../../../../core/money/format.ts';
import { parseAmount, parseQuantity } from '../../../../core/money/parse.ts';
import { isOwnLine } from '../../../../core/quotes/line.ts';
import type { ChangeBill } from '../../../bills.ts';
import { Button } from '../../../parts/button.tsx';
import { Field } from '../../../parts/field.tsx';
import { Reader } from '../../../parts/reader.ts';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../../trouble.ts';
import quote from '../quote.module.css';

/** What can be changed on a line of a bill: its words, quantity and price. A change is one step that can be taken back. */
export function BillLineForm({ line, change }: { line: InvoiceDraft['lines'][number]; change: ChangeBill }) {
  const before = { what: line.what, quantity: formatNumber(line.quantity), unitPrice: line.unitPrice.replace(/^-/, '') };
  const [typed, setTyped] = useState(before);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const keep = async (): Promise<void> => {
    const reader = new Reader();
    if (typed.what.trim() === '') reader.refuse('what', 'is empty; say what it is for');
    const quantity = reader.take('quantity', parseQuantity(typed.quantity, line.unit));
    const unitPrice = reader.take('unitPrice', parseAmount(typed.unitPrice, 9));
    setTrouble(reader.trouble);
    if (reader.trouble || quantity === undefined || unitPrice === undefined) return;
    const set = {
      ...(typed.what === before.what ? {} : { what: typed.what }),
      ...(typed.quantity === before.quantity ? {} : { quantity }),
      ...(typed.unitPrice === before.unitPrice ? {} : { unitPrice }),
    };
    if (Object.keys(set).length > 0) await change([{ op: 'set', id: line.id, ...set }], setTrouble);
  };
  const field = (name: keyof typeof typed, label: string, more: { figures?: boolean; unit?: string } = {}) => (
    <Field
      label={label}
      value={typed[name]}
      onChange={(value) => setTyped({ ...typed, [name]: value })}
      error={fieldTrouble(trouble, name)}
      {...more}
    />
  );
  return (
    <form
      className={quote.edit}
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <div className={quote.wide}>{field('what', 'What')}</div>
      {field('quantity', 'Quantity', { figures: true, ...(line.unit ? { unit: line.unit } : {}) })}
      {field('unitPrice', 'Unit price', { figures: true })}
      {trouble && !trouble.fields ? <TroubleNote trouble={trouble} /> : null}
      <div className={quote.buttons}>
        <Button type="submit">Change</Button>
        {line.changed && !isOwnLine(line.id) ? (
          <Button onPress={() => void change([{ op: 'restore', id: line.id }])}>As it came out</Button>
        ) : null}
        <Button kind="quiet" onPress={() => void change([{ op: 'drop', id: line.id }])} aria-label={`Drop ${line.what}`}>
          Drop
        </Button>
      </div>
    </form>
  );
}

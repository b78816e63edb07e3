import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { QuoteLine } from '../../../core/contract/quotes.ts';
import { exponentOf } from '../../../core/money/currencies.ts';
import { fixedText } from '../../../core/money/exact.ts';
import { formatNumber } from '../../../core/money/format.ts';
import { majorOf } from '../../../core/money/money.ts';
import { parseAmount, parseQuantity } from '../../../core/money/parse.ts';
import type { ChangeDraft } from '../../drafts.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Reader } from '../../parts/reader.ts';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../trouble.ts';
import style from './quote.module.css';
import { TaxFields } from './tax-fields.tsx';
import { taxChange, taxNow, taxOptions } from './tax-of-line.ts';

type Props = { line: QuoteLine; change: ChangeDraft; taxes: readonly string[] };

function typedFrom(line: QuoteLine) {
  const { cost } = line;
  return {
    quantity: formatNumber(line.quantity),
    // A discount is typed as what it takes off.
    unitPrice: line.section === 'discount' ? line.unitPrice.replace(/^-/, '') : line.unitPrice,
    cost: cost && cost.minor > 0 ? fixedText(majorOf(cost), exponentOf(cost.currency)) : '',
  };
}

/** What can be changed on a line: quantity, price, its cost to me and its tax. A change is one step that can be taken back. */
export function LineForm({ line, change, taxes }: Props) {
  const before = typedFrom(line);
  const [typed, setTyped] = useState(before);
  const [tax, setTax] = useState({ option: taxNow(taxes, line.bears), reason: '' });
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const options = taxOptions(taxes, line.bears);

  const keep = async (): Promise<void> => {
    const reader = new Reader();
    const quantity = reader.take('quantity', parseQuantity(typed.quantity, line.unit));
    const unitPrice = reader.take('unitPrice', parseAmount(typed.unitPrice, 9));
    const cost = typed.cost.trim() === '' ? '0' : reader.take('cost', parseAmount(typed.cost, 9));
    if (quantity === undefined || unitPrice === undefined || cost === undefined) {
      setTrouble(reader.trouble);
      return;
    }
    const set = {
      ...(typed.quantity === before.quantity ? {} : { quantity }),
      ...(typed.unitPrice === before.unitPrice ? {} : { unitPrice }),
      ...(typed.cost === before.cost ? {} : { cost }),
    };
    const taxed = tax.option !== taxNow(taxes, line.bears) || tax.reason.trim() !== '';
    const changes = [
      ...(Object.keys(set).length > 0 ? [{ op: 'set' as const, id: line.id, ...set }] : []),
      ...(taxed
        ? taxChange(
            options.find(({ value }) => value === tax.option),
            tax.reason,
            [line.id],
          )
        : []),
    ];
    setTrouble(null);
    if (changes.length > 0) await change(changes, setTrouble);
  };
  const figures = (name: keyof typeof typed, label: string, more: { unit?: string; placeholder?: string } = {}) => (
    <Field
      label={label}
      figures
      inputMode="decimal"
      value={typed[name]}
      onChange={(value) => setTyped({ ...typed, [name]: value })}
      error={fieldTrouble(trouble, name)}
      {...more}
    />
  );
  return (
    <form
      className={style.edit}
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      {figures('quantity', 'Quantity', line.unit ? { unit: line.unit } : {})}
      {figures('unitPrice', 'Unit price')}
      {figures('cost', 'Costs me, never printed', { placeholder: 'nothing' })}
      {taxes.length > 0 ? <TaxFields typed={tax} options={options} onChange={setTax} trouble={trouble} /> : null}
      {trouble && !trouble.fields ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit">Change</Button>
        {line.changed ? <Button onPress={() => void change([{ op: 'restore', id: line.id }])}>As the card says</Button> : null}
        <Button kind="quiet" onPress={() => void change([{ op: 'drop', id: line.id }])} aria-label={`Drop ${line.what}`}>
          Drop
        </Button>
      </div>
    </form>
  );
}

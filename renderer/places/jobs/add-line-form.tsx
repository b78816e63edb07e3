import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import { Section } from '../../../core/contract/quotes.ts';
import { parseAmount, parseQuantity } from '../../../core/money/parse.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { Reader } from '../../parts/reader.ts';
import { fieldTrouble } from '../../trouble.ts';
import { QuoteForm, type QuoteFormProps } from './quote-form.tsx';

const sectionOptions = Section.options.map((section) => ({ value: section, label: section }));

/** A line of one's own. `costs` where it may cost me something. */
export function AddLineForm({ change, onClose, costs = true }: QuoteFormProps & { costs?: boolean }) {
  const [typed, setTyped] = useState({ what: '', section: 'extras' as Section, quantity: '1', unit: '', unitPrice: '', cost: '' });
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const set = (part: Partial<typeof typed>): void => setTyped({ ...typed, ...part });
  const add = async (): Promise<void> => {
    const reader = new Reader();
    const { what, section, unit } = typed;
    if (what.trim() === '') reader.refuse('what', 'is empty; say what it is for');
    const quantity = reader.take('quantity', parseQuantity(typed.quantity, unit));
    const unitPrice = reader.take('unitPrice', parseAmount(typed.unitPrice, 9));
    const cost = typed.cost.trim() === '' ? undefined : reader.take('cost', parseAmount(typed.cost, 9));
    if (reader.trouble || quantity === undefined || unitPrice === undefined) {
      setTrouble(reader.trouble);
      return;
    }
    const line = { op: 'add' as const, section, what, quantity, unit, unitPrice, ...(cost === undefined ? {} : { cost }) };
    if (await change([line], setTrouble)) onClose();
  };
  const figures = (name: 'quantity' | 'unitPrice' | 'cost', label: string, placeholder = '') => (
    <Field
      label={label}
      figures
      inputMode="decimal"
      placeholder={placeholder}
      value={typed[name]}
      onChange={(value) => set({ [name]: value })}
      error={fieldTrouble(trouble, name)}
    />
  );
  return (
    <QuoteForm label="Add a line" keep="Add" onKeep={() => void add()} onClose={onClose} trouble={trouble}>
      <Field label="What" value={typed.what} onChange={(what) => set({ what })} error={fieldTrouble(trouble, 'what')} />
      <Choice label="Section" value={typed.section} options={sectionOptions} onChange={(section) => set({ section })} />
      {figures('quantity', 'Quantity')}
      <Field
        label="Unit"
        placeholder="days, hours, none"
        value={typed.unit}
        onChange={(unit) => set({ unit })}
        error={fieldTrouble(trouble, 'unit')}
      />
      {figures('unitPrice', 'Unit price')}
      {costs ? figures('cost', 'Costs me, never printed', 'nothing') : null}
    </QuoteForm>
  );
}

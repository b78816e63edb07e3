import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import { QuoteForm, type QuoteFormProps } from './quote-form.tsx';
import { TaxFields } from './tax-fields.tsx';
import { taxChange, taxOptions } from './tax-of-line.ts';

/** The tax of every line at once, such as reverse charge for a business abroad. */
export function TaxForm({ change, onClose, taxes }: QuoteFormProps & { taxes: readonly string[] }) {
  const options = taxOptions(taxes);
  const [typed, setTyped] = useState({ option: 'taxed', reason: '' });
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const keep = async (): Promise<void> => {
    const option = options.find(({ value }) => value === typed.option);
    if (await change(taxChange(option, typed.reason), setTrouble)) onClose();
  };
  return (
    <QuoteForm label="Tax of all lines" keep="Set all lines" onKeep={() => void keep()} onClose={onClose} trouble={trouble}>
      <TaxFields typed={typed} options={options} onChange={setTyped} trouble={trouble} />
    </QuoteForm>
  );
}

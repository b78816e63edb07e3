import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { Offer } from '../../../core/contract/quotes.ts';
import { Field } from '../../parts/field.tsx';
import { Reader } from '../../parts/reader.ts';
import { fieldTrouble } from '../../trouble.ts';
import { QuoteForm, type QuoteFormProps } from './quote-form.tsx';
import style from './quote.module.css';

const beginnings = ['One camera', 'Two cameras', ''];

/** Two or three offers on one paper, by their names. */
export function OffersForm({ change, onClose, offers }: QuoteFormProps & { offers: readonly Offer[] }) {
  const [names, setNames] = useState(() => (offers.length > 0 ? beginnings.map((_, at) => offers[at]?.name ?? '') : beginnings));
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const keep = async (): Promise<void> => {
    const last = names.findLastIndex((name) => name.trim() !== '');
    const reader = new Reader();
    for (const [at, name] of names.slice(0, last + 1).entries())
      if (name.trim() === '') reader.refuse(`names.${at}`, 'is empty; name it, or empty those after it too');
    if (reader.trouble) setTrouble(reader.trouble);
    else if (await change([{ op: 'offers', names: names.slice(0, last + 1) }], setTrouble)) onClose();
  };
  return (
    <QuoteForm label="Offers on this paper" keep="Set the offers" onKeep={() => void keep()} onClose={onClose} trouble={trouble}>
      {names.map((name, at) => (
        <Field
          key={`offer ${at + 1}`}
          label={`Offer ${at + 1}`}
          placeholder="none"
          value={name}
          onChange={(next) => setNames(names.map((each, index) => (index === at ? next : each)))}
          error={fieldTrouble(trouble, `names.${at}`)}
        />
      ))}
      <p className={style.second}>Fewer than two make one plain quote. Each begins with the same lines.</p>
    </QuoteForm>
  );
}

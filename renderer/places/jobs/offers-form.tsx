import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { Offer } from '../../../core/contract/quotes.ts';
import { Field } from '../../parts/field.tsx';
import { Reader } from '../../parts/reader.ts';
import { fieldTrouble } from '../../trouble.ts';
import { QuoteForm, type QuoteFormProps } from './quote-form.tsx';
import style from './quote.module.css';

const beginnings = ['One camera', 'Two cameras', ''];

/** Two or three offers on one paper, by their names. An emptied name takes that offer out; the others keep their lines. */
export function OffersForm({ change, onClose, offers }: QuoteFormProps & { offers: readonly Offer[] }) {
  const plain = offers.length === 0;
  const [names, setNames] = useState(() => (plain ? beginnings : beginnings.map((_, at) => offers[at]?.name ?? '')));
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const keep = async (): Promise<void> => {
    const named = names.flatMap((name, at) => (name.trim() === '' ? [] : [{ name, from: plain ? 1 : (offers[at]?.number ?? null) }]));
    const reader = new Reader();
    if (plain && named.length < 2) {
      const empty = names.findIndex((name) => name.trim() === '');
      reader.refuse(`names.${empty}`, 'is empty; a paper with offers has two or three');
    }
    const asked = { op: 'offers' as const, names: named.map(({ name }) => name), from: named.map(({ from }) => from) };
    if (reader.trouble) setTrouble(reader.trouble);
    else if (await change([asked], setTrouble)) onClose();
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
      <p className={style.hint}>
        {plain
          ? 'Each begins with the lines as they are now.'
          : 'An emptied name takes that offer out; the others keep their lines. One alone is a plain quote. A new one begins with what holds in all offers.'}
      </p>
    </QuoteForm>
  );
}

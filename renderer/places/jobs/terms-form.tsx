import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { Terms } from '../../../core/contract/rates.ts';
import { Reader } from '../../parts/reader.ts';
import { TermsFields } from '../rates/terms-fields.tsx';
import { termsFrom, typedTerms } from '../rates/typed-card.ts';
import { QuoteForm, type QuoteFormProps } from './quote-form.tsx';
import style from './quote.module.css';

/** Only what differs is kept by hand: the rest goes on following the rate card. */
function differing(now: Terms, before: Terms): Partial<Terms> {
  const same = (key: string): boolean => JSON.stringify(now[key as keyof Terms]) === JSON.stringify(before[key as keyof Terms]);
  return Object.fromEntries(Object.entries(now).filter(([key]) => !same(key)));
}

/** The terms of this quote alone; the rate card stays as it is. */
export function TermsForm({ change, onClose, terms }: QuoteFormProps & { terms: Terms }) {
  const [typed, setTyped] = useState(() => typedTerms(terms));
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const keep = async (): Promise<void> => {
    const reader = new Reader();
    const changed = differing(termsFrom(typed, reader), termsFrom(typedTerms(terms), reader));
    if (reader.trouble) setTrouble(reader.trouble);
    else if (Object.keys(changed).length === 0 || (await change([{ op: 'terms', terms: changed }], setTrouble))) onClose();
  };
  return (
    <QuoteForm label="Terms of this quote" keep="Keep these terms" onKeep={() => void keep()} onClose={onClose} trouble={trouble}>
      <div className={style.whole}>
        <TermsFields terms={typed} onChange={setTyped} trouble={trouble} />
      </div>
    </QuoteForm>
  );
}

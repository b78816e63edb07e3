import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { DraftChange } from '../../../core/contract/quotes.ts';
import { parseAmount, parseQuantity } from '../../../core/money/parse.ts';
import { ask } from '../../ask.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { Reader } from '../../parts/reader.ts';
import { fieldTrouble } from '../../trouble.ts';
import { QuoteForm, type QuoteFormProps } from './quote-form.tsx';
import style from './quote.module.css';

/** A hand by their day rate in People, or a sub-hire at its price. Wear comes from the job's kit by itself. */
export function CostForm({ change, onClose, currency }: QuoteFormProps & { currency: string }) {
  const { data } = useQuery(ask.people.hands.queryOptions({ input: {} }));
  const [typed, setTyped] = useState({ hand: '', days: '', what: '', cost: '' });
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const set = (part: Partial<typeof typed>): void => setTyped({ ...typed, ...part });
  const hands = data?.hands ?? [];
  const keep = async (): Promise<void> => {
    const reader = new Reader();
    const days = typed.days.trim() === '' ? undefined : reader.take('days', parseQuantity(typed.days, 'days'));
    const hired = typed.what.trim() !== '' || typed.cost.trim() !== '';
    if (hired && typed.what.trim() === '') reader.refuse('what', 'is empty; say what is rented');
    const cost = hired ? reader.take('cost', parseAmount(typed.cost, 9)) : undefined;
    if (!hired && typed.hand === '') reader.refuse('what', 'is empty; name a hand or what is rented');
    if (reader.trouble) {
      setTrouble(reader.trouble);
      return;
    }
    const changes: DraftChange[] = [
      ...(typed.hand === '' ? [] : [{ op: 'hand' as const, handId: typed.hand, ...(days === undefined ? {} : { days }) }]),
      ...(cost === undefined ? [] : [{ op: 'sub-hire' as const, what: typed.what, cost }]),
    ];
    if (await change(changes, setTrouble)) onClose();
  };
  return (
    <QuoteForm label="Costs to me, never printed" keep="Count them" onKeep={() => void keep()} onClose={onClose} trouble={trouble}>
      {hands.length > 0 ? (
        <>
          <Choice
            label="Hand"
            value={typed.hand}
            options={[{ value: '', label: 'none' }, ...hands.map(({ id, name }) => ({ value: id, label: name }))]}
            onChange={(hand) => set({ hand })}
          />
          <Field
            label="Days of the hand"
            figures
            inputMode="decimal"
            placeholder="all dates"
            value={typed.days}
            onChange={(next) => set({ days: next })}
            error={fieldTrouble(trouble, 'days')}
          />
        </>
      ) : null}
      <Field
        label="Sub-hire of"
        placeholder="nothing"
        value={typed.what}
        onChange={(what) => set({ what })}
        error={fieldTrouble(trouble, 'what')}
      />
      <Field
        label="Costs"
        unit={currency}
        figures
        inputMode="decimal"
        value={typed.cost}
        onChange={(next) => set({ cost: next })}
        error={fieldTrouble(trouble, 'cost')}
      />
      <p className={style.hint}>
        {hands.length > 0 ? '' : 'Nobody is in People as a hand yet. '}
        Wear is counted by itself, from the kit that the job needs.
      </p>
    </QuoteForm>
  );
}

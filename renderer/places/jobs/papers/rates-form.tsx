import { useState } from 'react';
import type { CustomsList, ListRate } from '../../../../core/contract/documents.ts';
import { parseNumber } from '../../../../core/money/parse.ts';
import { Button } from '../../../parts/button.tsx';
import { Field } from '../../../parts/field.tsx';
import { Reader } from '../../../parts/reader.ts';
import { fieldTrouble } from '../../../trouble.ts';
import type { Trouble } from '../../../../core/contract/base.ts';
import style from './papers.module.css';

type Props = { list: CustomsList; today: string; home: string; onRates: (rates: ListRate[]) => void };

/** Dated rates of the other currencies on a list, so that it has one value in all; without them they stand apart. @param home currency */
export function RatesForm({ list, today, home, onRates }: Props) {
  const others = list.values.map(({ currency }) => currency).filter((currency) => currency !== home);
  const [typed, setTyped] = useState<Record<string, string>>({});
  const [date, setDate] = useState(today);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const use = (): void => {
    const reader = new Reader();
    const rates = others.flatMap((currency) => {
      const text = (typed[currency] ?? '').trim();
      if (text === '') return [];
      const rate = reader.take(currency, parseNumber(text));
      if (rate !== undefined && Number(rate) <= 0) reader.refuse(currency, 'is not above zero; give what one unit is worth');
      return rate === undefined ? [] : [{ currency, rate, date }];
    });
    if (date === '') reader.refuse('date', 'is missing; a rate has a date');
    setTrouble(reader.trouble);
    if (!reader.trouble) onRates(rates);
  };
  return (
    <div className={style.rates} role="group" aria-label="Rates for one value in all">
      {others.map((currency) => (
        <Field
          key={currency}
          label={`${home} for one ${currency}`}
          figures
          inputMode="decimal"
          value={typed[currency] ?? ''}
          placeholder="not known"
          onChange={(text) => setTyped({ ...typed, [currency]: text })}
          error={fieldTrouble(trouble, currency)}
        />
      ))}
      <Field label="Rate of" type="date" value={date} onChange={setDate} error={fieldTrouble(trouble, 'date')} />
      <Button onPress={use}>Use the rate</Button>
    </div>
  );
}

import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { PublicHoliday } from '../../../core/contract/setup.ts';
import { dateInWords } from '../../../core/words/dates.ts';
import { Tick } from '../../parts/tick.tsx';
import { QuoteForm, type QuoteFormProps } from './quote-form.tsx';
import style from './quote.module.css';

type Props = QuoteFormProps & {
  dates: readonly string[];
  now: readonly string[];
  /** What a public list says of those dates. */
  listed: readonly PublicHoliday[];
};

/** Which dates of the job are public holidays where it is. */
export function HolidaysForm({ change, onClose, dates, now, listed }: Props) {
  const [ticked, setTicked] = useState<readonly string[]>(now);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const keep = async (): Promise<void> => {
    const holidays = dates.filter((date) => ticked.includes(date));
    if (await change([{ op: 'holidays', dates: holidays }], setTrouble)) onClose();
  };
  return (
    <QuoteForm label="Public holidays" keep="Price them so" onKeep={() => void keep()} onClose={onClose} trouble={trouble}>
      <div role="group" aria-label="Dates of the job" className={style.ticks}>
        {dates.map((date) => (
          <Tick
            key={date}
            checked={ticked.includes(date)}
            onChange={(on) => setTicked(on ? [...ticked, date] : ticked.filter((each) => each !== date))}
          >
            {[dateInWords(date), ...listed.filter((day) => day.date === date).map((day) => day.name)].join(', ')}
          </Tick>
        ))}
      </div>
    </QuoteForm>
  );
}

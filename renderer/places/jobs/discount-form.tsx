import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import { Section } from '../../../core/contract/quotes.ts';
import { parseAmount, parseNumber } from '../../../core/money/parse.ts';
import { discountedSections } from '../../../core/quotes/discount.ts';
import type { Shown } from '../../drafts.ts';
import { Field } from '../../parts/field.tsx';
import { Reader } from '../../parts/reader.ts';
import { Tick } from '../../parts/tick.tsx';
import { fieldTrouble } from '../../trouble.ts';
import { QuoteForm, type QuoteFormProps } from './quote-form.tsx';
import style from './quote.module.css';

const sections = Section.options.filter((section) => section !== 'discount');
const none = { percent: '0', fixed: '0', over: null };
/** An amount that is nothing stands as an empty input. */
const typedAmount = (amount: string): string => (amount === '0' ? '' : amount);

/** Per cent, a fixed sum or both, over the sections that are ticked. */
export function DiscountForm({ change, onClose, shown, currency }: QuoteFormProps & { shown: Shown; currency: string }) {
  const now = shown.discount ?? none;
  const [percent, setPercent] = useState(typedAmount(now.percent));
  const [fixed, setFixed] = useState(typedAmount(now.fixed));
  const usual = discountedSections(none);
  const [over, setOver] = useState<readonly Section[]>(now.over ?? usual);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const keep = async (): Promise<void> => {
    const reader = new Reader();
    const read = {
      percent: percent.trim() === '' ? '0' : reader.take('percent', parseNumber(percent)),
      fixed: fixed.trim() === '' ? '0' : reader.take('fixed', parseAmount(fixed, 9)),
    };
    if (over.length === 0) reader.refuse('over', 'holds no section; tick what the discount is on');
    if (reader.trouble || read.percent === undefined || read.fixed === undefined) {
      setTrouble(reader.trouble);
      return;
    }
    const asUsual = sections.every((section) => over.includes(section) === usual.includes(section));
    const asked = { op: 'discount' as const, percent: read.percent, fixed: read.fixed, ...(asUsual ? {} : { over: [...over] }) };
    if (await change([asked], setTrouble)) onClose();
  };
  return (
    <QuoteForm label="Discount" keep="Take it off" onKeep={() => void keep()} onClose={onClose} trouble={trouble}>
      <Field
        label="Per cent, worked out first"
        unit="%"
        figures
        inputMode="decimal"
        placeholder="none"
        value={percent}
        onChange={setPercent}
        error={fieldTrouble(trouble, 'percent')}
      />
      <Field
        label="Fixed sum, after it"
        unit={currency}
        figures
        inputMode="decimal"
        placeholder="none"
        value={fixed}
        onChange={setFixed}
        error={fieldTrouble(trouble, 'fixed')}
      />
      <div role="group" aria-label="On which sections" className={style.ticks}>
        {sections.map((section) => (
          <Tick
            key={section}
            checked={over.includes(section)}
            onChange={(on) => setOver(sections.filter((each) => (each === section ? on : over.includes(each))))}
          >
            {section}
          </Tick>
        ))}
      </div>
      <Wrong sentence={fieldTrouble(trouble, 'over')} />
    </QuoteForm>
  );
}

function Wrong({ sentence }: { sentence: string | undefined }) {
  return sentence ? <p role="alert" className={style.wrong}>{`What it is on ${sentence}.`}</p> : null;
}

import { Field } from '../../parts/field.tsx';
import { Rows } from '../../parts/rows.tsx';
import { fieldTrouble } from '../../trouble.ts';
import style from '../../parts/sheet.module.css';
import { termTexts, type TypedTerms } from './typed-card.ts';
import type { CardForm } from './use-card-form.ts';

const textLabels: Record<(typeof termTexts)[number], string> = {
  overtimeApprover: 'Who approves overtime',
  illness: 'Illness',
  weather: 'Weather',
  usage: 'Usage',
  originals: 'Originals',
  postponement: 'Postponement',
};

/** The terms that a quote freezes. */
export function TermsFields({ form }: { form: CardForm }) {
  const { terms } = form.typed;
  const change = (part: Partial<TypedTerms>): void => form.change({ terms: { ...terms, ...part } });
  const number = (name: 'validDays' | 'payDays' | 'rounds' | 'depositPercent', label: string, unit: string) => (
    <Field
      label={label}
      unit={unit}
      figures
      inputMode="decimal"
      value={terms[name]}
      onChange={(value) => change({ [name]: value })}
      error={fieldTrouble(form.trouble, name)}
    />
  );
  return (
    <>
      <div className={style.grid}>
        {number('validDays', 'A quote is valid', 'days')}
        {number('depositPercent', 'Deposit', '% of gross')}
        {number('payDays', 'Pay within', 'days')}
        {number('rounds', 'Rounds of notes', 'rounds')}
      </div>
      <Rows
        label="Cancellation, before first call"
        columns={[
          { key: 'underHours', label: 'Under, hours', figures: true },
          { key: 'percent', label: 'Owes, %', figures: true },
        ]}
        rows={terms.cancellation}
        onChange={(cancellation) => change({ cancellation })}
        blank={{ underHours: '', percent: '' }}
        add="One more step"
        error={(at, key) => fieldTrouble(form.trouble, `cancellation[${at}].${key}`)}
      />
      <div className={style.texts}>
        {termTexts.map((name) => (
          <Field
            key={name}
            label={textLabels[name]}
            rows={2}
            value={terms[name]}
            onChange={(value) => change({ [name]: value })}
            error={fieldTrouble(form.trouble, name)}
          />
        ))}
      </div>
      <p className={style.second}>Starting points, not legal advice: have them read by somebody who knows your local law.</p>
    </>
  );
}

import { useQuery } from '@tanstack/react-query';
import type { Trouble } from '../../../core/contract/base.ts';
import type { TermsPreset } from '../../../core/contract/rates.ts';
import { ask } from '../../ask.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { Rows } from '../../parts/rows.tsx';
import { fieldTrouble } from '../../trouble.ts';
import style from '../../parts/sheet.module.css';
import { termTexts, typedTerms, type TypedTerms } from './typed-card.ts';

const textLabels: Record<(typeof termTexts)[number], string> = {
  overtimeApprover: 'Who approves overtime',
  illness: 'Illness',
  weather: 'Weather',
  usage: 'Usage',
  originals: 'Originals',
  postponement: 'Postponement',
};

const countings = [
  { value: 'hours', label: 'in hours' },
  { value: 'business days', label: 'in business days' },
] as const;

type Props = { terms: TypedTerms; onChange: (terms: TypedTerms) => void; trouble: Trouble | null };

/** The terms that a quote freezes. */
export function TermsFields({ terms, onChange, trouble }: Props) {
  const change = (part: Partial<TypedTerms>): void => onChange({ ...terms, ...part });
  const number = (name: 'validDays' | 'payDays' | 'rounds' | 'depositPercent', label: string, unit: string) => (
    <Field
      label={label}
      unit={unit}
      figures
      inputMode="decimal"
      value={terms[name]}
      onChange={(value) => change({ [name]: value })}
      error={fieldTrouble(trouble, name)}
    />
  );
  return (
    <>
      <Presets terms={terms} onChange={onChange} />
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
        error={(at, key) => fieldTrouble(trouble, `cancellation[${at}].${key}`)}
      />
      <div className={style.grid}>
        <Choice label="Notice is counted" value={terms.cancelBy} options={countings} onChange={(cancelBy) => change({ cancelBy })} />
      </div>
      {terms.cancelBy === 'business days' ? (
        <p className={style.second}>Every 24 hours of a step count as one business day at home.</p>
      ) : null}
      <div className={style.texts}>
        {termTexts.map((name) => (
          <Field
            key={name}
            label={textLabels[name]}
            rows={2}
            value={terms[name]}
            onChange={(value) => change({ [name]: value })}
            error={fieldTrouble(trouble, name)}
          />
        ))}
      </div>
      <p className={style.second}>Starting points, not legal advice: have them read by somebody who knows your local law.</p>
    </>
  );
}

/** A preset's terms, with the texts that were written already left as they are. */
function presetTerms(preset: TermsPreset, terms: TypedTerms): TypedTerms {
  const own = termTexts.filter((name) => terms[name].trim() !== '').map((name) => [name, terms[name]]);
  return { ...terms, ...typedTerms(preset.terms), ...Object.fromEntries(own) };
}

/** Sets of terms to begin with; the one that stands below says so. */
function Presets({ terms, onChange }: Pick<Props, 'terms' | 'onChange'>) {
  const { data } = useQuery(ask.rates.presets.queryOptions({ input: {} }));
  const typed = JSON.stringify(terms);
  return (
    <ul className={style.presets} aria-label="Terms to begin with">
      {data?.presets.map((preset) => {
        const these = presetTerms(preset, terms);
        const taken = JSON.stringify(these) === typed;
        return (
          <li key={preset.name}>
            <Button onPress={() => onChange(these)} isDisabled={taken}>
              {preset.name}
            </Button>
            <span className={style.second}>{taken ? `Stands below. ${preset.about}` : preset.about}</span>
          </li>
        );
      })}
    </ul>
  );
}

import type { Trouble } from '../../../core/contract/base.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { fieldTrouble } from '../../trouble.ts';
import type { taxOptions } from './tax-of-line.ts';

export type TypedTax = { option: string; reason: string };

/** Taxed or not, and why not. */
export function TaxFields(props: {
  typed: TypedTax;
  options: ReturnType<typeof taxOptions>;
  onChange: (typed: TypedTax) => void;
  trouble: Trouble | null;
}) {
  const { typed, onChange } = props;
  const chosen = props.options.find(({ value }) => value === typed.option)?.chosen;
  return (
    <>
      <Choice label="Tax" value={typed.option} options={props.options} onChange={(option) => onChange({ ...typed, option })} />
      {chosen && chosen.state !== 'rated' ? (
        <Field
          label="Why, printed"
          placeholder="the usual sentence"
          value={typed.reason}
          onChange={(reason) => onChange({ ...typed, reason })}
          error={fieldTrouble(props.trouble, 'reason')}
        />
      ) : null}
    </>
  );
}

import { STARTING_TERMS, TERMS_CAUTION } from '../../../core/papers/terms-default.ts';
import { termsGaps } from '../../../core/papers/terms-text.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Fold } from '../../parts/fold.tsx';
import { fieldTrouble } from '../../trouble.ts';
import type { SetupPart } from './identity-fields.tsx';
import style from './setup.module.css';

/** My terms, edited once; every job fills the gaps from the version that was agreed on. */
export function TermsField({ typed, change, trouble }: SetupPart) {
  const own = typed.termsText.trim() !== '' && typed.termsText.trim() !== STARTING_TERMS;
  return (
    <>
      <p className={style.second}>{TERMS_CAUTION}</p>
      <Field
        label="Terms that a client signs"
        rows={14}
        value={typed.termsText}
        onChange={(termsText) => change({ termsText })}
        error={fieldTrouble(trouble, 'termsText')}
        hint="An empty line parts two paragraphs. A paragraph whose gap has nothing to say for a job is left out there."
      />
      {own ? (
        <div className={style.row}>
          <Button kind="quiet" onPress={() => change({ termsText: STARTING_TERMS })}>
            Back to the starting text
          </Button>
        </div>
      ) : null}
      <Fold title="Gaps that each job fills">
        <dl className={style.figures}>
          {termsGaps.map(({ name, about }) => (
            <Gap key={name} name={name} about={about} />
          ))}
        </dl>
      </Fold>
    </>
  );
}

function Gap({ name, about }: { name: string; about: string }) {
  return (
    <>
      <dt className={style.mono}>{`{${name}}`}</dt>
      <dd>{about}</dd>
    </>
  );
}

import { Field } from '../../parts/field.tsx';
import { fieldTrouble } from '../../trouble.ts';
import type { SetupPart } from './identity-fields.tsx';
import style from './setup.module.css';

/** How invoices are numbered, where money is to go, and what late money costs. */
export function InvoiceFields({ typed, change, trouble }: SetupPart) {
  return (
    <>
      <div className={style.two}>
        <Field
          label="Before the numbers of invoices"
          placeholder="nothing"
          value={typed.series}
          onChange={(series) => change({ series })}
          error={fieldTrouble(trouble, 'series')}
          hint="They run without gaps for each year. Another beginning here starts a run of its own; the old numbers stay."
        />
        <Field
          label="Interest on what is paid late, a year"
          unit="%"
          figures
          inputMode="decimal"
          placeholder="none"
          value={typed.lateInterest}
          onChange={(lateInterest) => change({ lateInterest })}
          error={fieldTrouble(trouble, 'lateInterestPercent')}
          hint="How much the law allows differs from place to place."
        />
      </div>
      <div className={style.two}>
        <Field
          label="Account in the name of"
          value={typed.payName}
          onChange={(payName) => change({ payName })}
          error={fieldTrouble(trouble, 'payTo.name')}
        />
        <Field label="BIC" value={typed.bic} onChange={(bic) => change({ bic })} error={fieldTrouble(trouble, 'payTo.bic')} />
        <div className={style.wide}>
          <Field
            label="IBAN"
            value={typed.iban}
            onChange={(iban) => change({ iban })}
            error={fieldTrouble(trouble, 'payTo.iban')}
            hint="With it, invoices in euro carry a payment code."
          />
        </div>
      </div>
      <Field
        label="Other ways to pay, as they are printed"
        rows={2}
        value={typed.payWords}
        onChange={(payWords) => change({ payWords })}
        error={fieldTrouble(trouble, 'payTo.words')}
      />
    </>
  );
}

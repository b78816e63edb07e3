import { Role } from '../../../core/contract/parts.ts';
import { currencyCodes } from '../../../core/money/currencies.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { PlaceField } from '../../parts/place-field.tsx';
import { Rows } from '../../parts/rows.tsx';
import sheet from '../../parts/sheet.module.css';
import { Tick } from '../../parts/tick.tsx';
import { fieldTrouble } from '../../trouble.ts';
import type { HandForm } from './hand-kind.ts';
import style from './people.module.css';

const roleOptions = Role.options.map((role) => ({ value: role, label: role }));
const currencyOptions = currencyCodes.map((code) => ({ value: code, label: code }));

export function WhoTheyAre({ form }: { form: HandForm }) {
  const { typed, change, trouble } = form;
  return (
    <div className={sheet.grid}>
      <Field label="Name" value={typed.name} onChange={(name) => change({ name })} error={fieldTrouble(trouble, 'fields.name')} />
      <Field label="Mail" value={typed.email} onChange={(email) => change({ email })} error={fieldTrouble(trouble, 'email')} />
      <Field label="Phone" value={typed.phone} onChange={(phone) => change({ phone })} error={fieldTrouble(trouble, 'phone')} />
      <div>
        <PlaceField label="Home" value={typed.home} onChange={(home) => change({ home })} error={fieldTrouble(trouble, 'home')} />
        {typed.home ? (
          <Button kind="quiet" onPress={() => change({ home: null })} aria-label="Take out the home">
            Take out
          </Button>
        ) : null}
      </div>
    </div>
  );
}

/** @param start currency and date that a new row begins with */
export function Rates({ form, start }: { form: HandForm; start: { currency: string; from: string } }) {
  const { typed, change, trouble } = form;
  return (
    <Rows
      label="What a day costs me, by role and date"
      columns={[
        { key: 'role', label: 'Role', options: roleOptions },
        { key: 'dayRate', label: 'A day', figures: true },
        { key: 'currency', label: 'Currency', options: currencyOptions },
        { key: 'from', label: 'From', type: 'date' },
      ]}
      rows={typed.rates}
      onChange={(rates) => change({ rates })}
      blank={{ role: typed.rates.at(-1)?.role ?? 'shoot', dayRate: '', ...start }}
      add={typed.rates.length === 0 ? 'Add a rate' : 'One more rate'}
      error={(at, key) => fieldTrouble(trouble, `rates[${at}].${key}`)}
    />
  );
}

export function PapersAndPay({ form }: { form: HandForm }) {
  const { typed, change, trouble } = form;
  return (
    <>
      <div className={style.ticks}>
        <Tick checked={typed.backup} onChange={(backup) => change({ backup })}>
          backup: can take over when I am ill
        </Tick>
        <Tick checked={typed.taxForm} onChange={(taxForm) => change({ taxForm })}>
          tax form on file
        </Tick>
      </div>
      <div className={sheet.grid}>
        <Field
          label="Insured until"
          type="date"
          value={typed.insuredUntil}
          onChange={(insuredUntil) => change({ insuredUntil })}
          error={fieldTrouble(trouble, 'insuredUntil')}
          hint="Empty: no insurance on file."
        />
        <Field
          label="I pay within"
          unit="days"
          figures
          inputMode="numeric"
          value={typed.payDays}
          onChange={(payDays) => change({ payDays })}
          error={fieldTrouble(trouble, 'payDays')}
        />
      </div>
    </>
  );
}

export function KitAndNotes({ form }: { form: HandForm }) {
  const { typed, change, trouble } = form;
  return (
    <div className={sheet.texts}>
      <Field
        label="Own kit"
        rows={3}
        value={typed.ownKit}
        onChange={(ownKit) => change({ ownKit })}
        error={fieldTrouble(trouble, 'ownKit')}
      />
      <Field
        label="Notes"
        rows={3}
        value={typed.notes}
        onChange={(notes) => change({ notes })}
        error={fieldTrouble(trouble, 'fields.notes')}
      />
    </div>
  );
}

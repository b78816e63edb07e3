import { currencyCodes } from '../../../core/money/currencies.ts';
import { CLOSED_MOST } from '../../../core/contract/people.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import list from '../../parts/list.module.css';
import { Rows } from '../../parts/rows.tsx';
import { Segments } from '../../parts/segments.tsx';
import sheet from '../../parts/sheet.module.css';
import { Tick } from '../../parts/tick.tsx';
import { fieldTrouble } from '../../trouble.ts';
import type { ClientForm } from './client-kind.ts';
import { askLabels, askNames } from './in-words.ts';
import style from './people.module.css';
import { CARD_CURRENCY } from './typed-client.ts';

const currencyOptions = [CARD_CURRENCY, ...currencyCodes].map((code) => ({ value: code, label: code }));

export function WhoTheyAre({ form }: { form: ClientForm }) {
  const { typed, change, trouble } = form;
  return (
    <>
      <div className={sheet.texts}>
        <Field label="Name" value={typed.name} onChange={(name) => change({ name })} error={fieldTrouble(trouble, 'fields.name')} />
      </div>
      <Rows
        label="Contacts, the main one first"
        columns={[
          { key: 'name', label: 'Name' },
          { key: 'what', label: 'What they do', placeholder: 'accounts' },
          { key: 'email', label: 'Mail' },
          { key: 'phone', label: 'Phone' },
        ]}
        rows={typed.contacts}
        onChange={(contacts) => change({ contacts })}
        blank={{ name: '', email: '', phone: '', what: '' }}
        add={typed.contacts.length === 0 ? 'Add a contact' : 'One more contact'}
        error={(at, key) => fieldTrouble(trouble, `contacts[${at}].${key}`)}
      />
    </>
  );
}

export function Billing({ form }: { form: ClientForm }) {
  const { typed, change, trouble } = form;
  const { billing } = typed;
  const set = (part: Partial<typeof billing>): void => change({ billing: { ...billing, ...part } });
  return (
    <div className={sheet.texts}>
      <Field
        label="Bills go to"
        value={billing.name}
        onChange={(name) => set({ name })}
        error={fieldTrouble(trouble, 'billing.name')}
        hint="Empty: the client's own name."
      />
      <Field
        label="Mail for bills"
        value={billing.email}
        onChange={(email) => set({ email })}
        error={fieldTrouble(trouble, 'billing.email')}
      />
      <Field
        label="Address on bills"
        rows={3}
        value={billing.address}
        onChange={(address) => set({ address })}
        error={fieldTrouble(trouble, 'billing.address')}
      />
    </div>
  );
}

export function TaxAndTerms({ form }: { form: ClientForm }) {
  const { typed, change, trouble } = form;
  return (
    <>
      <div className={sheet.grid}>
        <Field
          label="Country, two letters"
          placeholder="US"
          value={typed.country}
          onChange={(country) => change({ country })}
          error={fieldTrouble(trouble, 'country')}
        />
        <Field label="Tax id" value={typed.taxId} onChange={(taxId) => change({ taxId })} error={fieldTrouble(trouble, 'taxId')} />
      </div>
      <Segments
        label="My tax on their bills"
        value={typed.tax}
        options={[
          { value: 'charge', label: 'charged' },
          { value: 'exempt', label: 'exempt' },
          { value: 'reverse charge', label: 'reverse charge' },
        ]}
        onChange={(tax) => change({ tax })}
      />
      {typed.tax === 'charge' ? null : (
        <div className={sheet.texts}>
          <Field
            label="Reason, printed on the paper"
            value={typed.taxReason}
            onChange={(taxReason) => change({ taxReason })}
            error={fieldTrouble(trouble, 'taxReason')}
            hint="Whether it holds is for your tax adviser to say."
          />
        </div>
      )}
      <div className={sheet.grid}>
        <Choice
          label="Currency"
          value={typed.currency}
          options={currencyOptions}
          onChange={(currency) => change({ currency })}
          error={fieldTrouble(trouble, 'currency')}
        />
        <Field
          label="Pays within"
          unit="days"
          figures
          inputMode="numeric"
          value={typed.payDays}
          onChange={(payDays) => change({ payDays })}
          error={fieldTrouble(trouble, 'payDays')}
          hint="Empty: as the rate card."
        />
        <Field
          label="Deposit"
          unit="% of gross"
          figures
          inputMode="decimal"
          value={typed.depositPercent}
          onChange={(depositPercent) => change({ depositPercent })}
          error={fieldTrouble(trouble, 'depositPercent')}
          hint="Empty: as the rate card."
        />
      </div>
    </>
  );
}

/** Dates on which they do not work. */
export function OwnHolidays({ form }: { form: ClientForm }) {
  const { typed, change, trouble } = form;
  return (
    <>
      <Rows
        label="Dates on which nobody is there, both ends counted"
        columns={[
          { key: 'from', label: 'From', type: 'date' },
          { key: 'to', label: 'To', type: 'date' },
          { key: 'name', label: 'Name', placeholder: 'summer break' },
        ]}
        rows={typed.closed}
        onChange={(closed) => change({ closed })}
        blank={{ from: '', to: '', name: '' }}
        {...(typed.closed.length < CLOSED_MOST ? { add: typed.closed.length === 0 ? 'Add a holiday' : 'One more holiday' } : {})}
        error={(at, key) => fieldTrouble(trouble, `closed[${at}].${key}`)}
      />
      <p className={list.second}>
        Weekends and the public holidays at home are left out anyway. These are left out too where a quote counts the notice of a
        cancellation in business days; a version that is made keeps those that stood then.
      </p>
    </>
  );
}

export function AsksAndNotes({ form }: { form: ClientForm }) {
  const { typed, change, trouble } = form;
  return (
    <>
      <div className={style.ticks} role="group" aria-label="They always ask for">
        {askNames.map((name) => (
          <Tick key={name} checked={typed.asks[name]} onChange={(asked) => change({ asks: { ...typed.asks, [name]: asked } })}>
            {askLabels[name]}
          </Tick>
        ))}
      </div>
      <Field
        label="Notes"
        rows={3}
        value={typed.notes}
        onChange={(notes) => change({ notes })}
        error={fieldTrouble(trouble, 'fields.notes')}
      />
    </>
  );
}

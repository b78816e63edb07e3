import type { Trouble } from '../../../core/contract/base.ts';
import { currencyCodes } from '../../../core/money/currencies.ts';
import { suggestFor } from '../../../core/setup/suggest.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { PlaceField } from '../../parts/place-field.tsx';
import { Rows } from '../../parts/rows.tsx';
import { Segments } from '../../parts/segments.tsx';
import { Tick } from '../../parts/tick.tsx';
import { fieldTrouble } from '../../trouble.ts';
import { HomeDetails } from './home-details.tsx';
import style from './setup.module.css';
import type { TypedSetup } from './typed.ts';

export type SetupPart = { typed: TypedSetup; change: (part: Partial<TypedSetup>) => void; trouble: Trouble | null };

const currencyOptions = currencyCodes.map((code) => ({ value: code, label: code }));

/** Name and home: what the first start asks for, before anything else. */
export function WhoAndWhere({ typed, change, trouble, first = false }: SetupPart & { first?: boolean }) {
  return (
    <>
      <Field
        label="Name on your papers"
        value={typed.name}
        onChange={(name) => change({ name })}
        error={fieldTrouble(trouble, 'name')}
        hint={first ? 'Yours or that of your business. It stands large on every quote.' : undefined}
      />
      <PlaceField
        label="Home, where trips begin and end"
        value={typed.home}
        onChange={(home) => change({ home, ...(first ? suggestFor(home.country) : {}) })}
        error={fieldTrouble(trouble, 'home')}
      />
      {typed.home ? <HomeDetails home={typed.home} onChange={(home) => change({ home })} trouble={trouble} /> : null}
    </>
  );
}

/** Currency, paper and distance. */
export function Units({ typed, change, trouble }: SetupPart) {
  return (
    <div className={style.three}>
      <Choice
        label="Currency"
        value={typed.currency}
        options={currencyOptions}
        onChange={(currency) => change({ currency })}
        error={fieldTrouble(trouble, 'currency')}
      />
      <Segments
        label="Paper"
        value={typed.paper}
        options={[
          { value: 'Letter', label: 'Letter' },
          { value: 'A4', label: 'A4' },
        ]}
        onChange={(paper) => change({ paper })}
      />
      <Segments
        label="Distance"
        value={typed.distance}
        options={[
          { value: 'mi', label: 'miles' },
          { value: 'km', label: 'kilometres' },
        ]}
        onChange={(distance) => change({ distance })}
      />
    </div>
  );
}

const compoundOptions = [
  { value: 'no', label: 'net only' },
  { value: 'yes', label: 'net and taxes before' },
];

/** Taxes that every line bears beside the first. */
function MoreTaxes({ typed, change, trouble }: SetupPart) {
  const { moreTaxes } = typed;
  return (
    <Rows
      label="Further taxes on every line"
      columns={[
        { key: 'name', label: 'Name' },
        { key: 'percent', label: 'Rate, %', figures: true },
        { key: 'compound', label: 'Charged on', options: compoundOptions },
      ]}
      rows={moreTaxes}
      onChange={(rows) => change({ moreTaxes: rows })}
      blank={{ name: '', percent: '', compound: 'no' }}
      {...(moreTaxes.length < 3 ? { add: 'One more tax' } : {})}
      error={(at, key) => fieldTrouble(trouble, `moreTaxes[${at}].${key}`)}
    />
  );
}

/** Registered or not, with the first tax and further ones. */
export function Taxes({ typed, change, trouble }: SetupPart) {
  return (
    <>
      <Tick checked={typed.registered} onChange={(registered) => change({ registered })}>
        I am registered for sales tax or VAT
      </Tick>
      {typed.registered ? (
        <div className={style.three}>
          <Field
            label="Name of the tax"
            placeholder="Sales tax"
            value={typed.taxName}
            onChange={(taxName) => change({ taxName })}
            error={fieldTrouble(trouble, 'tax.name')}
          />
          <Field
            label="Rate"
            unit="%"
            figures
            inputMode="decimal"
            value={typed.taxPercent}
            onChange={(taxPercent) => change({ taxPercent })}
            error={fieldTrouble(trouble, 'percent')}
          />
          <Field label="Tax number" value={typed.taxId} onChange={(taxId) => change({ taxId })} error={fieldTrouble(trouble, 'taxId')} />
          <div className={style.wide}>
            <Tick checked={typed.taxIncluded} onChange={(taxIncluded) => change({ taxIncluded })}>
              My prices are entered with it included
            </Tick>
          </div>
          <div className={style.wide}>
            <MoreTaxes typed={typed} change={change} trouble={trouble} />
          </div>
        </div>
      ) : null}
    </>
  );
}

import { Battery, KitItemFields } from '../../../core/contract/kit.ts';
import { airOf } from '../../../core/kit/air.ts';
import { currencyCodes } from '../../../core/money/currencies.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { Rows } from '../../parts/rows.tsx';
import { Segments } from '../../parts/segments.tsx';
import sheet from '../../parts/sheet.module.css';
import { Tick } from '../../parts/tick.tsx';
import { fieldTrouble } from '../../trouble.ts';
import type { ItemForm } from './item-kind.ts';
import look from '../../parts/list.module.css';
import style from './kit.module.css';

const same = (value: string) => ({ value, label: value });
const currencyOptions = currencyCodes.map(same);
const owners = KitItemFields.shape.owner.unwrap().options;
const batteries = Battery.options;

export function WhatItIs({ form }: { form: ItemForm }) {
  const { typed, change, trouble } = form;
  return (
    <>
      <div className={sheet.grid}>
        <Field label="Name" value={typed.name} onChange={(name) => change({ name })} error={fieldTrouble(trouble, 'fields.name')} />
        <Field
          label="What it does"
          placeholder="camera"
          value={typed.does}
          onChange={(does) => change({ does })}
          error={fieldTrouble(trouble, 'does')}
          hint="Things with the same word can stand in for each other."
        />
        <Field
          label="How many"
          figures
          inputMode="numeric"
          value={typed.owned}
          onChange={(owned) => change({ owned })}
          error={fieldTrouble(trouble, 'owned')}
        />
      </div>
      <Segments
        label="Whose it is"
        value={typed.owner}
        options={owners.map((owner) => ({ value: owner, label: owner }))}
        onChange={(owner) => change({ owner })}
      />
      <div className={sheet.texts}>
        <Field
          label="Note"
          rows={3}
          value={typed.note}
          onChange={(note) => change({ note })}
          error={fieldTrouble(trouble, 'fields.note')}
        />
      </div>
    </>
  );
}

export function WeightAndPower({ form }: { form: ItemForm }) {
  const { typed, change, trouble } = form;
  const wattHours = /^\d+([.,]\d+)?$/.test(typed.wattHours.trim()) ? typed.wattHours.trim().replace(',', '.') : null;
  const air = airOf({ battery: typed.battery, wattHours });
  return (
    <>
      <div className={sheet.grid}>
        <Field
          label="Weight of one"
          placeholder="1.2 kg"
          figures
          value={typed.weight}
          onChange={(weight) => change({ weight })}
          error={fieldTrouble(trouble, 'grams')}
        />
        <Field
          label="Size of one"
          placeholder="40 x 30 x 20 cm"
          figures
          value={typed.size}
          onChange={(size) => change({ size })}
          error={fieldTrouble(trouble, 'size')}
        />
        <Field
          label="Draws in use"
          unit="W"
          figures
          inputMode="decimal"
          value={typed.drawWatts}
          onChange={(drawWatts) => change({ drawWatts })}
          error={fieldTrouble(trouble, 'drawWatts')}
        />
      </div>
      <Segments
        label="Lithium battery"
        value={typed.battery}
        options={batteries.map((battery) => ({ value: battery, label: battery }))}
        onChange={(battery) => change({ battery })}
      />
      {typed.battery === 'none' ? null : (
        <div className={sheet.grid}>
          <Field
            label="Energy of one battery"
            unit="Wh"
            figures
            inputMode="decimal"
            value={typed.wattHours}
            onChange={(next) => change({ wattHours: next })}
            error={fieldTrouble(trouble, 'wattHours')}
          />
          <p className={style.air}>
            <span className={air.barred ? look.broken : undefined}>{`By air: ${air.words}.`}</span>{' '}
            <span className={look.second}>The operator decides; limits differ and change.</span>
          </p>
        </div>
      )}
    </>
  );
}

export function ReadyAgain({ form }: { form: ItemForm }) {
  const { typed, change, trouble } = form;
  return (
    <>
      <div className={sheet.grid}>
        <Field
          label="Ready again after"
          placeholder="2 h"
          figures
          value={typed.reset}
          onChange={(reset) => change({ reset })}
          error={fieldTrouble(trouble, 'resetMinutes')}
          hint="Charging, drying, formatting."
        />
        <Field
          label="One more to rent costs"
          placeholder="USD 45 a day"
          value={typed.subHire}
          onChange={(subHire) => change({ subHire })}
          error={fieldTrouble(trouble, 'subHire')}
        />
      </div>
      <Tick checked={typed.resetOnRoad} onChange={(resetOnRoad) => change({ resetOnRoad })}>
        it can be made ready on the road
      </Tick>
      <Rows
        label="So many in service, both dates included"
        columns={[
          { key: 'from', label: 'From', type: 'date' },
          { key: 'to', label: 'To', type: 'date' },
          { key: 'count', label: 'How many', figures: true },
        ]}
        rows={typed.services}
        onChange={(services) => change({ services })}
        blank={{ from: '', to: '', count: '1' }}
        add={typed.services.length === 0 ? 'Add a service' : 'One more service'}
        error={(at, key) => fieldTrouble(trouble, `fields.services[${at}].${key}`)}
      />
    </>
  );
}

export function Worth({ form }: { form: ItemForm }) {
  const { typed, change, trouble } = form;
  return (
    <div className={sheet.grid}>
      <Field
        label="Value of one"
        figures
        inputMode="decimal"
        value={typed.value}
        onChange={(value) => change({ value })}
        error={fieldTrouble(trouble, 'value')}
      />
      <Field
        label="Wear of one a shoot day"
        figures
        inputMode="decimal"
        value={typed.wearPerDay}
        onChange={(wearPerDay) => change({ wearPerDay })}
        error={fieldTrouble(trouble, 'wearPerDay')}
      />
      <Choice label="Currency" value={typed.currency} options={currencyOptions} onChange={(currency) => change({ currency })} />
      <Field
        label="Bought on"
        type="date"
        value={typed.bought}
        onChange={(bought) => change({ bought })}
        error={fieldTrouble(trouble, 'bought')}
      />
      <Field
        label="Made in"
        placeholder="JP"
        value={typed.origin}
        onChange={(origin) => change({ origin })}
        error={fieldTrouble(trouble, 'origin')}
        hint="The country by its two letters, as customs lists ask."
      />
    </div>
  );
}

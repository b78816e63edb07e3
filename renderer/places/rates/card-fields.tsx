import { Role } from '../../../core/contract/parts.ts';
import { currencyCodes } from '../../../core/money/currencies.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { Rows } from '../../parts/rows.tsx';
import { Segments } from '../../parts/segments.tsx';
import { fieldTrouble } from '../../trouble.ts';
import style from '../../parts/sheet.module.css';
import type { CardForm } from './use-card-form.ts';

export const roleOptions = Role.options.map((role) => ({ value: role, label: role }));
const currencyOptions = currencyCodes.map((code) => ({ value: code, label: code }));

type TextKey = {
  [K in keyof CardForm['typed']]: CardForm['typed'][K] extends string ? K : never;
}[keyof CardForm['typed']];

/** One number or text of the card by its name. */
export function CardField({
  form,
  name,
  label,
  unit,
  type,
  hint,
}: {
  form: CardForm;
  name: TextKey;
  label: string;
  unit?: string;
  type?: 'date' | 'text';
  hint?: string;
}) {
  const figures = type === undefined;
  return (
    <Field
      label={label}
      value={form.typed[name]}
      onChange={(value) => form.change({ [name]: value })}
      error={fieldTrouble(form.trouble, name)}
      figures={figures}
      type={type === 'date' ? 'date' : 'text'}
      {...(figures ? { inputMode: 'decimal' as const } : {})}
      {...(unit ? { unit } : {})}
      hint={hint}
    />
  );
}

export function WhatItIsFor({ form }: { form: CardForm }) {
  const { typed, change } = form;
  return (
    <div className={style.grid}>
      <CardField form={form} name="name" label="Name of the card" type="text" />
      <Choice label="Role" value={typed.role} options={roleOptions} onChange={(role) => change({ role })} />
      <Choice label="Currency" value={typed.currency} options={currencyOptions} onChange={(currency) => change({ currency })} />
      <CardField form={form} name="validFrom" label="Holds from" type="date" />
      <CardField form={form} name="validTo" label="Holds to" type="date" hint="Empty: until another follows." />
    </div>
  );
}

export function TheDay({ form, rate = true }: { form: CardForm; rate?: boolean }) {
  const { currency } = form.typed;
  return (
    <div className={style.grid}>
      {rate ? <CardField form={form} name="dayRate" label="A day" unit={currency} /> : null}
      <CardField form={form} name="dayHours" label="Length of a day" unit="hours" />
      <CardField form={form} name="graceMinutes" label="Grace before overtime" unit="min" />
      <CardField form={form} name="halfPercent" label="Half day" unit="% of a day" />
      <CardField form={form} name="halfUpToHours" label="Half day up to" unit="hours" />
      <CardField form={form} name="halfGraceMinutes" label="Grace of a half day" unit="min" />
      <CardField form={form} name="prepPercent" label="Prep day" unit="% of a day" />
      <CardField form={form} name="standbyPercent" label="Standby day" unit="% of a day" />
      <CardField form={form} name="travelPercent" label="Travel day" unit="% of a day" />
      <CardField form={form} name="weekendPercent" label="Weekend adds" unit="% of a day" />
      <CardField form={form} name="holidayPercent" label="Public holiday adds" unit="% of a day" />
      <CardField form={form} name="nightPercent" label="Night, 22:00 to 06:00, adds" unit="% of a day" />
    </div>
  );
}

export function Overtime({ form }: { form: CardForm }) {
  return (
    <>
      <Rows
        label="Overtime, in hours past the day"
        columns={[
          { key: 'fromHours', label: 'From hour', figures: true },
          { key: 'toHours', label: 'To hour', figures: true, placeholder: 'no end' },
          { key: 'times', label: 'Times the hourly base', figures: true },
        ]}
        rows={form.typed.overtime}
        onChange={(overtime) => form.change({ overtime })}
        blank={{ fromHours: '', toHours: '', times: '' }}
        add="One more tier"
        error={(at, key) => fieldTrouble(form.trouble, `overtime[${at}].${key}`)}
      />
      <div className={style.grid}>
        <CardField form={form} name="turnaroundHours" label="Turnaround, wrap to next call" unit="hours" />
        <CardField form={form} name="forcedTimes" label="A forced call is billed" unit="times the hour" />
      </div>
    </>
  );
}

export function RushAndEditing({ form }: { form: CardForm }) {
  return (
    <>
      <Rows
        label="Rush, on days"
        columns={[
          { key: 'underHours', label: 'Notice under, hours', figures: true },
          { key: 'percent', label: 'Adds, %', figures: true },
        ]}
        rows={form.typed.rush}
        onChange={(rush) => form.change({ rush })}
        blank={{ underHours: '', percent: '' }}
        add="One more step"
        error={(at, key) => fieldTrouble(form.trouble, `rush[${at}].${key}`)}
      />
      <div className={style.grid}>
        <CardField form={form} name="editHour" label="An edit hour" unit={form.typed.currency} />
      </div>
    </>
  );
}

export function TravelAndKit({ form }: { form: CardForm }) {
  const { typed, change, trouble } = form;
  return (
    <>
      <div className={style.grid}>
        <CardField form={form} name="allowanceNight" label="Allowance for a night away" unit={typed.currency} hint="Empty: none." />
        <Segments
          label="Distance in"
          value={typed.mileageUnit}
          options={[
            { value: 'mi', label: 'miles' },
            { value: 'km', label: 'kilometres' },
          ]}
          onChange={(mileageUnit) => change({ mileageUnit })}
        />
      </div>
      <Rows
        label="Mileage"
        columns={[
          { key: 'from', label: 'From', type: 'date' },
          { key: 'rate', label: `${typed.currency} for one ${typed.mileageUnit}`, figures: true },
        ]}
        rows={typed.mileage}
        onChange={(mileage) => change({ mileage })}
        blank={{ from: '', rate: '' }}
        add="One more rate"
        error={(at, key) => fieldTrouble(trouble, `mileage[${at}].${key}`)}
      />
      <Rows
        label="Kit fees"
        columns={[
          { key: 'name', label: 'Kit' },
          { key: 'perDay', label: `${typed.currency} a shoot day`, figures: true },
        ]}
        rows={typed.kit}
        onChange={(kit) => change({ kit })}
        blank={{ name: '', perDay: '' }}
        add="One more kit fee"
        error={(at, key) => fieldTrouble(trouble, `kit[${at}].${key}`)}
      />
    </>
  );
}

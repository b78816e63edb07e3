import type { Trouble } from '../../core/contract/base.ts';
import { frameRates } from '../../core/deliverables/timecode.ts';
import { fieldTrouble } from '../trouble.ts';
import { Choice } from './choice.tsx';
import { Field } from './field.tsx';
import sheet from './sheet.module.css';
import { Tick } from './tick.tsx';
import type { TypedEdit } from './typed-edit.ts';

type Props = { typed: TypedEdit; change: (part: Partial<TypedEdit>) => void; trouble: Trouble | null };
type NumberKey = 'finishedMinutes' | 'editHoursPerMinute' | 'ingestHours' | 'rounds' | 'hoursPerRound' | 'windowDays' | 'internalDays';

const NO_RATE = 'not said';
const rates = [NO_RATE, ...frameRates.map(({ name }) => name)].map((name) => ({ value: name, label: name }));

/** The length of an edit and the work that it is. */
export function WorkFields({ typed, change, trouble }: Props) {
  const number = (key: NumberKey, label: string, unit: string) => (
    <Field
      label={label}
      unit={unit}
      figures
      inputMode="decimal"
      value={typed[key]}
      onChange={(value) => change({ [key]: value })}
      error={fieldTrouble(trouble, key)}
    />
  );
  return (
    <>
      <div className={sheet.grid}>
        {number('finishedMinutes', 'Finished length', 'minutes')}
        {number('editHoursPerMinute', 'Edit hours for one finished minute', 'hours')}
        {number('ingestHours', 'Ingest', 'hours')}
      </div>
      <Tick checked={typed.sameDay} onChange={(sameDay) => change({ sameDay })}>
        cut on site on the same day, between wrap and rest; it counts in the day’s duty
      </Tick>
      {typed.sameDay ? null : (
        <div className={sheet.grid}>
          {number('rounds', 'Rounds of notes included', 'rounds')}
          {number('hoursPerRound', 'Work of a round', 'hours')}
          {number('windowDays', 'The client has for notes', 'business days')}
        </div>
      )}
    </>
  );
}

/** Done for myself so long before the promised date. */
export function InternalField({ typed, change, trouble }: Props) {
  return (
    <Field
      label="Done for myself before the promised date"
      unit="business days"
      figures
      inputMode="numeric"
      value={typed.internalDays}
      onChange={(internalDays) => change({ internalDays })}
      error={fieldTrouble(trouble, 'internalDays')}
    />
  );
}

/** How the finished file is to be. */
export function FormatFields({ typed, change, trouble }: Props) {
  const line = (key: 'codec' | 'loudness' | 'captions', label: string, placeholder: string) => (
    <Field
      label={label}
      placeholder={placeholder}
      value={typed[key]}
      onChange={(value) => change({ [key]: value })}
      error={fieldTrouble(trouble, key)}
    />
  );
  return (
    <>
      <div className={sheet.grid}>
        <Field
          label="Frame size"
          placeholder="1920 x 1080"
          value={typed.size}
          onChange={(size) => change({ size })}
          error={fieldTrouble(trouble, 'size')}
        />
        <Choice
          label="Frame rate"
          value={typed.rate === '' ? NO_RATE : typed.rate}
          options={rates}
          onChange={(rate) => change({ rate: rate === NO_RATE ? '' : rate })}
          error={fieldTrouble(trouble, 'rate')}
        />
        {line('codec', 'Codec and file', 'H.264 in MP4')}
        {line('loudness', 'Loudness target', '-16 LUFS, true peak -1 dBTP')}
        {line('captions', 'Captions', 'burned in, English')}
      </div>
      <Field
        label="Anything else"
        rows={2}
        value={typed.other}
        onChange={(other) => change({ other })}
        error={fieldTrouble(trouble, 'other')}
      />
    </>
  );
}

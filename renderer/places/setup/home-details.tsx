import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { Place } from '../../../core/contract/parts.ts';
import { Field } from '../../parts/field.tsx';
import { Fold } from '../../parts/fold.tsx';
import { fieldTrouble } from '../../trouble.ts';
import style from './setup.module.css';

/** Where home was found to be, and the same by hand where the list has it wrong. */
export function HomeDetails({ home, onChange, trouble }: { home: Place; onChange: (home: Place) => void; trouble: Trouble | null }) {
  return (
    <Fold
      title={
        <span className={style.second}>{`Clock of ${home.zone}, ${home.lat.toFixed(2)}, ${home.lon.toFixed(2)}: correct by hand`}</span>
      }
    >
      <div className={style.three}>
        <Field
          label="Clock"
          value={home.zone}
          onChange={(zone) => onChange({ ...home, zone: zone.trim() })}
          error={fieldTrouble(trouble, 'zone')}
        />
        <Degrees
          key={`lat ${home.key}`}
          label="Latitude"
          value={home.lat}
          onChange={(lat) => onChange({ ...home, lat })}
          error={fieldTrouble(trouble, 'lat')}
        />
        <Degrees
          key={`lon ${home.key}`}
          label="Longitude"
          value={home.lon}
          onChange={(lon) => onChange({ ...home, lon })}
          error={fieldTrouble(trouble, 'lon')}
        />
      </div>
    </Fold>
  );
}

function Degrees({
  label,
  value,
  onChange,
  error,
}: {
  label: string;
  value: number;
  onChange: (value: number) => void;
  error: string | undefined;
}) {
  const [text, setText] = useState(String(value));
  const degrees = text.trim() === '' ? Number.NaN : Number(text);
  return (
    <Field
      label={label}
      unit="°"
      figures
      value={text}
      onChange={(next) => {
        setText(next);
        if (next.trim() !== '' && Number.isFinite(Number(next))) onChange(Number(next));
      }}
      error={Number.isNaN(degrees) ? 'is not a number of degrees; write it as 46.78' : error}
    />
  );
}

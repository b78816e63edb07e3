import { KitItemFields } from '../../../core/contract/kit.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { Rows } from '../../parts/rows.tsx';
import sheet from '../../parts/sheet.module.css';
import type { TypedUnit, UnitOwner } from './typed-unit.ts';
import style from './kit.module.css';

const owners: readonly UnitOwner[] = ['as the thing', ...KitItemFields.shape.owner.unwrap().options];
const ownerOptions = owners.map((owner) => ({ value: owner, label: owner }));

/** One unit, open. What is left empty is as the thing says. */
export function UnitFields(props: {
  unit: TypedUnit;
  currency: string;
  error: (field: string) => string | undefined;
  onChange: (part: Partial<TypedUnit>) => void;
  onClose: () => void;
  onTakeOut: () => void;
}) {
  const { unit, error, onChange } = props;
  return (
    <div className={style.unit}>
      <div className={sheet.grid}>
        <Field label="Serial" value={unit.serial} onChange={(serial) => onChange({ serial })} error={error('serial')} />
        <Field
          label="Kept at or held by"
          placeholder="the van"
          value={unit.place}
          onChange={(place) => onChange({ place })}
          error={error('place')}
        />
        <Choice label="Whose it is" value={unit.owner} options={ownerOptions} onChange={(owner) => onChange({ owner })} />
        <Field label="Bought on" type="date" value={unit.bought} onChange={(bought) => onChange({ bought })} error={error('bought')} />
        <Field
          label={`Value, ${props.currency}`}
          placeholder="as the thing"
          figures
          inputMode="decimal"
          value={unit.value}
          onChange={(value) => onChange({ value })}
          error={error('value')}
        />
        <Field
          label={`Wear a shoot day, ${props.currency}`}
          placeholder="as the thing"
          figures
          inputMode="decimal"
          value={unit.wearPerDay}
          onChange={(wearPerDay) => onChange({ wearPerDay })}
          error={error('wearPerDay')}
        />
      </div>
      <Field label="Note" value={unit.note} onChange={(note) => onChange({ note })} error={error('note')} />
      <Rows
        label={`${unit.serial || 'The unit'} in service, both dates included`}
        columns={[
          { key: 'from', label: 'From', type: 'date' },
          { key: 'to', label: 'To', type: 'date' },
        ]}
        rows={unit.services}
        onChange={(services) => onChange({ services })}
        blank={{ from: '', to: '' }}
        add={unit.services.length === 0 ? 'Add a service' : 'One more service'}
        error={(at, key) => error(`services[${at}].${key}`)}
      />
      <div className={sheet.row}>
        <Button onPress={props.onClose}>Close the unit</Button>
        <Button kind="quiet" onPress={props.onTakeOut} aria-label={`Take out unit ${unit.serial}`}>
          Take out
        </Button>
        <span className={sheet.second}>It is kept when the thing is saved.</span>
      </div>
    </div>
  );
}

import { Field } from '../../parts/field.tsx';
import { floorInWords } from '../../../core/quotes/scale.ts';
import { Tick } from '../../parts/tick.tsx';
import { fieldTrouble } from '../../trouble.ts';
import type { SetupPart } from './identity-fields.tsx';
import style from './setup.module.css';
import { fieldsFrom } from './typed.ts';

/** My own year, from which the floor follows. */
export function YearFields({ typed, change, trouble }: SetupPart) {
  return (
    <>
      <Tick checked={typed.hasYear} onChange={(hasYear) => change({ hasYear })}>
        Show me the floor: the day rate under which my year does not pay
      </Tick>
      {typed.hasYear ? (
        <div className={style.two}>
          <Field
            label="Costs a year, wear of kit left out"
            unit={typed.currency}
            figures
            inputMode="decimal"
            value={typed.costs}
            onChange={(costs) => change({ costs })}
            error={fieldTrouble(trouble, 'costs')}
          />
          <Field
            label="Pay I want a year, after set-aside"
            unit={typed.currency}
            figures
            inputMode="decimal"
            value={typed.pay}
            onChange={(pay) => change({ pay })}
            error={fieldTrouble(trouble, 'pay')}
          />
          <Field
            label="Set aside for tax"
            unit="%"
            figures
            inputMode="decimal"
            value={typed.setAside}
            onChange={(setAside) => change({ setAside })}
            error={fieldTrouble(trouble, 'setAsidePercent')}
          />
          <Field
            label="Days I can sell a year"
            unit="days"
            figures
            inputMode="numeric"
            value={typed.days}
            onChange={(days) => change({ days })}
            error={fieldTrouble(trouble, 'days')}
          />
          <FloorInWords typed={typed} />
        </div>
      ) : null}
    </>
  );
}

/** The floor that follows from what is typed, as soon as it can be read. */
function FloorInWords({ typed }: Pick<SetupPart, 'typed'>) {
  const read = fieldsFrom(typed);
  const year = 'fields' in read ? read.fields.year : null;
  return year && year.days > 0 ? <p className={style.wide}>{floorInWords(year, typed.currency)}</p> : null;
}

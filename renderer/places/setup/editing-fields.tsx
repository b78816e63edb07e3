import { Field } from '../../parts/field.tsx';
import { Tick } from '../../parts/tick.tsx';
import { fieldTrouble } from '../../trouble.ts';
import type { SetupPart } from './identity-fields.tsx';
import style from './setup.module.css';

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];

/** When I edit: what promised edits are planned into. */
export function EditingFields({ typed, change, trouble }: SetupPart) {
  const { editing } = typed;
  const set = (part: Partial<typeof editing>): void => change({ editing: { ...editing, ...part } });
  const tick = (key: 'onHolidays' | 'onTravelDays' | 'onShootDays', words: string) => (
    <Tick checked={editing[key]} onChange={(on) => set({ [key]: on })}>
      {words}
    </Tick>
  );
  return (
    <>
      <div className={style.two}>
        <Field
          label="Editing a day, at most"
          unit="hours"
          figures
          inputMode="decimal"
          value={typed.editHours}
          onChange={(editHours) => change({ editHours })}
          error={fieldTrouble(trouble, 'hoursADay')}
        />
        <Field
          label="Beginning at"
          type="time"
          value={editing.dayStart}
          onChange={(dayStart) => set({ dayStart })}
          error={fieldTrouble(trouble, 'dayStart')}
        />
      </div>
      <div role="group" aria-label="Weekdays without editing" className={style.row}>
        <span className={style.second}>Not on</span>
        {WEEKDAYS.map((name, at) => (
          <Tick
            key={name}
            checked={editing.closedWeekdays.includes(at + 1)}
            onChange={(on) =>
              set({
                closedWeekdays: on
                  ? [...editing.closedWeekdays, at + 1].sort((a, b) => a - b)
                  : editing.closedWeekdays.filter((day) => day !== at + 1),
              })
            }
          >
            {name}
          </Tick>
        ))}
      </div>
      {tick('onHolidays', 'Edit also on public holidays at home')}
      {tick('onTravelDays', 'Edit also on travel days')}
      {tick('onShootDays', 'Edit also on shoot days')}
    </>
  );
}

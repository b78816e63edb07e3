import { useState } from 'react';
import { paperDate } from '../../../core/words/dates.ts';
import { Button } from '../../parts/button.tsx';
import look from '../../parts/list.module.css';
import table from '../../parts/table.module.css';
import { fieldTrouble } from '../../trouble.ts';
import type { ItemForm } from './item-kind.ts';
import { datesInWords } from './in-words.ts';
import { newUnit, type TypedUnit } from './typed-unit.ts';
import { UnitFields } from './unit-fields.tsx';
import style from './kit.module.css';

/** The units that are told apart by their serials: a calm table, one of them open at a time. */
export function Units({ form }: { form: ItemForm }) {
  const { typed, change, trouble } = form;
  const [open, setOpen] = useState<number | null>(null);
  const { units } = typed;
  const wrong = trouble?.fields?.flatMap(({ field }) => /units\[(\d+)\]/.exec(field)?.[1] ?? []).map(Number)[0];
  const shown = wrong ?? open;
  const set = (at: number, part: Partial<TypedUnit>): void =>
    change({ units: units.map((unit, index) => (index === at ? { ...unit, ...part } : unit)) });
  const takeOut = (at: number): void => {
    change({ units: units.filter((_, index) => index !== at) });
    setOpen(null);
  };
  const add = (): void => {
    // One more unit than are counted is one more owned.
    const owned = /^\d+$/.test(typed.owned.trim()) && Number(typed.owned) <= units.length ? String(units.length + 1) : typed.owned;
    change({ units: [...units, newUnit()], owned });
    setOpen(units.length);
  };
  return (
    <>
      {units.length === 0 ? <p className={look.second}>None is told apart by a serial. Counted stock needs none.</p> : null}
      {units.length > 0 ? (
        <div className={table.scroll}>
          <table className={table.table}>
            <thead>
              <tr>
                <th scope="col">Serial</th>
                <th scope="col">Kept at or held by</th>
                <th scope="col">In service</th>
                <th scope="col">Bought</th>
                <th scope="col" className={table.figures}>{`Value, ${typed.currency}`}</th>
                <th scope="col">
                  <span className="reader">What can be done</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {units.map((unit, at) =>
                shown === at ? (
                  <tr key={`unit ${at + 1}`}>
                    <td colSpan={6}>
                      <UnitFields
                        unit={unit}
                        currency={typed.currency}
                        error={(field) => fieldTrouble(trouble, `units[${at}].${field}`)}
                        onChange={(part) => set(at, part)}
                        onClose={() => setOpen(null)}
                        onTakeOut={() => takeOut(at)}
                      />
                    </td>
                  </tr>
                ) : (
                  <UnitRow key={`unit ${at + 1}`} unit={unit} onOpen={() => setOpen(at)} />
                ),
              )}
            </tbody>
          </table>
        </div>
      ) : null}
      <div>
        <Button kind="quiet" onPress={add}>
          {units.length === 0 ? 'Add a unit' : 'One more unit'}
        </Button>
      </div>
    </>
  );
}

function UnitRow({ unit, onOpen }: { unit: TypedUnit; onOpen: () => void }) {
  const { serial, place, owner, services, bought, value, note } = unit;
  return (
    <tr>
      <th scope="row">
        {serial} <span className={table.second}>{[owner === 'as the thing' ? '' : owner, note].filter(Boolean).join(', ')}</span>
      </th>
      <td>{place}</td>
      <td className={style.dates}>
        {services.map((span) => (
          <span key={`${span.from} ${span.to}`}>{datesInWords(span)}</span>
        ))}
      </td>
      <td className={style.date}>{bought ? paperDate(bought) : ''}</td>
      <td className={table.figures}>{value}</td>
      <td>
        <Button kind="quiet" onPress={onOpen} aria-label={`Change unit ${serial}`}>
          Change
        </Button>
      </td>
    </tr>
  );
}

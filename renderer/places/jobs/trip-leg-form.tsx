import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { Place } from '../../../core/contract/parts.ts';
import { type Leg, Mode } from '../../../core/contract/trips.ts';
import { zoneInWords } from '../../../core/words/dates.ts';
import { deed } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { Field } from '../../parts/field.tsx';
import { PlaceField } from '../../parts/place-field.tsx';
import { Segments } from '../../parts/segments.tsx';
import { Tick } from '../../parts/tick.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../trouble.ts';
import { sayWithUndo } from '../../undo.ts';
import style from './trip.module.css';
import { legFields, type TypedLeg } from './typed-leg.ts';

const modeOptions = Mode.options.map((mode) => ({ value: mode, label: mode }));
const onClock = (what: string, place: Place | null): string => (place ? `${what}, clock of ${zoneInWords(place.zone)}` : what);

/** One leg of a trip; without a stored one a new one. */
export function LegForm(props: { jobId: string; start: TypedLeg; unit: 'mi' | 'km'; stored?: Leg; onDone: () => void }) {
  const { jobId, unit, stored, onDone } = props;
  const [typed, setTyped] = useState(props.start);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const change = (part: Partial<TypedLeg>): void => setTyped({ ...typed, ...part });

  const keep = async (): Promise<void> => {
    const read = legFields(typed);
    if ('trouble' in read) return setTrouble(read.trouble);
    const of = stored ? { id: stored.id, version: stored.version } : {};
    const kept = await deed(() => client.trips.setLeg({ jobId, ...of, fields: read.fields }), setTrouble);
    if (!kept) return;
    onDone();
    sayKept(kept.leg, stored);
  };
  return (
    <EditorForm label={stored ? 'Change the leg' : 'New leg'} className={style.form} onKeep={() => void keep()} onLeave={onDone}>
      <div className={style.grid}>
        <Choice label="By" value={typed.mode} options={modeOptions} onChange={(mode) => change({ mode })} />
        <PlaceField label="From" value={typed.from} onChange={(from) => change({ from })} error={fieldTrouble(trouble, 'from')} />
        <PlaceField label="To" value={typed.to} onChange={(to) => change({ to })} error={fieldTrouble(trouble, 'to')} />
        <Field
          label={onClock('Leaves', typed.from)}
          type="datetime-local"
          value={typed.depart}
          onChange={(depart) => change({ depart })}
          error={fieldTrouble(trouble, 'depart')}
        />
        <Field
          label={onClock('Arrives', typed.to)}
          type="datetime-local"
          value={typed.arrive}
          onChange={(arrive) => change({ arrive })}
          error={fieldTrouble(trouble, 'arrive')}
        />
        {typed.mode === 'drive' ? (
          <Field
            label="Distance as driven"
            placeholder="not known yet"
            figures
            inputMode="decimal"
            unit={unit}
            value={typed.distance}
            onChange={(distance) => change({ distance })}
            error={fieldTrouble(trouble, 'distance')}
          />
        ) : null}
        <Field
          label={`Fare, ${typed.currency}`}
          figures
          inputMode="decimal"
          value={typed.fare}
          onChange={(fare) => change({ fare })}
          error={fieldTrouble(trouble, 'fare')}
        />
        <Field
          label="Baggage it carries"
          placeholder="two bags of 23 kg"
          value={typed.baggage}
          onChange={(baggage) => change({ baggage })}
          error={fieldTrouble(trouble, 'baggage')}
        />
        <Field
          label="Giving it up costs"
          placeholder="USD 120"
          value={typed.cost}
          onChange={(cost) => change({ cost })}
          error={fieldTrouble(trouble, 'cost')}
        />
        <Field
          label="Needed before"
          placeholder="as usual"
          figures
          value={typed.before}
          onChange={(before) => change({ before })}
          error={fieldTrouble(trouble, 'before')}
        />
        <Field
          label="Needed after"
          placeholder="as usual"
          figures
          value={typed.after}
          onChange={(after) => change({ after })}
          error={fieldTrouble(trouble, 'after')}
        />
        <Field label="Note" value={typed.note} onChange={(note) => change({ note })} error={fieldTrouble(trouble, 'note')} />
      </div>
      <div className={style.kind}>
        <Segments
          label="It is"
          value={typed.source}
          options={[
            { value: 'ticketed', label: 'ticketed: it stands' },
            { value: 'typed', label: 'typed: how long the way takes' },
          ]}
          onChange={(source) => change({ source })}
        />
        <Tick checked={typed.berth} onChange={(berth) => change({ berth })}>
          a berth overnight, which counts as rest
        </Tick>
      </div>
      {fieldTrouble(trouble, 'fields.0') ? <p className={style.broken}>{fieldTrouble(trouble, 'fields.0')}</p> : null}
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit">Keep the leg</Button>
        <Button kind="quiet" onPress={onDone}>
          Leave as it was
        </Button>
      </div>
    </EditorForm>
  );
}

/** Says what was kept, with the way back: a change is undone, a new leg is taken out again. */
export function sayKept(kept: Leg, before: Leg | undefined): void {
  const names = `${kept.mode} ${kept.from.name} to ${kept.to.name}`;
  const { id, jobId, version } = kept;
  if (!before) {
    sayWithUndo(`The ${names} is on the trip.`, 'Undo', () => client.trips.dropLeg({ id, version }), `The ${names} is off again.`);
    return;
  }
  const { id: _id, jobId: _jobId, version: _version, news: _news, ...fields } = before;
  const undo = () => client.trips.setLeg({ jobId, id, version, fields });
  sayWithUndo(`The ${names} is changed.`, 'Undo', undo, 'The leg is as it was.');
}

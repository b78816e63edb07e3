import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { Place } from '../../../core/contract/parts.ts';
import type { Personal, PersonalFields } from '../../../core/contract/personal.ts';
import { deed } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { Field } from '../../parts/field.tsx';
import { Reader } from '../../parts/reader.ts';
import { Segments } from '../../parts/segments.tsx';
import { Tick } from '../../parts/tick.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../trouble.ts';
import { sayWithUndo } from '../../undo.ts';
import { spanOfDays, wholeDays } from './own-time-words.ts';
import style from './own-time.module.css';

/** Whole days are typed as dates, the last one included; hours as moments on the clock of their zone. */
type Typed = Omit<PersonalFields, 'zone'> & { whole: boolean };

function typedFrom(stored: Personal | undefined): Typed {
  if (!stored) return { title: '', from: '', to: '', hardness: 'never', note: '', whole: true };
  const { title, from, to, hardness, note } = stored;
  const days = wholeDays(stored);
  return { title, hardness, note, whole: days !== null, from: days?.first ?? from, to: days?.last ?? to };
}

/** Days or hours of one's own; without a stored one a new one. */
export function OwnTimeForm({ home, stored, onDone }: { home: Place; stored?: Personal; onDone: () => void }) {
  const [typed, setTyped] = useState(() => typedFrom(stored));
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const change = (part: Partial<Typed>): void => setTyped({ ...typed, ...part });

  const keep = async (): Promise<void> => {
    const reader = new Reader();
    const { whole, ...rest } = typed;
    const to = typed.to || (whole ? typed.from : '');
    if (typed.from === '') reader.refuse('from', 'is not given');
    if (to === '') reader.refuse('to', 'is not given');
    if (reader.trouble) return setTrouble(reader.trouble);
    const span = whole ? spanOfDays(typed.from, to) : { from: typed.from, to };
    const of = stored ? { id: stored.id, version: stored.version } : {};
    const fields = { ...rest, ...span, zone: stored?.zone ?? home.zone };
    const kept = await deed(() => client.personal.save({ ...of, fields }), setTrouble);
    if (!kept) return;
    onDone();
    sayKept(kept.personal, stored);
  };
  const type = typed.whole ? 'date' : 'datetime-local';
  return (
    <EditorForm
      label={stored ? 'Change the time' : 'Keep time for myself'}
      className={style.form}
      onKeep={() => void keep()}
      onLeave={onDone}
    >
      <div className={style.grid}>
        <Field
          label="What it is"
          placeholder="Family"
          value={typed.title}
          onChange={(title) => change({ title })}
          error={fieldTrouble(trouble, 'title')}
        />
        <Field
          key={`from ${type}`}
          label={typed.whole ? 'First day' : 'From'}
          type={type}
          value={typed.from}
          onChange={(from) => change({ from })}
          error={fieldTrouble(trouble, 'from')}
        />
        <Field
          key={`to ${type}`}
          label={typed.whole ? 'Last day' : 'To'}
          type={type}
          value={typed.to}
          onChange={(to) => change({ to })}
          error={fieldTrouble(trouble, 'to') && 'is before it begins or not given'}
          hint={typed.whole ? 'Empty: the one day.' : null}
        />
        <Field label="Note" value={typed.note} onChange={(note) => change({ note })} error={fieldTrouble(trouble, 'note')} />
      </div>
      <div className={style.head}>
        <Tick checked={typed.whole} onChange={(whole) => change({ whole, from: '', to: '' })}>
          whole days
        </Tick>
        <Segments
          label="A job on it"
          value={typed.hardness}
          options={[
            { value: 'never', label: 'is not possible' },
            { value: 'settle', label: 'must be settled' },
          ]}
          onChange={(hardness) => change({ hardness })}
        />
      </div>
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.head}>
        <Button type="submit">Keep it</Button>
        <Button kind="quiet" onPress={onDone}>
          Leave as it was
        </Button>
      </div>
    </EditorForm>
  );
}

/** Says what was kept, with the way back: a change is undone, new time is taken off again. */
function sayKept({ id, version, title }: Personal, before: Personal | undefined): void {
  if (!before) return sayWithUndo(`${title} is yours.`, 'Undo', () => client.personal.drop({ id, version }), `${title} is off again.`);
  const { id: _id, version: _version, ...fields } = before;
  return sayWithUndo(`${title} is changed.`, 'Undo', () => client.personal.save({ id, version, fields }), `${before.title} is as it was.`);
}

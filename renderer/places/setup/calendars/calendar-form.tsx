import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { Calendar, CalendarFields } from '../../../../core/contract/calendars.ts';
import { deed, say } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { Segments } from '../../../parts/segments.tsx';
import { Tick } from '../../../parts/tick.tsx';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../../trouble.ts';
import style from './calendars.module.css';

/** A calendar of another program, typed. @param zone of home, offered for a new one */
export function CalendarForm({ zone, stored, onDone }: { zone: string; stored?: Calendar; onDone: () => void }) {
  const [typed, setTyped] = useState<CalendarFields>(() => (stored ? fieldsOf(stored) : { ...BLANK, zone }));
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const change = (part: Partial<CalendarFields>): void => setTyped({ ...typed, ...part });
  const keep = async (): Promise<void> => {
    const of = stored ? { id: stored.id, version: stored.version } : {};
    const kept = await deed(() => client.calendars.save({ ...of, fields: typed }), setTrouble);
    if (!kept) return;
    onDone();
    say(kept.calendar.trouble ? `${kept.calendar.name} is kept, but cannot be read yet.` : `${kept.calendar.name} is kept.`);
  };
  return (
    <EditorForm
      label={stored ? `Change ${stored.name}` : 'Add a calendar'}
      className={style.form}
      onKeep={() => void keep()}
      onLeave={onDone}
    >
      <Field
        label="Name"
        placeholder="Family"
        value={typed.name}
        onChange={(name) => change({ name })}
        error={fieldTrouble(trouble, 'name')}
      />
      <Field
        label="File or folder"
        placeholder="/home/me/calendars/family.ics"
        value={typed.path}
        onChange={(path) => change({ path })}
        error={fieldTrouble(trouble, 'path')}
        hint="An .ics file on this computer, or a folder of them, typed from its beginning. It is only read."
      />
      <Field
        label="Clock"
        value={typed.zone}
        onChange={(clock) => change({ zone: clock.trim() })}
        error={fieldTrouble(trouble, 'zone')}
        hint="Of its whole days and of times that name no zone."
      />
      <Segments
        label="What stands in it"
        value={typed.hardness}
        options={[
          { value: 'settle', label: 'must be settled' },
          { value: 'never', label: 'is never given up' },
          { value: 'ignore all-day', label: 'must be settled, whole days left aside' },
        ]}
        onChange={(hardness) => change({ hardness })}
      />
      <Tick checked={typed.isOn} onChange={(isOn) => change({ isOn })}>
        it counts
      </Tick>
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.head}>
        <Button type="submit">Keep and read it</Button>
        <Button kind="quiet" onPress={onDone}>
          Leave as it was
        </Button>
      </div>
    </EditorForm>
  );
}

const BLANK: Omit<CalendarFields, 'zone'> = { name: '', path: '', hardness: 'settle', isOn: true };
const fieldsOf = ({ name, path, zone, hardness, isOn }: Calendar): CalendarFields => ({ name, path, zone, hardness, isOn });

import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { EditStage } from '../../../../core/contract/deliverables.ts';
import type { Place } from '../../../../core/contract/parts.ts';
import { dateIn } from '../../../../core/time/wall.ts';
import { zoneInWords } from '../../../../core/words/dates.ts';
import { deed } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../../trouble.ts';
import style from './edits.module.css';

/** A stretch that is set aside for one stage whatever the plan would say. */
export function PinForm({ stage, home, onDone }: { stage: EditStage; home: Place; onDone: () => void }) {
  const today = dateIn(home.zone, Temporal.Now.instant().epochMilliseconds);
  const [start, setStart] = useState(`${today}T09:00`);
  const [end, setEnd] = useState(`${today}T12:00`);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const keep = async (): Promise<void> => {
    if (await deed(() => client.deliverables.pin({ stageId: stage.id, start, end, key: crypto.randomUUID() }), setTrouble)) onDone();
  };
  return (
    <EditorForm label={`Set aside for ${stage.name}`} className={style.fields} onKeep={() => void keep()} onLeave={onDone}>
      <Field
        label={`${stage.name} from`}
        type="datetime-local"
        value={start}
        onChange={setStart}
        error={fieldTrouble(trouble, 'start')}
        hint={`By the clock of ${zoneInWords(home.zone)}.`}
      />
      <Field label="To" type="datetime-local" value={end} onChange={setEnd} error={fieldTrouble(trouble, 'end')} />
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <span className={style.buttons}>
        <Button type="submit">Set it aside</Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </span>
    </EditorForm>
  );
}

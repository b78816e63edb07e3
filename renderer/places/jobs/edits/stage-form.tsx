import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { EditStage } from '../../../../core/contract/deliverables.ts';
import { hoursOf } from '../../../../core/deliverables/edit-words.ts';
import { parseQuantity } from '../../../../core/money/parse.ts';
import { deed } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { Reader } from '../../../parts/reader.ts';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../../trouble.ts';
import style from './edits.module.css';

/** The hours of one stage, and the date before which it cannot begin. */
export function StageForm({ stage, onDone }: { stage: EditStage; onDone: () => void }) {
  const [hours, setHours] = useState(hoursOf(stage.halfHours));
  const [releaseDate, setReleaseDate] = useState(stage.releaseDate ?? '');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const keep = async (): Promise<void> => {
    const reader = new Reader();
    const read = reader.take('hours', parseQuantity(hours, 'hours'));
    if (read === undefined) return setTrouble(reader.trouble);
    const changes = { hours: read, releaseDate: releaseDate === '' ? null : releaseDate };
    const { id, version } = stage;
    if (await deed(() => client.deliverables.changeStage({ id, version, changes, key: crypto.randomUUID() }), setTrouble)) onDone();
  };
  return (
    <EditorForm label={`Hours of ${stage.name}`} className={style.fields} onKeep={() => void keep()} onLeave={onDone}>
      <Field label={`${stage.name} takes`} value={hours} onChange={setHours} error={fieldTrouble(trouble, 'hours')} />
      <Field
        label="Not before"
        type="date"
        value={releaseDate}
        onChange={setReleaseDate}
        error={fieldTrouble(trouble, 'releaseDate')}
        hint="Empty: as soon as what is before it is done."
      />
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <span className={style.buttons}>
        <Button type="submit">Keep it</Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </span>
    </EditorForm>
  );
}

import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { DeliverableTime, TimeSpent } from '../../../../core/contract/spent.ts';
import { parseLength } from '../../../../core/money/parse.ts';
import { lengthInWords } from '../../../../core/words/amounts.ts';
import { dateInWords } from '../../../../core/words/dates.ts';
import { deed } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { Reader } from '../../../parts/reader.ts';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../../trouble.ts';
import { sayWithUndo } from '../../../undo.ts';
import style from './rounds.module.css';

const NONE = 'none';

/** Time that is typed: a length on a date. @param stages as the deliverable has them; @param today at home */
export function TimeForm(props: {
  deliverableId: string;
  stages: DeliverableTime['stages'];
  today: string;
  stored?: TimeSpent;
  onDone: () => void;
}) {
  const { deliverableId, stages, today, stored, onDone } = props;
  const known = stages.flatMap(({ stageId, kind }) => (stageId === null ? [] : [{ value: stageId, label: kind }]));
  const open = stages.find(({ stageId, done }) => stageId !== null && !done)?.stageId ?? NONE;
  const [stage, setStage] = useState(stored ? (stored.stageId ?? NONE) : open);
  const [on, setOn] = useState(stored?.date ?? today);
  const [length, setLength] = useState(stored ? lengthInWords(stored.minutes) : '');
  const [note, setNote] = useState(stored?.note ?? '');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const keep = async (): Promise<void> => {
    const reader = new Reader();
    const read = reader.take('minutes', parseLength(length));
    if (read && !('minutes' in read)) reader.refuse('minutes', 'is in days; write it as 6 h 30 min');
    if (on === '') reader.refuse('on', 'is not given');
    if (reader.trouble || !read || !('minutes' in read)) return setTrouble(reader.trouble);
    const of = stored ? { id: stored.id, version: stored.version } : {};
    const fields = { stageId: stage === NONE ? null : stage, on, minutes: read.minutes, note };
    const kept = await deed(() => client.spent.type({ deliverableId, ...of, ...fields, key: crypto.randomUUID() }), setTrouble);
    if (!kept) return;
    onDone();
    const { id, version, minutes, date } = kept.entry;
    const said = `${lengthInWords(minutes)} on ${dateInWords(date)} ${stored ? 'as corrected' : 'kept'}.`;
    const undo = () =>
      stored
        ? client.spent.type({
            deliverableId,
            id,
            version,
            stageId: stored.stageId,
            on: stored.date,
            minutes: stored.minutes,
            note: stored.note,
          })
        : client.spent.drop({ id, version });
    sayWithUndo(said, 'Undo', undo, stored ? 'The time is as it was.' : 'The time is off again.');
  };
  return (
    <EditorForm label={stored ? 'Correct the time' : 'Time spent'} className={style.form} onKeep={() => void keep()} onLeave={onDone}>
      <div className={style.fields}>
        <Field label="How long" value={length} onChange={setLength} placeholder="2 h 30 min" error={fieldTrouble(trouble, 'minutes')} />
        <Field label="On" type="date" value={on} onChange={setOn} error={fieldTrouble(trouble, 'on')} />
        <Choice label="On what" value={stage} options={[...known, { value: NONE, label: 'other work' }]} onChange={setStage} />
        <Field label="Note" value={note} onChange={setNote} error={fieldTrouble(trouble, 'note')} />
      </div>
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit">Keep the time</Button>
        <Button kind="quiet" onPress={onDone}>
          Leave as it was
        </Button>
      </div>
    </EditorForm>
  );
}

import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { Deliverable } from '../../../../core/contract/deliverables.ts';
import { parseNumber } from '../../../../core/money/parse.ts';
import { ask } from '../../../ask.ts';
import { deed } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { FormatFields, WorkFields } from '../../../parts/edit-fields.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { Reader } from '../../../parts/reader.ts';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { editNumbers, typedEdit } from '../../../parts/typed-edit.ts';
import { fieldTrouble } from '../../../trouble.ts';
import { sayWithUndo } from '../../../undo.ts';
import style from './edits.module.css';

const ME = 'me';

function typedFrom(deliverable: Deliverable) {
  const { name, due, internalDate, editHours, handId } = deliverable;
  return {
    ...typedEdit(deliverable),
    name,
    due: due ?? '',
    internalDate: internalDate ?? '',
    editHours: editHours ?? '',
    handId: handId ?? ME,
  };
}

/** A promised edit changed: its dates, who edits it, the work that it is, and how the file is to be. */
export function ChangeForm({ deliverable, onDone }: { deliverable: Deliverable; onDone: () => void }) {
  const hands = useQuery(ask.people.hands.queryOptions({ input: {} })).data?.hands ?? [];
  const [typed, setTyped] = useState(() => typedFrom(deliverable));
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const change = (part: Partial<typeof typed>): void => setTyped({ ...typed, ...part });
  const { id, version, name } = deliverable;
  const keep = async (): Promise<void> => {
    const reader = new Reader();
    const { internalDays: _internalDays, ...numbers } = editNumbers(typed, reader);
    const editHours = typed.editHours.trim() === '' ? null : (reader.take('editHours', parseNumber(typed.editHours)) ?? null);
    if (reader.trouble) return setTrouble(reader.trouble);
    const changes = {
      ...numbers,
      name: typed.name,
      due: typed.due === '' ? null : typed.due,
      internalDate: typed.internalDate === '' ? null : typed.internalDate,
      editHours,
      handId: typed.handId === ME ? null : typed.handId,
    };
    const kept = await deed(() => client.deliverables.change({ id, version, changes, key: crypto.randomUUID() }), setTrouble);
    if (!kept) return;
    onDone();
    const before = changesTo(deliverable);
    const back = () => client.deliverables.change({ id, version: kept.deliverable.version, changes: before, key: crypto.randomUUID() });
    sayWithUndo(`${kept.deliverable.name} is changed.`, 'Undo', back, `${name} is as it was.`);
  };
  return (
    <EditorForm label={`Change ${name}`} className={style.form} onKeep={() => void keep()} onLeave={onDone}>
      <div className={style.fields}>
        <Field label="Name" value={typed.name} onChange={(to) => change({ name: to })} error={fieldTrouble(trouble, 'name')} />
        <Field label="Due" type="date" value={typed.due} onChange={(due) => change({ due })} error={fieldTrouble(trouble, 'due')} />
        <Field
          label="Done for myself by"
          type="date"
          value={typed.internalDate}
          onChange={(internalDate) => change({ internalDate })}
          error={fieldTrouble(trouble, 'internalDate')}
        />
        <Choice
          label="Who edits it"
          value={typed.handId}
          options={[{ value: ME, label: 'I do' }, ...hands.map((hand) => ({ value: hand.id, label: hand.name }))]}
          onChange={(handId) => change({ handId })}
          error={fieldTrouble(trouble, 'handId')}
        />
        <Field
          label="Edit hours in all"
          unit="hours"
          figures
          inputMode="decimal"
          value={typed.editHours}
          onChange={(editHours) => change({ editHours })}
          error={fieldTrouble(trouble, 'editHours')}
          hint="Empty: by the finished length."
        />
      </div>
      <WorkFields typed={typed} change={change} trouble={trouble} />
      <FormatFields typed={typed} change={change} trouble={trouble} />
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <span className={style.buttons}>
        <Button type="submit">Keep the change</Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </span>
    </EditorForm>
  );
}

function changesTo(deliverable: Deliverable) {
  const { name, due, internalDate, editHours, handId, finishedMinutes, editHoursPerMinute, ingestHours } = deliverable;
  const { rounds, hoursPerRound, windowDays, sameDay, format } = deliverable;
  const dates = { name, due, internalDate, editHours, handId };
  return { ...dates, finishedMinutes, editHoursPerMinute, ingestHours, rounds, hoursPerRound, windowDays, sameDay, format };
}

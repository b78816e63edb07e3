import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { Job } from '../../../../core/contract/jobs.ts';
import { ask } from '../../../ask.ts';
import { deed, say } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../../trouble.ts';
import style from './edits.module.css';

const NONE = 'none';

/** One thing more that is promised: from a template, or with numbers that are given afterwards. */
export function AddForm({ job, onDone }: { job: Job; onDone: () => void }) {
  const templates = useQuery(ask.templates.list.queryOptions({ input: {} })).data?.templates ?? [];
  const [chosen, setChosen] = useState<string | null>(null);
  const [name, setName] = useState('');
  const [due, setDue] = useState('');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const templateId = chosen ?? templates[0]?.id ?? NONE;
  const keep = async (): Promise<void> => {
    const fields = { ...(name.trim() === '' ? {} : { name }), ...(due === '' ? {} : { due }) };
    const of = templateId === NONE ? {} : { templateId };
    const added = await deed(() => client.deliverables.add({ jobId: job.id, ...of, fields, key: crypto.randomUUID() }), setTrouble);
    if (!added) return;
    onDone();
    say(`${added.deliverable.name} is promised.`);
  };
  return (
    <EditorForm label="Promise something" className={style.fields} onKeep={() => void keep()} onLeave={onDone}>
      <Choice
        label="From"
        value={templateId}
        options={[...templates.map((template) => ({ value: template.id, label: template.name })), { value: NONE, label: 'no template' }]}
        onChange={setChosen}
      />
      <Field
        label="Name"
        placeholder={templates.find(({ id }) => id === templateId)?.name ?? 'Highlights, three minutes'}
        value={name}
        onChange={setName}
        error={fieldTrouble(trouble, 'name')}
      />
      <Field
        label="Due"
        type="date"
        value={due}
        onChange={setDue}
        error={fieldTrouble(trouble, 'due')}
        hint="Empty: by the rule of the template."
      />
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <span className={style.buttons}>
        <Button type="submit">Promise it</Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </span>
    </EditorForm>
  );
}

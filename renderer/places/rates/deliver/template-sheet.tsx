import { useQuery } from '@tanstack/react-query';
import type { Template, TemplateFields } from '../../../../core/contract/templates.ts';
import { blankTemplate } from '../../../../core/deliverables/blank.ts';
import { formatInWords } from '../../../../core/deliverables/format-words.ts';
import { dueInWords, roundsInWords, workInWords } from '../../../../core/deliverables/template-words.ts';
import { ask } from '../../../ask.ts';
import { client } from '../../../door.ts';
import { Asked } from '../../../parts/asked.tsx';
import { FormatFields, InternalField, WorkFields } from '../../../parts/edit-fields.tsx';
import { Empty } from '../../../parts/empty.tsx';
import { Field } from '../../../parts/field.tsx';
import { Group } from '../../../parts/group.tsx';
import { ListedSheet } from '../../../parts/listed-sheet.tsx';
import { Segments } from '../../../parts/segments.tsx';
import sheet from '../../../parts/sheet.module.css';
import { useKeptForm } from '../../../parts/use-kept-form.ts';
import { fieldTrouble } from '../../../trouble.ts';
import { Past } from '../../jobs/edits/past.tsx';
import { templateKind } from './template-kind.ts';

const COUNTS = [
  { value: 'business', label: 'business days' },
  { value: 'calendar', label: 'calendar days' },
] as const;

/** One template; without an id a new one. */
export function TemplatePlace({ id }: { id?: string }) {
  const asked = useQuery(ask.templates.list.queryOptions({ input: {} }));
  return (
    <Asked asked={asked}>
      {({ templates }) => {
        const stored = templates.find((template) => template.id === id);
        if (id !== undefined && !stored)
          return (
            <Empty title="No such template">
              Nothing was changed. <a href="#/rates">All templates</a>
            </Empty>
          );
        return <TemplateSheet {...(stored ? { stored } : {})} />;
      }}
    </Asked>
  );
}

const fieldsOf = ({ id: _id, version: _version, uses: _uses, ...fields }: Template): TemplateFields => fields;

function TemplateSheet({ stored }: { stored?: Template }) {
  const form = useKeptForm(templateKind, stored ?? blankTemplate(), stored);
  const { typed, change, trouble } = form;
  const read = templateKind.fieldsFrom(typed);
  return (
    <ListedSheet
      kind="template"
      title={stored?.name ?? 'New template'}
      back={{ path: '/rates', name: 'All templates' }}
      stored={stored}
      form={form}
      inWords={(of) => [
        { label: 'Name', text: of.name },
        { label: 'Length and work', text: workInWords(of) },
        { label: 'Rounds', text: roundsInWords(of) },
        { label: 'Due', text: dueInWords(of.due) },
        { label: 'Format', text: formatInWords(of.format) },
      ]}
      drop={({ id, version }) => client.templates.drop({ id, version, key: crypto.randomUUID() })}
      putBack={(of) => client.templates.save({ fields: fieldsOf(of), key: crypto.randomUUID() })}
      keepAgain={(of, { version }) => client.templates.save({ id: of.id, version, fields: fieldsOf(of), key: crypto.randomUUID() })}
    >
      <Group title="What it is">
        <div className={sheet.texts}>
          <Field
            label="Name"
            placeholder="Highlights, three minutes"
            value={typed.name}
            onChange={(name) => change({ name })}
            error={fieldTrouble(trouble, 'name')}
          />
        </div>
      </Group>
      <Group title="Work">
        <WorkFields typed={typed} change={change} trouble={trouble} />
        <p className={sheet.second}>{'fields' in read ? `${workInWords(read.fields)}.` : ''}</p>
        {stored ? <Past templateId={stored.id} /> : null}
      </Group>
      <Group title="Due">
        <div className={sheet.grid}>
          <Field
            label="After the last wrap"
            unit="days"
            figures
            inputMode="numeric"
            value={typed.dueDays}
            onChange={(dueDays) => change({ dueDays })}
            error={fieldTrouble(trouble, 'due.days')}
          />
          <Segments label="Counted in" value={typed.count} options={COUNTS} onChange={(count) => change({ count })} />
          <InternalField typed={typed} change={change} trouble={trouble} />
        </div>
      </Group>
      <Group title="Format">
        <FormatFields typed={typed} change={change} trouble={trouble} />
      </Group>
    </ListedSheet>
  );
}

import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { Worked } from '../../../core/contract/hours.ts';
import { DayKind } from '../../../core/contract/parts.ts';
import { dateInWords, zoneInWords } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { deed } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { Field } from '../../parts/field.tsx';
import { Segments } from '../../parts/segments.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../trouble.ts';
import { sayWithUndo } from '../../undo.ts';
import style from './trip.module.css';
import { hoursFields, readHours, type TypedHours } from './typed-hours.ts';

const kinds = DayKind.options.map((kind) => ({ value: kind, label: kind }));
const ofTwo = [
  { value: 'first', label: 'the first' },
  { value: 'second', label: 'the second, an hour later' },
] as const;

/** The hours of one person from call to wrap. @param zones clocks that they may be on, that of the place first */
export function HoursForm(props: { jobId: string; start: TypedHours; stored?: Worked; zones: readonly string[]; onDone: () => void }) {
  const { jobId, stored, onDone } = props;
  const [typed, setTyped] = useState(props.start);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const hands = useQuery(ask.people.hands.queryOptions({ input: {} })).data?.hands ?? [];
  const change = (part: Partial<TypedHours>): void => setTyped({ ...typed, ...part });
  const zones = [...new Set([...props.zones, typed.zone])];
  const names = [{ value: '', label: 'me' }, ...hands.map(({ id, name }) => ({ value: id, label: name }))];
  const gone = stored?.handId && !hands.some(({ id }) => id === stored.handId) ? [{ value: stored.handId, label: stored.handName }] : [];

  const keep = async (): Promise<void> => {
    const read = readHours(typed);
    if ('trouble' in read) return setTrouble(read.trouble);
    const of = stored ? { id: stored.id, version: stored.version } : {};
    const kept = await deed(() => client.hours.save({ jobId, ...of, fields: read.fields, key: crypto.randomUUID() }), setTrouble);
    if (!kept) return;
    onDone();
    sayKept(kept.worked, stored);
  };
  return (
    <EditorForm label={stored ? 'Correct the hours' : 'Hours worked'} className={style.form} onKeep={() => void keep()} onLeave={onDone}>
      <div className={style.grid}>
        <Field
          label="Date of the call"
          type="date"
          value={typed.date}
          onChange={(date) => change({ date })}
          error={fieldTrouble(trouble, 'date')}
        />
        <Field
          label="Call"
          value={typed.call}
          onChange={(call) => change({ call, callIs: null })}
          placeholder="07:00"
          error={fieldTrouble(trouble, 'call')}
        />
        <Field
          label="Wrap"
          value={typed.wrap}
          onChange={(wrap) => change({ wrap, wrapIs: null })}
          placeholder="still running"
          hint="Before the call: on the next date."
          error={fieldTrouble(trouble, 'wrap')}
        />
        <Field
          label="Unpaid breaks"
          value={typed.breaks}
          onChange={(breaks) => change({ breaks })}
          placeholder="none"
          error={fieldTrouble(trouble, 'unpaidBreakMinutes')}
        />
        <Choice label="Kind of day" value={typed.kind} options={kinds} onChange={(kind) => change({ kind })} />
        {names.length + gone.length > 1 ? (
          <Choice label="Who" value={typed.handId} options={[...names, ...gone]} onChange={(handId) => change({ handId })} />
        ) : null}
        {zones.length > 1 ? (
          <Choice
            label="On the clock of"
            value={typed.zone}
            options={zones.map((zone) => ({ value: zone, label: zoneInWords(zone) }))}
            onChange={(zone) => change({ zone })}
          />
        ) : null}
        <Field label="Note" value={typed.note} onChange={(note) => change({ note })} error={fieldTrouble(trouble, 'note')} />
      </div>
      {fieldTrouble(trouble, 'callIs') || typed.callIs ? (
        <Segments label="That call, of the two" value={typed.callIs} options={ofTwo} onChange={(callIs) => change({ callIs })} />
      ) : null}
      {fieldTrouble(trouble, 'wrapIs') || typed.wrapIs ? (
        <Segments label="That wrap, of the two" value={typed.wrapIs} options={ofTwo} onChange={(wrapIs) => change({ wrapIs })} />
      ) : null}
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit">Keep the hours</Button>
        <Button kind="quiet" onPress={onDone}>
          Leave as it was
        </Button>
      </div>
    </EditorForm>
  );
}

/** Says what was kept, with the way back. */
function sayKept(kept: Worked, before: Worked | undefined): void {
  const { id, jobId, version } = kept;
  const named = `${kept.handName === '' ? '' : `${kept.handName}, `}${dateInWords(kept.date)}`;
  if (!before) sayWithUndo(`The hours of ${named} are in.`, 'Undo', () => client.hours.drop({ id, version }), 'They are off again.');
  else
    sayWithUndo(
      `The hours of ${named} are corrected.`,
      'Undo',
      () => client.hours.save({ jobId, id, version, fields: hoursFields(before) }),
      'The hours are as they were.',
    );
}

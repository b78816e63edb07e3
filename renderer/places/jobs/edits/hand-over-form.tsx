import { useEffect, useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { Deliverable } from '../../../../core/contract/deliverables.ts';
import type { OriginalsKind, Reading } from '../../../../core/contract/handovers.ts';
import type { Place } from '../../../../core/contract/parts.ts';
import { handOverCautions } from '../../../../core/handovers/cautions.ts';
import { zoneInWords } from '../../../../core/words/dates.ts';
import { ask, queries } from '../../../ask.ts';
import { deed, say, useDeeds } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { Segments } from '../../../parts/segments.tsx';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { typedMoment } from '../../../parts/typed-moment.ts';
import { fieldTrouble } from '../../../trouble.ts';
import { FileList } from './file-list.tsx';
import { Named, ReadFiles, ReadingProgress, useReading } from './read-files.tsx';
import style from './hand-over.module.css';

type Begin = {
  reading: Reading | null;
  proposed: { originals: OriginalsKind; until: string | null; sentence: string };
  moved: readonly string[];
};

/** First the files are read, then it is said how they are handed over. */
export function HandOverForm(props: {
  deliverable: Pick<Deliverable, 'id' | 'name'>;
  home: Place;
  begin: Begin;
  onOpen: () => void;
  onDone: () => void;
}) {
  const { deliverable, home, begin, onOpen, onDone } = props;
  // What is being read, or was read and not handed over yet, is taken up again: after a reload, or where the form was left.
  const [begun, setBegun] = useState<Reading | null>(isTakenUp(begin.reading) ? begin.reading : null);
  const [typed, setTyped] = useState('');
  const reading = useReading(begun);
  const ended = reading !== null && reading.state !== 'reading';
  useEffect(onOpen, [onOpen]);
  useEffect(() => {
    if (ended) void queries.invalidateQueries({ queryKey: ask.handovers.of.key() });
  }, [ended]);
  if (reading?.state === 'reading') return <ReadingProgress reading={reading} onStop={setBegun} />;
  if (reading?.state === 'done')
    return (
      <KeepForm reading={reading} deliverable={deliverable} home={home} begin={begin} onAgain={() => setBegun(null)} onDone={onDone} />
    );
  return (
    <ReadFiles
      label="Files to hand over"
      read="Read them"
      begin={(paths) => client.handovers.begin({ deliverableId: deliverable.id, paths })}
      typed={typed}
      onType={setTyped}
      before={reading}
      onBegin={setBegun}
      onLeave={onDone}
    />
  );
}

function isTakenUp(reading: Reading | null): boolean {
  return reading !== null && reading.compares === null && (reading.state === 'reading' || reading.state === 'done');
}

const HOWS = [
  { value: 'link', label: 'a link' },
  { value: 'disk', label: 'a disk' },
] as const;
export const ORIGINALS = [
  { value: 'kept until', label: 'kept until' },
  { value: 'handed over', label: 'handed over with it' },
  { value: 'never kept', label: 'not kept' },
] as const;

type KeepProps = Omit<Parameters<typeof HandOverForm>[0], 'onOpen'> & { reading: Reading; onAgain: () => void };

function KeepForm({ reading, deliverable, home, begin: { proposed, moved }, onAgain, onDone }: KeepProps) {
  const { running } = useDeeds();
  const [how, setHow] = useState<'link' | 'disk'>('link');
  const [where, setWhere] = useState('');
  const [originals, setOriginals] = useState(proposed.originals);
  const [until, setUntil] = useState(proposed.until ?? '');
  const [when, setWhen] = useState('');
  const [note, setNote] = useState('');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const at = typedMoment(when, home.zone);
  const keep = async (): Promise<void> => {
    if (!at.ok) return;
    const kept = await deed(
      () =>
        client.handovers.keep({
          deliverableId: deliverable.id,
          from: { run: reading.run },
          how,
          where,
          ...(at.value === undefined ? {} : { at: at.value }),
          originals,
          originalsUntil: originals === 'kept until' && until !== '' ? until : null,
          note,
          key: crypto.randomUUID(),
        }),
      setTrouble,
    );
    if (!kept) return;
    onDone();
    say(`${deliverable.name} is handed over. The delivery note and the message are ready.`);
  };
  return (
    <EditorForm label={`Hand over ${deliverable.name}`} className={style.form} onKeep={() => void keep()} onLeave={onDone}>
      <p role="status">{reading.sentence}</p>
      <FileList files={reading.list} />
      {reading.leftOut.length > 0 ? (
        <div>
          <p className={style.second}>Left out:</p>
          <Named named={reading.leftOut} />
        </div>
      ) : null}
      <div className={style.fields}>
        <Segments label="Handed over by" value={how} options={HOWS} onChange={setHow} />
        <Field
          label="When"
          type="datetime-local"
          value={when}
          onChange={setWhen}
          error={at.ok ? fieldTrouble(trouble, 'at') : at.sentence}
          hint={`By the clock of ${zoneInWords(home.zone)}; empty: now.`}
        />
        <div className={style.wide}>
          <Field
            label={how === 'link' ? 'Link' : 'Label of the disk'}
            value={where}
            onChange={setWhere}
            error={fieldTrouble(trouble, 'where')}
            hint={how === 'link' ? 'It is only written down: nothing is opened or sent.' : 'As it is written on the disk.'}
          />
        </div>
        <Segments label="Originals" value={originals} options={ORIGINALS} onChange={setOriginals} />
        {originals === 'kept until' ? (
          <Field
            label="Last date on which they are kept"
            type="date"
            value={until}
            onChange={setUntil}
            error={fieldTrouble(trouble, 'originalsUntil')}
            hint={`${proposed.sentence} Empty: still to be agreed on.`}
          />
        ) : null}
        <div className={style.wide}>
          <Field label="Remark on the delivery note" value={note} onChange={setNote} rows={2} error={fieldTrouble(trouble, 'note')} />
        </div>
      </div>
      {moved.map((sentence) => (
        <p key={sentence} className={style.second}>{`On the note: ${sentence}`}</p>
      ))}
      <ul className={style.cautions}>
        {handOverCautions(how).map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit" isDisabled={running > 0 || where.trim() === '' || !at.ok}>
          Hand over and write the note
        </Button>
        <Button kind="quiet" onPress={onAgain}>
          Read other files
        </Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}

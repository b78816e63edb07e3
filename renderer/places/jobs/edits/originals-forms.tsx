import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { HandOver } from '../../../../core/contract/handovers.ts';
import { dateInWords } from '../../../../core/words/dates.ts';
import { deed, useDeeds } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { Segments } from '../../../parts/segments.tsx';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../../trouble.ts';
import { sayWithUndo } from '../../../undo.ts';
import { ORIGINALS } from './hand-over-form.tsx';
import style from './hand-over.module.css';

type Props = { handOver: HandOver; name: string; onDone: () => void };

const one = ({ id, version }: HandOver) => ({ id, version, key: crypto.randomUUID() });

/** The originals were deleted: before their date only with a reason. */
export function GoneForm({ handOver, name, onDone }: Props) {
  const { mayGo, until } = handOver.originals;
  const [why, setWhy] = useState('');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const { running } = useDeeds();
  const keep = async (): Promise<void> => {
    const kept = await deed(() => client.handovers.originalsGone({ ...one(handOver), why }), setTrouble);
    if (!kept) return;
    onDone();
    const undo = () => client.handovers.originalsThere(one(kept.handOver));
    sayWithUndo(`The originals of ${name} are noted as deleted.`, 'Undo', undo, 'They are there again.');
  };
  const early = until === null ? 'No date is agreed on' : `They are kept until ${dateInWords(until)}`;
  return (
    <EditorForm label="The originals were deleted" className={style.form} onKeep={() => void keep()} onLeave={onDone}>
      {mayGo ? null : <p className={style.broken}>{`${early}: say why they went before.`}</p>}
      <Field label={mayGo ? 'Remark, may be empty' : 'Why before'} value={why} onChange={setWhy} error={fieldTrouble(trouble, 'why')} />
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit" isDisabled={running > 0 || (!mayGo && why.trim() === '')}>
          Note that they are gone
        </Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}

/** Another agreement on the originals; the note that went out keeps what it said. */
export function OriginalsForm({ handOver, name, onDone }: Props) {
  const before = handOver.originals;
  const [originals, setOriginals] = useState(before.kind);
  const [until, setUntil] = useState(before.until ?? '');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const { running } = useDeeds();
  const keep = async (): Promise<void> => {
    const originalsUntil = originals === 'kept until' && until !== '' ? until : null;
    const kept = await deed(() => client.handovers.setOriginals({ ...one(handOver), originals, originalsUntil }), setTrouble);
    if (!kept) return;
    onDone();
    const undo = () => client.handovers.setOriginals({ ...one(kept.handOver), originals: before.kind, originalsUntil: before.until });
    sayWithUndo(`Changed for the originals of ${name}.`, 'Undo', undo, 'As it was before.');
  };
  return (
    <EditorForm label="What becomes of the originals" className={style.form} onKeep={() => void keep()} onLeave={onDone}>
      <div className={style.fields}>
        <Segments label="Originals" value={originals} options={ORIGINALS} onChange={setOriginals} />
        {originals === 'kept until' ? (
          <Field
            label="Last date on which they are kept"
            type="date"
            value={until}
            onChange={setUntil}
            error={fieldTrouble(trouble, 'originalsUntil')}
            hint="The delivery note that went out does not change: tell the client."
          />
        ) : null}
      </div>
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit" isDisabled={running > 0}>
          Keep it so
        </Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}

/** A hand-over was a mistake. */
export function TakeBackForm({ handOver, name, onDone }: Props) {
  const [why, setWhy] = useState('');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const { running } = useDeeds();
  const keep = async (): Promise<void> => {
    const kept = await deed(() => client.handovers.takeBack({ ...one(handOver), why }), setTrouble);
    if (!kept) return;
    onDone();
    const undo = () => client.handovers.standAgain(one(kept.handOver));
    sayWithUndo(`The hand-over of ${name} is taken back. Its note stays on the books.`, 'Undo', undo, 'It stands again.');
  };
  return (
    <EditorForm label="Take the hand-over back" className={style.form} onKeep={() => void keep()} onLeave={onDone}>
      <Field label="Why it is taken back" value={why} onChange={setWhy} error={fieldTrouble(trouble, 'why')} />
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit" isDisabled={running > 0 || why.trim() === ''}>
          Take it back
        </Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}

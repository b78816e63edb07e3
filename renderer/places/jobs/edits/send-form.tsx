import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { DeliverableRounds } from '../../../../core/contract/rounds.ts';
import { formatMoney } from '../../../../core/money/format.ts';
import { dateInWords } from '../../../../core/words/dates.ts';
import { deed } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { Reader } from '../../../parts/reader.ts';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { typedMoment } from '../../../parts/typed-moment.ts';
import { fieldTrouble } from '../../../trouble.ts';
import { sayWithUndo } from '../../../undo.ts';
import style from './rounds.module.css';

const OTHER = 'other';
type Next = NonNullable<DeliverableRounds['next']>;

/** A cut goes out: which one, when, and how long the client has for notes. @param zone the clock of home */
export function SendForm(props: { deliverableId: string; next: Next; zone: string; onDone: () => void }) {
  const { deliverableId, next, zone, onDone } = props;
  const [cut, setCut] = useState(next.cuts[0]?.closes ?? OTHER);
  const [other, setOther] = useState('');
  const [days, setDays] = useState(String(next.windowDays));
  const [sent, setSent] = useState('');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const chosen = next.cuts.find(({ closes }) => closes === cut);
  const send = async (): Promise<void> => {
    const reader = new Reader();
    const at = reader.take('at', typedMoment(sent, zone));
    if (!/^\d{1,3}$/.test(days.trim())) reader.refuse('windowDays', 'are not a whole number; write 3');
    if (reader.trouble) return setTrouble(reader.trouble);
    const kept = await deed(
      () =>
        client.rounds.send({
          deliverableId,
          what: chosen?.what ?? other,
          closes: chosen?.closes ?? null,
          windowDays: Number(days),
          ...(at === undefined ? {} : { at }),
          key: crypto.randomUUID(),
        }),
      setTrouble,
    );
    if (!kept) return;
    onDone();
    const { id, version, what, dueBack } = kept.round;
    sayWithUndo(
      `The ${what} is out; notes are due by ${dateInWords(dueBack)}.`,
      'Undo',
      () => client.rounds.unsend({ id, version }),
      `The ${what} was not sent.`,
    );
  };
  return (
    <EditorForm label="A cut goes out" className={style.form} onKeep={() => void send()} onLeave={onDone}>
      <div className={style.fields}>
        <Choice
          label="Which cut"
          value={cut}
          options={[...next.cuts.map(({ what, closes }) => ({ value: closes, label: what })), { value: OTHER, label: 'another' }]}
          onChange={setCut}
        />
        {chosen ? null : (
          <Field label="Its name" value={other} onChange={setOther} placeholder="teaser cut" error={fieldTrouble(trouble, 'what')} />
        )}
        <Field
          label="Business days for notes"
          value={days}
          onChange={setDays}
          figures
          hint={Number(days) === next.windowDays ? `Sent now: by ${dateInWords(next.dueBack)}.` : null}
          error={fieldTrouble(trouble, 'windowDays')}
        />
        <Field label="Sent" type="datetime-local" value={sent} onChange={setSent} hint="Empty: now." error={fieldTrouble(trouble, 'at')} />
      </div>
      {next.included ? null : (
        <p>
          {`Notes on this cut are a further round${next.price ? ` at ${formatMoney(next.price, { code: true })}` : ''}. The message says so.`}
        </p>
      )}
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit">It is sent</Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}

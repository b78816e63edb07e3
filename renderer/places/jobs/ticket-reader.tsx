import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { Money } from '../../../core/contract/parts.ts';
import type { Leg, ReadLeg, TicketSpan } from '../../../core/contract/trips.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { Field } from '../../parts/field.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { fieldTrouble, troubleOf } from '../../trouble.ts';
import { piecesOf } from './pieces.ts';
import { ReadLegs } from './ticket-legs.tsx';
import style from './ticket-reader.module.css';

type Read = { text: string; legs: ReadLeg[]; total: Money | null; spans: TicketSpan[]; sentence: string };
type Props = { jobId: string; legs: readonly Leg[]; currency: string; unit: 'mi' | 'km'; onDone: () => void };

/** A confirmation pasted as it came: the legs that were read stand beside its words, and each is kept by itself. */
export function TicketReader({ jobId, legs, currency, unit, onDone }: Props) {
  const [text, setText] = useState('');
  const [read, setRead] = useState<Read | null>(null);
  const [trouble, setTrouble] = useState<Trouble | null>(null);

  const readIt = async (): Promise<void> => {
    if (text.trim() === '')
      return setTrouble({ what: 'Nothing is pasted.', kept: 'Nothing was saved.', todo: 'Paste the words of the mail.' });
    setTrouble(null);
    try {
      setRead({ text, ...(await client.trips.readConfirmation({ jobId, text })) });
    } catch (error) {
      setTrouble(troubleOf(error));
    }
  };
  if (!read)
    return (
      <EditorForm label="Paste a confirmation" className={style.form} onKeep={() => void readIt()} onLeave={onDone}>
        <Field
          label="Confirmation as it came"
          rows={8}
          value={text}
          onChange={setText}
          hint="The text of the mail of an airline, a railway or a ferry. It is read here and not kept."
          error={fieldTrouble(trouble, 'text')}
        />
        {trouble ? <TroubleNote trouble={trouble} /> : null}
        <div className={style.buttons}>
          <Button type="submit">Read it</Button>
          <Button kind="quiet" onPress={onDone}>
            Leave
          </Button>
        </div>
      </EditorForm>
    );
  return (
    <section aria-label="Confirmation" className={style.form}>
      <p aria-live="polite">{read.sentence}</p>
      <div className={style.columns}>
        <p className={style.words} tabIndex={0} aria-label="The words of the confirmation">
          {piecesOf(read.text, read.spans).map((piece) =>
            piece.meaning === null ? (
              piece.text
            ) : (
              <mark key={piece.at} className={style.understood} title={`read as ${piece.meaning}`}>
                {piece.text}
              </mark>
            ),
          )}
        </p>
        <ReadLegs read={read.legs} total={read.total} legs={legs} jobId={jobId} currency={currency} unit={unit} />
      </div>
      <div className={style.buttons}>
        <Button kind="quiet" onPress={() => setRead(null)}>
          Paste it anew
        </Button>
        <Button kind="quiet" onPress={onDone}>
          Done
        </Button>
      </div>
    </section>
  );
}

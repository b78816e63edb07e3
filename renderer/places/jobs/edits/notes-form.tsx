import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { Round } from '../../../../core/contract/rounds.ts';
import { readNotes } from '../../../../core/deliverables/notes.ts';
import { frameRates } from '../../../../core/deliverables/timecode.ts';
import { countInWords } from '../../../../core/words/amounts.ts';
import { deed } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { Reader } from '../../../parts/reader.ts';
import { Tick } from '../../../parts/tick.tsx';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { typedMoment } from '../../../parts/typed-moment.ts';
import { fieldTrouble } from '../../../trouble.ts';
import { sayWithUndo } from '../../../undo.ts';
import style from './rounds.module.css';

/** Notes as they came, read while they are pasted. @param rate by its name, as the format says it; @param zone the clock of home */
export function NotesForm(props: { round: Round; rate: string; zone: string; onDone: () => void }) {
  const { round, zone, onDone } = props;
  const [text, setText] = useState('');
  const [rate, setRate] = useState(frameRates.some(({ name }) => name === props.rate) ? props.rate : '25');
  const [came, setCame] = useState('');
  const [keepDate, setKeepDate] = useState(false);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const first = round.notesAt === null;
  const approved = first && text.trim() === '';
  const take = async (): Promise<void> => {
    const reader = new Reader();
    const at = first ? reader.take('at', typedMoment(came, zone)) : undefined;
    if (reader.trouble) return setTrouble(reader.trouble);
    const { id, version } = round;
    const more = { ...(at === undefined ? {} : { at }), ...(keepDate ? { keepDate } : {}) };
    const kept = await deed(() => client.rounds.notesIn({ id, version, text, rate, ...more, key: crypto.randomUUID() }), setTrouble);
    if (!kept) return;
    onDone();
    const after = kept.round;
    if (first)
      sayWithUndo(
        after.sentence,
        'Undo',
        () => client.rounds.notesBack({ id, version: after.version }),
        `The ${round.what} waits for its notes again.`,
      );
  };
  return (
    <EditorForm label={`Notes on the ${round.what}`} className={style.form} onKeep={() => void take()} onLeave={onDone}>
      <Field
        label="Notes as they came"
        rows={6}
        value={text}
        onChange={setText}
        placeholder={'00:01:02:03 the logo comes too late\n01:20 to 01:24 blur the badge\nmusic softer'}
        hint={
          first
            ? 'One note a line, with its time code before it. Nothing: it was approved without notes.'
            : 'One note a line; they are added.'
        }
        error={fieldTrouble(trouble, 'text')}
      />
      <ReadSoFar text={text} rate={rate} />
      <div className={style.fields}>
        <Choice
          label="Frames a second of the cut"
          value={rate}
          options={frameRates.map(({ name }) => ({ value: name, label: name }))}
          onChange={setRate}
          error={fieldTrouble(trouble, 'rate')}
        />
        {first ? (
          <Field
            label="They came"
            type="datetime-local"
            value={came}
            onChange={setCame}
            hint="Empty: now."
            error={fieldTrouble(trouble, 'at')}
          />
        ) : null}
      </div>
      {first && round.lost > 0 ? (
        <Tick checked={keepDate} onChange={setKeepDate}>
          Keep the date all the same, as a courtesy
        </Tick>
      ) : null}
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit">{approved ? 'It was approved without notes' : 'Take the notes in'}</Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}

/** What is read of the text so far, and the time codes that cannot be. */
function ReadSoFar({ text, rate }: { text: string; rate: string }) {
  const found = frameRates.find(({ name }) => name === rate);
  if (!found || text.trim() === '') return null;
  const { notes, troubles } = readNotes(text, found);
  const timed = notes.filter(({ from }) => from !== null).length;
  return (
    <div className={style.read} role="status">
      <p className={style.second}>{`${countInWords(notes.length, 'note')}, ${timed} with a time code.`}</p>
      {troubles.map(({ line, sentence }) => (
        <p key={line} className={style.broken}>
          {sentence}
        </p>
      ))}
    </div>
  );
}

import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { Reading } from '../../../../core/contract/handovers.ts';
import { readingPart } from '../../../../core/handovers/reading.ts';
import { oneLine } from '../../../../core/words/visible.ts';
import { ask, queries } from '../../../ask.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { troubleOf } from '../../../trouble.ts';
import style from './hand-over.module.css';

/** How often a running reading is looked at, milliseconds. */
const OFTEN = 400;

/** The reading as it is now, asked again while it runs. */
export function useReading(begun: Reading | null): Reading | null {
  const run = begun?.run ?? '';
  // One that has ended stays as it is, and is forgotten once its list is on the books.
  const runs = (found: { reading: Reading } | undefined): boolean => (found ?? { reading: begun }).reading?.state === 'reading';
  const { data } = useQuery(
    ask.handovers.progress.queryOptions({
      input: { run },
      enabled: ({ state }) => begun?.state === 'reading' && runs(state.data),
      refetchInterval: OFTEN,
    }),
  );
  return begun?.state === 'reading' && data?.reading.run === run ? data.reading : begun;
}

/** Say which files, and have them read: the page never sees them, the program does. */
export function ReadFiles(props: {
  /** What the form is called, and how its button is. */
  label: string;
  read: string;
  begin: (paths: string[]) => Promise<{ reading: Reading }>;
  /** What was typed, kept while it is read, so that a path with a mistake in it need not be typed again. */
  typed: string;
  onType: (typed: string) => void;
  before: Reading | null;
  onBegin: (reading: Reading) => void;
  onLeave: () => void;
}) {
  const { label, read, typed, onType, before, onBegin, onLeave } = props;
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  // Asked for twice before the first answer is there, the second would be refused on a form that is gone by then.
  const [asking, setAsking] = useState(false);
  const begin = async (): Promise<void> => {
    if (asking) return;
    const paths = typed.split('\n').filter((line) => line.trim() !== '');
    setAsking(true);
    try {
      const { reading } = await props.begin(paths);
      setTrouble(null);
      onBegin(reading);
    } catch (error) {
      setTrouble(troubleOf(error));
    } finally {
      setAsking(false);
    }
  };
  return (
    <EditorForm label={label} className={style.form} onKeep={() => void begin()} onLeave={onLeave}>
      <Field
        label="Files or folders, one on each line"
        rows={3}
        value={typed}
        onChange={onType}
        placeholder="/home/me/Curling/final"
        hint="Whole paths, as the file manager shows or copies them. Links inside a folder are left out."
      />
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      {before ? <Ended reading={before} /> : null}
      <div className={style.buttons}>
        <Button type="submit" isDisabled={asking || typed.trim() === ''}>
          {before ? `${read} again` : read}
        </Button>
        <Button kind="quiet" onPress={onLeave}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}

/** A reading that came to nothing, and why. */
function Ended({ reading: { sentence, troubles } }: { reading: Reading }) {
  return (
    <div role="alert">
      <p className={style.broken}>{sentence}</p>
      <Named named={troubles} />
    </div>
  );
}

/** Sentences about files. */
export function Named({ named }: { named: Reading['leftOut'] }) {
  return (
    <ul className={style.second}>
      {named.slice(0, 20).map(({ name, sentence }) => (
        <li key={name}>{`${oneLine(name)} ${sentence}.`}</li>
      ))}
      {named.length > 20 ? <li>{`And ${named.length - 20} more.`}</li> : null}
    </ul>
  );
}

/** How far a reading is, with the way to stop it. */
export function ReadingProgress({ reading, onStop }: { reading: Reading; onStop: (reading: Reading) => void }) {
  const stop = async (): Promise<void> => {
    const { reading: stopped } = await client.handovers.stop({ run: reading.run });
    await queries.invalidateQueries({ queryKey: ask.handovers.of.key() });
    onStop(stopped);
  };
  return (
    <div className={style.progress}>
      <progress className={style.bar} value={readingPart(reading)} max={1} aria-label="Reading the files" />
      <Button onPress={() => void stop()}>Stop</Button>
      <p className={style.name}>{reading.sentence}</p>
      <p className={`${style.second} ${style.name}`}>{oneLine(reading.name)}</p>
    </div>
  );
}

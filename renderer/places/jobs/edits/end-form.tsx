import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { TimeSpent } from '../../../../core/contract/spent.ts';
import { epochOf, wallAt } from '../../../../core/time/read.ts';
import { lengthInWords } from '../../../../core/words/amounts.ts';
import { deed, say } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { Reader } from '../../../parts/reader.ts';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { typedMoment } from '../../../parts/typed-moment.ts';
import { fieldTrouble } from '../../../trouble.ts';
import style from './rounds.module.css';

/** A clock that ran on after the work had ended. @param zone the clock of home */
export function EndForm({ running, zone, onDone }: { running: TimeSpent; zone: string; onDone: () => void }) {
  const [ended, setEnded] = useState(wallAt(epochOf(running.startAt), zone));
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const stop = async (): Promise<void> => {
    const reader = new Reader();
    const at = reader.take('at', typedMoment(ended, zone));
    if (reader.trouble) return setTrouble(reader.trouble);
    const { id, version } = running;
    const kept = await deed(
      () => client.spent.stop({ id, version, ...(at === undefined ? {} : { at }), key: crypto.randomUUID() }),
      setTrouble,
    );
    if (!kept) return;
    onDone();
    say(kept.entry ? `${lengthInWords(kept.entry.minutes)} kept.` : 'Not a minute was spent; nothing was kept.');
  };
  return (
    <EditorForm label="When the work ended" className={style.form} onKeep={() => void stop()} onLeave={onDone}>
      <div className={style.fields}>
        <Field label="The work ended" type="datetime-local" value={ended} onChange={setEnded} error={fieldTrouble(trouble, 'at')} />
      </div>
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit">Stop it there</Button>
        <Button kind="quiet" onPress={onDone}>
          Let it run
        </Button>
      </div>
    </EditorForm>
  );
}

import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import { epochOf, wallAt } from '../../../core/time/read.ts';
import { wallInWords, zoneInWords } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { deed, say } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { Field } from '../../parts/field.tsx';
import { Reader } from '../../parts/reader.ts';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { typedMoment } from '../../parts/typed-moment.ts';
import { fieldTrouble } from '../../trouble.ts';
import style from './agreed.module.css';

type Props = { job: Job; home: Place };

/** What was agreed after the yes, in words. */
export function Amendments({ job, home }: Props) {
  const [open, setOpen] = useState(false);
  const { data } = useQuery(ask.jobs.amendments.queryOptions({ input: { id: job.id } }));
  const amendments = data?.amendments ?? [];
  return (
    <div className={style.part}>
      <h3>Agreed since</h3>
      {amendments.length === 0 ? <p className={style.second}>Nothing beside the quote and the terms.</p> : null}
      <ul className={style.papers}>
        {amendments.map(({ id, what, who, at, how }) => (
          <li key={id}>
            <p className={style.words}>{what}</p>
            <p className={style.second}>{`With ${who}, ${how}, ${wallInWords(wallAt(epochOf(at), home.zone))}`}</p>
          </li>
        ))}
      </ul>
      {open ? (
        <AmendForm job={job} home={home} onClose={() => setOpen(false)} />
      ) : (
        <div>
          <Button onPress={() => setOpen(true)}>Note a change that was agreed</Button>
        </div>
      )}
    </div>
  );
}

function AmendForm({ job, home, onClose }: Props & { onClose: () => void }) {
  const [typed, setTyped] = useState({ what: '', who: job.ink?.who ?? '', how: 'mail', when: '' });
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const set = (part: Partial<typeof typed>): void => {
    setTrouble(null);
    setTyped({ ...typed, ...part });
  };
  const keep = async (): Promise<void> => {
    const { what, who, how, when } = typed;
    const reader = new Reader();
    const at = reader.take('at', typedMoment(when, home.zone));
    for (const [name, text] of Object.entries({ what, who, how })) if (text.trim() === '') reader.refuse(name, 'is empty');
    if (reader.trouble) return setTrouble(reader.trouble);
    const one = { id: job.id, version: job.version, key: crypto.randomUUID() };
    const done = await deed(
      () => client.jobs.amend({ ...one, what: what.trim(), who, how, ...(at === undefined ? {} : { at }) }),
      setTrouble,
    );
    if (!done) return;
    say('Noted. It stays as it is; what changes again is noted again.');
    onClose();
  };
  return (
    <EditorForm label="A change that was agreed" className={style.form} onKeep={() => void keep()} onLeave={onClose}>
      <Field
        label="What was agreed"
        rows={3}
        value={typed.what}
        onChange={(what) => set({ what })}
        error={fieldTrouble(trouble, 'what')}
        hint="In words. It changes neither price nor dates by itself: change the bill or the days too."
      />
      <div className={style.two}>
        <Field label="With whom" value={typed.who} onChange={(who) => set({ who })} error={fieldTrouble(trouble, 'who')} />
        <Field label="In which way" value={typed.how} onChange={(how) => set({ how })} error={fieldTrouble(trouble, 'how')} />
        <Field
          label="When it was agreed"
          type="datetime-local"
          value={typed.when}
          onChange={(when) => set({ when })}
          error={fieldTrouble(trouble, 'at')}
          hint={`By the clock of ${zoneInWords(home.zone)}; empty: now.`}
        />
      </div>
      {trouble && !trouble.fields ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.row}>
        <Button type="submit">Note it</Button>
        <Button kind="quiet" onPress={onClose}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}

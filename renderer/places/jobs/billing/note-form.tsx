import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { Invoice } from '../../../../core/contract/invoices.ts';
import { formatMoney } from '../../../../core/money/format.ts';
import { deed, say } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import quote from '../quote.module.css';

export type NoteKind = 'dispute' | 'settle' | 'write off';

const words: Record<NoteKind, { ask: string; keep: string; done: (number: string) => string }> = {
  dispute: { ask: 'What they dispute', keep: 'Note the dispute', done: (number) => `${number} is noted as disputed.` },
  settle: { ask: '', keep: 'It is settled', done: (number) => `The dispute over ${number} is settled.` },
  'write off': {
    ask: 'Why it is given up',
    keep: 'Write it off',
    done: (number) => `${number} is written off. Money that comes later counts all the same.`,
  },
};

/** Something that happened to an invoice beside money: a dispute, its end, giving it up. */
export function NoteForm({ invoice, kind, onClose }: { invoice: Invoice; kind: NoteKind; onClose: () => void }) {
  const [why, setWhy] = useState('');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const { id, number, open } = invoice;
  const { ask, keep, done } = words[kind];
  const key = (): { id: string; key: string } => ({ id, key: crypto.randomUUID() });
  const save = async (): Promise<void> => {
    const saved = await deed(
      () =>
        kind === 'write off'
          ? client.invoices.writeOff({ ...key(), reason: why })
          : client.invoices.dispute({ ...key(), why: kind === 'settle' ? null : why }),
      setTrouble,
    );
    if (!saved) return;
    say(done(number));
    onClose();
  };
  return (
    <EditorForm label={keep} className={quote.inside} onKeep={() => void save()} onLeave={onClose}>
      {kind === 'write off' ? <p>{`${formatMoney(open, { code: true })} would be given up.`}</p> : null}
      {ask === '' ? null : <Field label={ask} value={why} onChange={setWhy} />}
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={quote.buttons}>
        <Button type="submit" isDisabled={ask !== '' && why.trim() === ''}>
          {keep}
        </Button>
        <Button kind="quiet" onPress={onClose}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}

import { useState, type ReactNode } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import { factBehind } from '../../../core/inquiries/remember.ts';
import { Button } from '../../parts/button.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import style from './facts.module.css';
import type { FactChanges, FactProps } from './change-job.ts';
import { Questions } from './questions.tsx';
import { Remembered } from './remembered.tsx';

/**
 * One fact: shown as words, changed in place.
 * @param read turns what is typed into changes, or into the trouble that says why not
 */
export function Fact<T>(
  props: {
    label: string;
    shown: ReactNode;
    start: () => T;
    renderEditor: (typed: T, change: (typed: T) => void, trouble: Trouble | null) => ReactNode;
    read: (typed: T) => FactChanges | { trouble: Trouble };
    settles?: string[];
  } & FactProps,
) {
  const [typed, setTyped] = useState<{ value: T } | null>(null);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const close = (): void => {
    setTyped(null);
    setTrouble(null);
  };
  const submit = async (value: T): Promise<void> => {
    const read = props.read(value);
    if ('trouble' in read) {
      setTrouble(read.trouble);
      return;
    }
    if (await props.save(read, { onTrouble: setTrouble, ...(props.settles ? { settled: props.settles } : {}) })) close();
  };
  return (
    <>
      <dt className={style.label}>{props.label}</dt>
      <dd className={`${style.value} ${typed === null ? '' : style.whole}`}>
        {typed === null ? (
          <span className={style.shown}>
            <span>{props.shown}</span>
            {props.locked ? null : (
              <Button kind="quiet" onPress={() => setTyped({ value: props.start() })} aria-label={`Change ${props.label}`}>
                Change
              </Button>
            )}
          </span>
        ) : (
          <EditorForm label={`Change ${props.label}`} className={style.editor} onKeep={() => void submit(typed.value)} onLeave={close}>
            {props.renderEditor(typed.value, (value) => setTyped({ value }), trouble)}
            {trouble ? <TroubleNote trouble={trouble} /> : null}
            <span className={style.buttons}>
              <Button type="submit">Keep</Button>
              <Button kind="quiet" onPress={close}>
                Leave as it was
              </Button>
            </span>
          </EditorForm>
        )}
        <Remembered {...props} notes={(props.job.remembered ?? []).filter(({ fact }) => props.settles?.includes(factBehind[fact]))} />
        {props.locked ? null : (
          <Questions {...props} questions={props.job.questions.filter(({ field }) => props.settles?.includes(field))} />
        )}
      </dd>
    </>
  );
}

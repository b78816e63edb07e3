import type { ReactNode } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { ChangeDraft } from '../../drafts.ts';
import { Button } from '../../parts/button.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import style from './quote.module.css';

/** What every form under the quote's lines is given. */
export type QuoteFormProps = { change: ChangeDraft; onClose: () => void };

/** A form under the quote's lines: its name, its inputs in two columns, keep or leave. */
export function QuoteForm(props: {
  label: string;
  keep: string;
  onKeep: () => void;
  onClose: () => void;
  trouble: Trouble | null;
  children: ReactNode;
}) {
  return (
    <EditorForm label={props.label} className={style.inside} onKeep={props.onKeep} onLeave={props.onClose}>
      <h3>{props.label}</h3>
      <div className={style.edit}>{props.children}</div>
      {props.trouble && !props.trouble.fields ? <TroubleNote trouble={props.trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit">{props.keep}</Button>
        <Button kind="quiet" onPress={props.onClose}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}

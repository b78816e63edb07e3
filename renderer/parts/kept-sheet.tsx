import type { ReactNode } from 'react';
import { Button } from './button.tsx';
import { ClashNote, type Said } from './clash-note.tsx';
import sheet from './sheet.module.css';
import { TroubleNote } from './trouble-note.tsx';
import type { KeptForm } from './use-kept-form.ts';

/** The frame of something that is kept: its name, what stands against a save, the groups of fields, and saving. */
export function KeptSheet<T, F, S extends F & { name: string }>(props: {
  /** What is saved, as the button says it. */
  kind: string;
  title: string;
  back: { path: string; name: string };
  stored: S | undefined;
  form: KeptForm<T, F, S>;
  inWords: (fields: F) => Said[];
  onSaved: (saved: S) => void;
  /** What else can be done with it, beside its name. */
  aside: ReactNode;
  children: ReactNode;
}) {
  const { form, stored, back } = props;
  const save = async (how: () => Promise<S | undefined>): Promise<void> => {
    const saved = await how();
    if (saved) props.onSaved(saved);
  };
  return (
    <form
      className={sheet.page}
      onSubmit={(event) => {
        event.preventDefault();
        void save(form.save);
      }}
    >
      <div className={sheet.head}>
        <div className={sheet.titles}>
          <h1 className={sheet.title}>{props.title}</h1>
          <a href={`#${back.path}`}>{back.name}</a>
        </div>
        {props.aside}
      </div>
      {props.children}
      <div className={sheet.bar}>
        {form.clash ? (
          <ClashNote
            name={form.clash.theirs.name}
            theirs={props.inWords(form.clash.theirs)}
            mine={props.inWords(form.clash.mine)}
            onTheirs={form.takeTheirs}
            onMine={() => void save(form.keepMine)}
          />
        ) : form.trouble ? (
          <TroubleNote trouble={form.trouble} />
        ) : null}
        <div className={sheet.row}>
          <Button kind="black" type="submit" isDisabled={form.clash !== null}>
            {`Save the ${props.kind}`}
          </Button>
          <span className={sheet.second}>{stored && form.unsaved ? 'Changed here, not saved yet.' : ''}</span>
        </div>
      </div>
    </form>
  );
}

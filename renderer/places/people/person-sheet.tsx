import type { ReactNode } from 'react';
import { say } from '../../deeds.ts';
import { Button } from '../../parts/button.tsx';
import { ClashNote, type Said } from '../../parts/clash-note.tsx';
import sheet from '../../parts/sheet.module.css';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { sceneNow } from '../../scene.ts';
import { AwayNote, PutAway } from './away.tsx';
import style from './people.module.css';
import type { KeptForm } from '../../parts/use-kept-form.ts';

type Stored = { id: string; name: string; version: number };

/** The frame of a person's sheet: the name, what stands against a save, the groups of fields, and saving. */
export function PersonSheet<T, F, S extends F & Stored>(props: {
  kind: 'client' | 'hand';
  title: string;
  back: { path: string; name: string };
  stored: S | undefined;
  form: KeptForm<T, F, S>;
  inWords: (fields: F) => Said[];
  children: ReactNode;
}) {
  const { kind, stored, form } = props;
  const save = async (how: () => Promise<S | undefined>): Promise<void> => {
    const saved = await how();
    if (!saved) return;
    if (!stored) sceneNow().go(`/people/${kind}/${saved.id}`);
    say(`${saved.name} is saved.${stored && kind === 'client' ? ' New quotes use it; made versions stay as they are.' : ''}`);
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
          <a href={`#${props.back.path}`}>{props.back.name}</a>
        </div>
        {stored ? <PutAway kind={kind} one={stored} unsaved={form.unsaved} /> : null}
      </div>
      {stored ? <AwayNote kind={kind} id={stored.id} /> : null}
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
            {`Save the ${kind}`}
          </Button>
          <span className={style.second}>{stored && form.unsaved ? 'Changed here, not saved yet.' : ''}</span>
        </div>
      </div>
    </form>
  );
}

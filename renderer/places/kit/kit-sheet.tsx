import type { ReactNode } from 'react';
import { deed, say, useDeeds } from '../../deeds.ts';
import { Button } from '../../parts/button.tsx';
import { ClashNote, type Said } from '../../parts/clash-note.tsx';
import sheet from '../../parts/sheet.module.css';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import type { KeptForm } from '../../parts/use-kept-form.ts';
import { sceneNow } from '../../scene.ts';

type Stored = { id: string; name: string; version: number };

/** The frame of a thing or a preset: its name, what stands against a save, the groups of fields, saving, and taking it off the list. */
export function KitSheet<T, F, S extends F & Stored>(props: {
  kind: 'thing' | 'preset';
  title: string;
  back: { path: string; name: string };
  stored: S | undefined;
  form: KeptForm<T, F, S>;
  inWords: (fields: F) => Said[];
  drop: (stored: S) => Promise<unknown>;
  /** Puts a thing that was taken off on the list again. */
  putBack: (stored: S) => Promise<unknown>;
  children: ReactNode;
}) {
  const { kind, stored, form, back } = props;
  const { running } = useDeeds();
  const save = async (how: () => Promise<S | undefined>): Promise<void> => {
    const saved = await how();
    if (!saved) return;
    if (!stored) sceneNow().go(back.path);
    say(`${saved.name} is saved.`);
  };
  const drop = async (one: S): Promise<void> => {
    const gone = await deed(() => props.drop(one));
    if (!gone) return;
    sceneNow().go(back.path);
    say(`${one.name} was taken off the list.`, {
      label: 'Put it back',
      perform: () => deed(() => props.putBack(one).then(() => say(`${one.name} is on the list again.`))),
    });
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
        {stored ? (
          <Button isDisabled={running > 0} onPress={() => void drop(stored)} aria-label={`Take ${stored.name} off the list`}>
            Take off the list
          </Button>
        ) : null}
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
            {`Save the ${kind}`}
          </Button>
          <span className={sheet.second}>{stored && form.unsaved ? 'Changed here, not saved yet.' : ''}</span>
        </div>
      </div>
    </form>
  );
}

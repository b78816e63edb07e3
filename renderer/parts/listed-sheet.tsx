import type { ReactNode } from 'react';
import { deed, say, useDeeds } from '../deeds.ts';
import { Button } from './button.tsx';
import type { Said } from './clash-note.tsx';
import { KeptSheet } from './kept-sheet.tsx';
import type { KeptForm } from './use-kept-form.ts';
import { sceneNow } from '../scene.ts';
import { sayWithUndo } from '../undo.ts';

type Stored = { id: string; name: string; version: number };

/** The sheet of something that stands on a list and can be taken off it. */
export function ListedSheet<T, F, S extends F & Stored>({
  drop,
  putBack,
  keepAgain,
  ...sheet
}: {
  kind: 'thing' | 'preset' | 'template' | 'document';
  title: string;
  back: { path: string; name: string };
  stored: S | undefined;
  form: KeptForm<T, F, S>;
  inWords: (fields: F) => Said[];
  drop: (stored: S) => Promise<unknown>;
  /** Puts a thing that was taken off on the list again. */
  putBack: (stored: S) => Promise<unknown>;
  /** Saves it as it was over what was saved last. */
  keepAgain: (before: S, over: S) => Promise<unknown>;
  children: ReactNode;
}) {
  const { stored, back } = sheet;
  const { running } = useDeeds();
  const takeOff = async (one: S): Promise<void> => {
    const gone = await deed(() => drop(one));
    if (!gone) return;
    sceneNow().go(back.path);
    sayWithUndo(`${one.name} was taken off the list.`, 'Put it back', () => putBack(one), `${one.name} is on the list again.`);
  };
  return (
    <KeptSheet
      {...sheet}
      onSaved={(saved) => {
        if (stored) return sayWithUndo(`${saved.name} is saved.`, 'Undo', () => keepAgain(stored, saved), `${stored.name} is as it was.`);
        sceneNow().go(back.path);
        say(`${saved.name} is saved.`);
      }}
      aside={
        stored ? (
          <Button isDisabled={running > 0} onPress={() => void takeOff(stored)} aria-label={`Take off the list: ${stored.name}`}>
            Take off the list
          </Button>
        ) : null
      }
    />
  );
}

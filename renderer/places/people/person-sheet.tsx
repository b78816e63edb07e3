import type { ReactNode } from 'react';
import { say } from '../../deeds.ts';
import type { Said } from '../../parts/clash-note.tsx';
import { KeptSheet } from '../../parts/kept-sheet.tsx';
import type { KeptForm } from '../../parts/use-kept-form.ts';
import { sceneNow } from '../../scene.ts';
import { AwayNote, PutAway } from './away.tsx';

type Stored = { id: string; name: string; version: number };

/** The sheet of a person, who can be put away. */
export function PersonSheet<T, F, S extends F & Stored>({
  children,
  ...sheet
}: {
  kind: 'client' | 'hand';
  title: string;
  back: { path: string; name: string };
  stored: S | undefined;
  form: KeptForm<T, F, S>;
  inWords: (fields: F) => Said[];
  children: ReactNode;
}) {
  const { kind, stored, form } = sheet;
  return (
    <KeptSheet
      {...sheet}
      onSaved={(saved) => {
        if (!stored) sceneNow().go(`/people/${kind}/${saved.id}`);
        say(`${saved.name} is saved.${stored && kind === 'client' ? ' New quotes use it; made versions stay as they are.' : ''}`);
      }}
      aside={stored ? <PutAway kind={kind} one={stored} unsaved={form.unsaved} /> : null}
    >
      {stored ? <AwayNote kind={kind} id={stored.id} /> : null}
      {children}
    </KeptSheet>
  );
}

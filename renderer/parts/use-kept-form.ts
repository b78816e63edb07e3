import { useState } from 'react';
import type { Trouble } from '../../core/contract/base.ts';
import { deed } from '../deeds.ts';

type Read<F> = { fields: F } | { trouble: Trouble };

/** How one kind of thing is typed, read, kept and compared. */
export type KeptKind<T, F, S> = {
  typedFrom: (fields: F) => T;
  fieldsFrom: (typed: T) => Read<F>;
  keep: (fields: F, stored: { id: string; version: number } | undefined) => Promise<S>;
  /** The state that is stored now, out of a trouble that says a save was stale. */
  storedIn: (current: unknown) => S | undefined;
};

export type KeptForm<T, F, S> = {
  typed: T;
  change: (part: Partial<T>) => void;
  trouble: Trouble | null;
  unsaved: boolean;
  save: () => Promise<S | undefined>;
  /** Two states that stand against each other after a stale save. */
  clash: { theirs: S; mine: F } | null;
  takeTheirs: () => void;
  keepMine: () => Promise<S | undefined>;
};

/** The state of a sheet that is kept: what is typed, what is wrong with it, and saving it, also against somebody else's save. */
export function useKeptForm<T extends object, F, S extends F & { id: string; version: number }>(
  kind: KeptKind<T, F, S>,
  start: F,
  stored: S | undefined,
): KeptForm<T, F, S> {
  const begin = (fields: F, kept: S | undefined) => ({ kept, typed: kind.typedFrom(fields) });
  const [base, setBase] = useState(() => begin(start, stored));
  const [typed, setTyped] = useState(base.typed);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const unsaved = JSON.stringify(typed) !== JSON.stringify(base.typed);

  const stand = (now: S): void => {
    const next = begin(now, now);
    setBase(next);
    setTyped(next.typed);
    setTrouble(null);
  };
  // A sheet that nobody is typing on shows what was saved elsewhere.
  if (stored && base.kept && stored.version > base.kept.version && !unsaved) stand(stored);

  const read = kind.fieldsFrom(typed);
  const theirs = trouble?.current === undefined ? undefined : kind.storedIn(trouble.current);

  const saveOver = async (kept: S | undefined): Promise<S | undefined> => {
    if ('trouble' in read) {
      setTrouble(read.trouble);
      return undefined;
    }
    setTrouble(null);
    const saved = await deed(() => kind.keep(read.fields, kept), setTrouble);
    if (saved) stand(saved);
    return saved;
  };
  const change = (part: Partial<T>): void => {
    const next = { ...typed, ...part };
    setTyped(next);
    // Once a save was refused, every correction is read at once; a clash stays until it is settled.
    if (trouble && !theirs) {
      const now = kind.fieldsFrom(next);
      setTrouble('trouble' in now ? now.trouble : null);
    }
  };
  return {
    typed,
    change,
    trouble,
    unsaved,
    save: () => saveOver(base.kept),
    clash: theirs && 'fields' in read ? { theirs, mine: read.fields } : null,
    takeTheirs: () => {
      if (theirs) stand(theirs);
    },
    keepMine: () => saveOver(theirs),
  };
}

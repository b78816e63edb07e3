import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { Setup } from '../../../core/contract/setup.ts';
import { deed } from '../../deeds.ts';
import { client } from '../../door.ts';
import { emptySetup, fieldsFrom, typedFrom, type TypedSetup } from './typed.ts';

/** The set-up form's state: what is typed, what is wrong with it, and saving it. */
export function useSetupForm(stored: Setup | null) {
  const [typed, setTyped] = useState<TypedSetup>(() => (stored ? typedFrom(stored) : emptySetup));
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const change = (part: Partial<TypedSetup>): void => {
    const next = { ...typed, ...part };
    setTyped(next);
    // Once a save was refused, every correction is read at once.
    if (trouble) {
      const read = fieldsFrom(next);
      setTrouble('trouble' in read ? read.trouble : null);
    }
  };
  const save = async (): Promise<boolean> => {
    const read = fieldsFrom(typed);
    if ('trouble' in read) {
      setTrouble(read.trouble);
      return false;
    }
    setTrouble(null);
    const saved = await deed(() => client.setup.save({ fields: read.fields, ...(stored ? { version: stored.version } : {}) }), setTrouble);
    return saved !== undefined;
  };
  return { typed, change, trouble, save };
}

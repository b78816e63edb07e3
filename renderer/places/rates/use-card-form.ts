import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { RateCard, RateCardFields } from '../../../core/contract/rates.ts';
import { deed } from '../../deeds.ts';
import { client } from '../../door.ts';
import { fieldsFrom, typedFrom, type TypedCard } from './typed-card.ts';

export type CardForm = {
  typed: TypedCard;
  change: (part: Partial<TypedCard>) => void;
  trouble: Trouble | null;
  save: () => Promise<RateCard | undefined>;
};

/** The rate card form's state: what is typed, what is wrong with it, and saving it. */
export function useCardForm(start: RateCardFields, stored?: RateCard): CardForm {
  const [typed, setTyped] = useState(() => typedFrom(start));
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const save = async (): Promise<RateCard | undefined> => {
    const read = fieldsFrom(typed);
    if ('trouble' in read) {
      setTrouble(read.trouble);
      return undefined;
    }
    setTrouble(null);
    const saved = await deed(
      () => client.rates.save({ fields: read.fields, ...(stored ? { id: stored.id, version: stored.version } : {}) }),
      setTrouble,
    );
    return saved?.card;
  };
  const change = (part: Partial<TypedCard>): void => {
    const next = { ...typed, ...part };
    setTyped(next);
    // Once a save was refused, every correction is read at once.
    if (trouble) {
      const read = fieldsFrom(next);
      setTrouble('trouble' in read ? read.trouble : null);
    }
  };
  return { typed, change, trouble, save };
}

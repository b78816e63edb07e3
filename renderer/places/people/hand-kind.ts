import { Hand, type HandFields } from '../../../core/contract/people.ts';
import { client } from '../../door.ts';
import { handFields, typedHand, type TypedHand } from './typed-hand.ts';
import type { KeptForm, KeptKind } from '../../parts/use-kept-form.ts';

export const handKind: KeptKind<TypedHand, HandFields, Hand> = {
  typedFrom: typedHand,
  fieldsFrom: handFields,
  keep: async (fields, stored) =>
    (await client.people.saveHand({ fields, ...(stored ? { id: stored.id, version: stored.version } : {}) })).hand,
  storedIn: (current) => Hand.safeParse(current).data,
};
export type HandForm = KeptForm<TypedHand, HandFields, Hand>;

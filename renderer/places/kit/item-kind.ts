import { KitItem, type KitItemFields } from '../../../core/contract/kit.ts';
import { client } from '../../door.ts';
import type { KeptForm, KeptKind } from '../../parts/use-kept-form.ts';
import { itemFields, typedItem, type TypedItem } from './typed-item.ts';

/** @param currency of amounts that are still to be typed */
export const itemKind = (currency: string): KeptKind<TypedItem, KitItemFields, KitItem> => ({
  typedFrom: typedItem(currency),
  fieldsFrom: itemFields,
  keep: async (fields, stored) => (await client.kit.save({ fields, ...(stored ? { id: stored.id, version: stored.version } : {}) })).item,
  storedIn: (current) => KitItem.safeParse(current).data,
});
export type ItemForm = KeptForm<TypedItem, KitItemFields, KitItem>;

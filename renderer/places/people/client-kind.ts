import { Client, type ClientFields } from '../../../core/contract/people.ts';
import { client } from '../../door.ts';
import { clientFields, typedClient, type TypedClient } from './typed-client.ts';
import type { KeptForm, KeptKind } from '../../parts/use-kept-form.ts';

export const clientKind: KeptKind<TypedClient, ClientFields, Client> = {
  typedFrom: typedClient,
  fieldsFrom: clientFields,
  keep: async (fields, stored) =>
    (await client.people.saveClient({ fields, ...(stored ? { id: stored.id, version: stored.version } : {}) })).client,
  storedIn: (current) => Client.safeParse(current).data,
};
export type ClientForm = KeptForm<TypedClient, ClientFields, Client>;

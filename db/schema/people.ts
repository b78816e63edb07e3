import { sql } from 'drizzle-orm';
import { check, index, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { ClientFields, HandFields } from '../../core/contract/people.ts';
import { createdAt, id, updatedAt, version } from './columns.ts';

/** Who pays or asks. What is searched for has columns of its own, the rest is one document that the contract has checked. */
export const clients = sqliteTable(
  'clients',
  {
    id: id(),
    name: text('name').notNull(),
    fields: text('fields', { mode: 'json' }).$type<ClientFields>().notNull(),
    awayAt: integer('away_at'),
    version: version(),
    createdAt: createdAt(),
    updatedAt: updatedAt(),
  },
  (t) => [index('clients_by_name').on(t.name), check('clients_fields_json', sql`json_valid(${t.fields})`)],
);

/** Who helps. */
export const hands = sqliteTable(
  'hands',
  {
    id: id(),
    name: text('name').notNull(),
    fields: text('fields', { mode: 'json' }).$type<HandFields>().notNull(),
    awayAt: integer('away_at'),
    version: version(),
    createdAt: createdAt(),
    updatedAt: updatedAt(),
  },
  (t) => [index('hands_by_name').on(t.name), check('hands_fields_json', sql`json_valid(${t.fields})`)],
);

import { sql } from 'drizzle-orm';
import { check, index, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { RateCardFields } from '../../core/contract/rates.ts';
import { createdAt, id, updatedAt, version } from './columns.ts';

/** Rate cards; what is searched for has columns of its own, the rest is one validated document. */
export const rateCards = sqliteTable(
  'rate_cards',
  {
    id: id(),
    name: text('name').notNull(),
    role: text('role').notNull(),
    currency: text('currency').notNull(),
    validFrom: text('valid_from').notNull(),
    validTo: text('valid_to'),
    fields: text('fields', { mode: 'json' }).$type<RateCardFields>().notNull(),
    version: version(),
    createdAt: createdAt(),
    updatedAt: updatedAt(),
  },
  (t) => [
    index('rate_cards_by_role').on(t.role, t.validFrom),
    check('rate_cards_currency', sql`length(${t.currency}) = 3`),
    check('rate_cards_validity', sql`${t.validTo} is null or ${t.validTo} >= ${t.validFrom}`),
    check('rate_cards_fields_json', sql`json_valid(${t.fields})`),
  ],
);

import { sql } from 'drizzle-orm';
import { check, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { SetupFields } from '../../core/contract/setup.ts';
import { updatedAt, version } from './columns.ts';

/** One row, id 1: my own details. */
export const setup = sqliteTable(
  'setup',
  {
    id: integer('id').primaryKey(),
    fields: text('fields', { mode: 'json' }).$type<SetupFields>().notNull(),
    version: version(),
    updatedAt: updatedAt(),
  },
  (t) => [check('setup_one_row', sql`${t.id} = 1`), check('setup_fields_json', sql`json_valid(${t.fields})`)],
);

import { sql } from 'drizzle-orm';
import { check, integer, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import { rememberedFacts } from '../../core/contract/inquiries.ts';
import { id } from './columns.ts';

/** Readings that a person corrected: for this sender, these words that were read so mean what was chosen. */
export const corrections = sqliteTable(
  'corrections',
  {
    id: id(),
    sender: text('sender').notNull(),
    fact: text('fact', { enum: rememberedFacts }).notNull(),
    words: text('words').notNull(),
    read: text('read').notNull(),
    chosen: text('chosen', { mode: 'json' }).$type<unknown>().notNull(),
    at: integer('at').notNull(),
  },
  (t) => [
    uniqueIndex('corrections_one').on(t.sender, t.fact, t.words, t.read),
    check('corrections_fact', sql`${t.fact} in ('place', 'role', 'currency', 'per', 'organisation', 'contactName')`),
    check('corrections_json', sql`json_valid(${t.chosen})`),
  ],
);

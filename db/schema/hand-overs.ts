import { sql } from 'drizzle-orm';
import { check, index, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import { deliverables } from './deliverables.ts';
import { id, version } from './columns.ts';
import { papers } from './quotes.ts';

/**
 * Handing over of a deliverable: a link or a disk, its files with their sums, and what becomes of the originals. Null `originals_until` is
 * still asked. The paper never changes; a hand-over that was a mistake is taken back, with the reason, and stays on the books.
 */
export const handOvers = sqliteTable(
  'hand_overs',
  {
    id: id(),
    deliverableId: text('deliverable_id')
      .notNull()
      .references(() => deliverables.id, { onDelete: 'cascade' }),
    how: text('how', { enum: ['link', 'disk'] }).notNull(),
    where: text('where_to').notNull(),
    at: integer('at').notNull(),
    originals: text('originals', { enum: ['kept until', 'handed over', 'never kept'] }).notNull(),
    originalsUntil: text('originals_until'),
    originalsGoneAt: integer('originals_gone_at'),
    originalsGoneWhy: text('originals_gone_why').notNull().default(''),
    hashKind: text('hash_kind').notNull(),
    files: text('files', { mode: 'json' }).$type<{ name: string; bytes: number; hash: string }[]>().notNull(),
    paperId: text('paper_id').references(() => papers.id),
    messageSubject: text('message_subject').notNull().default(''),
    messageText: text('message_text').notNull().default(''),
    note: text('note').notNull().default(''),
    takenBackAt: integer('taken_back_at'),
    takenBackWhy: text('taken_back_why').notNull().default(''),
    version: version(),
  },
  (t) => [
    index('hand_overs_by_deliverable').on(t.deliverableId, t.at),
    index('hand_overs_originals')
      .on(t.originalsUntil)
      .where(sql`${t.originalsGoneAt} is null`),
    check('hand_overs_how', sql`${t.how} in ('link', 'disk')`),
    check('hand_overs_originals_said', sql`${t.originals} in ('kept until', 'handed over', 'never kept')`),
    check('hand_overs_until', sql`${t.originalsUntil} is null or ${t.originals} = 'kept until'`),
    check('hand_overs_files_json', sql`json_valid(${t.files})`),
  ],
);

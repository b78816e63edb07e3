import { sql } from 'drizzle-orm';
import { check, index, integer, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import type { FurtherPrice } from '../../core/deliverables/further-round.ts';
import type { RoundMove } from '../../core/deliverables/rounds.ts';
import { deliverables, stages } from './deliverables.ts';
import { id, version } from './columns.ts';

/** A cut that was sent for notes, and what came back. `due_back` is the end of the client's window; `included` is false for a round that is billed; `moved` says which dates late notes moved. */
export const rounds = sqliteTable(
  'rounds',
  {
    id: id(),
    deliverableId: text('deliverable_id')
      .notNull()
      .references(() => deliverables.id, { onDelete: 'cascade' }),
    stageId: text('stage_id').references(() => stages.id, { onDelete: 'set null' }),
    number: integer('number').notNull(),
    what: text('what').notNull(),
    sentAt: integer('sent_at').notNull(),
    windowDays: integer('window_days').notNull(),
    dueBack: text('due_back').notNull(),
    notesAt: integer('notes_at'),
    notes: text('notes').notNull().default(''),
    included: integer('included', { mode: 'boolean' }).notNull(),
    price: text('price', { mode: 'json' }).$type<FurtherPrice>(),
    moved: text('moved', { mode: 'json' }).$type<RoundMove>(),
    version: version(),
  },
  (t) => [
    uniqueIndex('rounds_number').on(t.deliverableId, t.number),
    index('rounds_waiting')
      .on(t.dueBack)
      .where(sql`${t.notesAt} is null`),
    check('rounds_counts', sql`${t.number} >= 1 and ${t.windowDays} >= 0`),
    check('rounds_notes_after_sending', sql`${t.notesAt} is null or ${t.notesAt} >= ${t.sentAt}`),
    check('rounds_price_json', sql`${t.price} is null or json_valid(${t.price})`),
  ],
);

/** The notes of a round, one row each, to tick off. Frames count from 0 at the cut's rate; null where no time code was read. */
export const noteItems = sqliteTable(
  'note_items',
  {
    id: id(),
    roundId: text('round_id')
      .notNull()
      .references(() => rounds.id, { onDelete: 'cascade' }),
    position: integer('position').notNull(),
    timecode: text('timecode').notNull(),
    frame: integer('frame'),
    toFrame: integer('to_frame'),
    text: text('text').notNull(),
    doneAt: integer('done_at'),
  },
  (t) => [
    uniqueIndex('note_items_in_order').on(t.roundId, t.position),
    check(
      'note_items_frames',
      sql`(${t.frame} is null and ${t.toFrame} is null) or (${t.frame} >= 0 and (${t.toFrame} is null or ${t.toFrame} >= ${t.frame}))`,
    ),
  ],
);
